package rootwright.composing.scan.filter;

import rootwright.composing.scan.candidate.CompiledExpression;
import rootwright.composing.scan.candidate.Row;
import rootwright.composing.scan.candidate.RowForm;
import rootwright.composing.scan.candidate.Survivors;
import rootwright.composing.scan.candidate.Workspace;

/**
 * Tests "is an integer" along a row whose denominator m is the same everywhere: modulo m an integer
 * form in the constant term has period |m|, so one period settles the row.
 */
final class WholeNumberRow implements RowTest {

  private final RowForm numerator;
  private final RowForm denominator;
  private final RowTest otherwise;
  private final Survivors pattern;

  WholeNumberRow(CompiledExpression expression, Workspace workspace, RowTest otherwise) {
    numerator = workspace.along(expression.numerator());
    denominator = workspace.along(expression.denominator());
    pattern = new Survivors(workspace.box().rowLength());
    this.otherwise = otherwise;
  }

  @Override
  public void screen(Row row, Survivors alive) {
    if (!denominator.isConstant() || !denominator.fits(row) || !numerator.fits(row)) {
      otherwise.screen(row, alive);
      return;
    }
    long period = Math.abs(denominator.first(row));
    if (period == 0 || 2 * period > row.length()) {
      otherwise.screen(row, alive);
      return;
    }
    if (period == 1) {
      return;
    }
    long[] values = numerator.values(row, (int) period);
    pattern.clear(row.length());
    for (int start = 0; start < period; start++) {
      if (values[start] % period == 0) {
        for (int place = start; place < row.length(); place += (int) period) {
          pattern.add(place);
        }
      }
    }
    alive.retain(pattern);
  }
}
