package rootwright.working.slip;

import java.util.List;
import rootwright.algebra.number.Rational;
import rootwright.algebra.roots.ResidueAlgebra;
import rootwright.algebra.roots.RootValue;
import rootwright.working.ask.Asked;
import rootwright.working.problem.RootFunction;
import rootwright.working.step.Idea;

/** P/P′ for P′/P, or the sign of 1/(r − k) left as for 1/(k − r). Common practice. */
final class LogDerivativeFlipped implements Slip {

  @Override
  public String name() {
    return "log-derivative-flipped";
  }

  @Override
  public String text() {
    return "P′(k)/P(k) is the sum of 1/(k − r): derivative above, and minus for r − k.";
  }

  @Override
  public Idea spot() {
    return Idea.LOG_DERIVATIVE;
  }

  @Override
  public int weight() {
    return 5;
  }

  @Override
  public List<Rational> on(Asked asked) {
    return asked
        .sumOverRoots()
        .filter(f -> f.numerator().degree() == 0 && f.denominator().degree() == 1)
        .filter(f -> !f.denominator().coefficient(0).isZero())
        .map(f -> turned(asked, f))
        .orElse(List.of());
  }

  private static List<Rational> turned(Asked asked, RootFunction f) {
    ResidueAlgebra algebra = ResidueAlgebra.of(asked.problem().polynomial());
    if (!(algebra.trace(f.numerator(), f.denominator()) instanceof RootValue.Exact sum)) {
      return List.of();
    }
    // f = c/(r − k) after the lead of the denominator is divided out.
    Rational c = f.numerator().coefficient(0).over(f.denominator().lead());
    Rational right = sum.value();
    return right.isZero()
        ? List.of()
        : List.of(right.negate(), c.times(c).over(right), c.times(c).over(right).negate());
  }
}
