package rootwright.composing.scan.filter;

import rootwright.composing.scan.candidate.CompiledExpression;
import rootwright.composing.scan.candidate.RowForm;
import rootwright.composing.scan.candidate.Workspace;

/**
 * The expression has a value: no root, or combination of roots, makes its denominator zero.
 *
 * @param expression the expression
 */
public record AnswerDefined(CompiledExpression expression) implements CandidateFilter {

  @Override
  public String name() {
    return "answer-defined";
  }

  @Override
  public String explanation() {
    return "The denominator of the expression is not zero.";
  }

  @Override
  public Stage stage() {
    return Stage.ANSWER;
  }

  @Override
  public boolean passes(long[] ascending) {
    return expression.denominator().at(ascending).signum() != 0;
  }

  @Override
  public RowTest rowTest(Workspace workspace) {
    if (expression.isAlwaysDefined()) {
      return (row, alive) -> {};
    }
    RowTest each = CandidateFilter.super.rowTest(workspace);
    RowForm denominator = workspace.along(expression.denominator());
    return (row, alive) -> {
      if (!denominator.fits(row)) {
        each.screen(row, alive);
        return;
      }
      long[] values = denominator.values(row);
      for (int place = 0; place < row.length(); place++) {
        if (values[place] == 0) {
          alive.remove(place);
        }
      }
    };
  }
}
