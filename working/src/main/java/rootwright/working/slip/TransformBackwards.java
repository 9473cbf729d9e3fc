package rootwright.working.slip;

import java.util.List;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.working.ask.Asked;
import rootwright.working.problem.RootFunction;
import rootwright.working.step.Idea;

/** The map itself put into P instead of its inverse. Common practice. */
final class TransformBackwards implements PolynomialSlip {

  @Override
  public String name() {
    return "transform-backwards";
  }

  @Override
  public String text() {
    return "P of the new root is not zero: solve y = f(r) for r first, and put that into P.";
  }

  @Override
  public Idea spot() {
    return Idea.SUBSTITUTE;
  }

  @Override
  public int weight() {
    return 10;
  }

  @Override
  public List<Polynomial> on(Asked asked) {
    return asked
        .singleRoot()
        .filter(TransformBackwards::isLinear)
        .map(f -> putIn(asked.problem().polynomial(), f))
        .filter(wrong -> wrong.degree() == asked.problem().degree())
        .map(wrong -> List.of(wrong.primitive()))
        .orElse(List.of());
  }

  private static boolean isLinear(RootFunction f) {
    return f.numerator().degree() <= 1 && f.denominator().degree() <= 1;
  }

  /** Σ a_k·numerator^k·denominator^(n−k). */
  private static Polynomial putIn(Polynomial p, RootFunction f) {
    Polynomial sum = Polynomial.ZERO;
    Polynomial power = Polynomial.constant(Rational.ONE);
    for (int k = p.degree(); k >= 0; k--) {
      sum = sum.times(f.numerator()).plus(power.times(p.coefficient(k)));
      power = power.times(f.denominator());
    }
    return sum;
  }
}
