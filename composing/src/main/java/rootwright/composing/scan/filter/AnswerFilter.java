package rootwright.composing.scan.filter;

import java.util.List;
import java.util.Optional;
import rootwright.algebra.number.Rational;
import rootwright.composing.scan.candidate.CompiledExpression;
import rootwright.composing.scan.candidate.Workspace;

/**
 * The value of the expression has a shape; a candidate without a value is rejected.
 *
 * @param expression the expression
 * @param shape the shape
 */
public record AnswerFilter(CompiledExpression expression, AnswerShape shape)
    implements CandidateFilter {

  @Override
  public String name() {
    return shape.name();
  }

  @Override
  public String explanation() {
    return shape.explanation();
  }

  @Override
  public Stage stage() {
    return Stage.ANSWER;
  }

  @Override
  public boolean passes(long[] ascending) {
    Optional<Rational> value = expression.valueAt(ascending);
    return value.isPresent() && shape.holds(value.get(), ascending);
  }

  @Override
  public RowTest rowTest(Workspace workspace) {
    RowTest each = CandidateFilter.super.rowTest(workspace);
    RowTest values = new AnswerRow(expression, shape, workspace, each);
    return shape instanceof WholeNumber
        ? new WholeNumberRow(expression, workspace, values)
        : values;
  }

  @Override
  public List<CandidateFilter> weaker() {
    return shape.weaker().stream()
        .<CandidateFilter>map(weaker -> new AnswerFilter(expression, weaker))
        .toList();
  }
}
