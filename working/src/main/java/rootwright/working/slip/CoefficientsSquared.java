package rootwright.working.slip;

import java.util.List;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.working.ask.Asked;
import rootwright.working.problem.RootFunction;
import rootwright.working.step.Idea;

/** Each coefficient squared to square the roots. Common practice. */
final class CoefficientsSquared implements PolynomialSlip {

  private static final RootFunction SQUARE = RootFunction.of(Polynomial.X.times(Polynomial.X));

  @Override
  public String name() {
    return "coefficients-squared";
  }

  @Override
  public String text() {
    return "The sum of the squares is not the square of the sum: multiply P(x) by P(−x) instead.";
  }

  @Override
  public Idea spot() {
    return Idea.SQUARE_ROOTS;
  }

  @Override
  public int weight() {
    return 5;
  }

  @Override
  public List<Polynomial> on(Asked asked) {
    return asked
        .singleRoot()
        .filter(SQUARE::equals)
        .map(
            f ->
                Polynomial.ofAscending(
                    asked.problem().polynomial().ascending().stream()
                        .map(c -> c.times(c))
                        .toList()))
        .map(wrong -> List.of(wrong.primitive()))
        .orElse(List.of());
  }
}
