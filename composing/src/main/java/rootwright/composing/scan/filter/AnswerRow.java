package rootwright.composing.scan.filter;

import rootwright.composing.scan.candidate.CompiledExpression;
import rootwright.composing.scan.candidate.Row;
import rootwright.composing.scan.candidate.RowForm;
import rootwright.composing.scan.candidate.Survivors;
import rootwright.composing.scan.candidate.Workspace;

/** Tests a shape along a row with values stepped in 64 bits, where they are proved to fit. */
final class AnswerRow implements RowTest {

  private final AnswerShape shape;
  private final RowForm numerator;
  private final RowForm denominator;
  private final RowTest each;
  private final long[] coefficients;

  AnswerRow(CompiledExpression expression, AnswerShape shape, Workspace workspace, RowTest each) {
    this.shape = shape;
    this.each = each;
    numerator = workspace.along(expression.numerator());
    denominator = workspace.along(expression.denominator());
    coefficients = new long[workspace.box().degree() + 1];
  }

  @Override
  public void screen(Row row, Survivors alive) {
    if (!numerator.fits(row) || !denominator.fits(row)) {
      each.screen(row, alive);
      return;
    }
    long[] above = numerator.values(row);
    boolean constant = denominator.isConstant();
    long[] below = constant ? above : denominator.values(row);
    long common = constant ? denominator.first(row) : 0;
    row.copyTo(0, coefficients);
    for (int place = alive.next(0); place >= 0; place = alive.next(place + 1)) {
      long divisor = constant ? common : below[place];
      coefficients[0] = row.constant(place);
      if (divisor == 0 || !shape.holds(above[place], divisor, coefficients)) {
        alive.remove(place);
      }
    }
  }
}
