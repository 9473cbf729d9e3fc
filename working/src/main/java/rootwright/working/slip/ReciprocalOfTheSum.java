package rootwright.working.slip;

import java.util.List;
import rootwright.algebra.number.Rational;
import rootwright.algebra.roots.ResidueAlgebra;
import rootwright.working.ask.Asked;
import rootwright.working.problem.RootFunction;
import rootwright.working.step.Idea;

/** Σ1/g(r) taken as 1/Σg(r), or as n/Σg(r). Over-linear thinking: Matz 1982 (from memory). */
final class ReciprocalOfTheSum implements Slip {

  @Override
  public String name() {
    return "reciprocal-of-the-sum";
  }

  @Override
  public String text() {
    return "The sum of reciprocals is not the reciprocal of the sum; bring the fractions to one denominator.";
  }

  @Override
  public Idea spot() {
    return Idea.COMMON_DENOMINATOR;
  }

  @Override
  public int weight() {
    return 10;
  }

  @Override
  public List<Rational> on(Asked asked) {
    return asked
        .sumOverRoots()
        .filter(f -> !f.isPolynomial() && f.numerator().degree() == 0)
        .map(f -> turned(asked, f))
        .orElse(List.of());
  }

  private static List<Rational> turned(Asked asked, RootFunction f) {
    Rational sum = ResidueAlgebra.of(asked.problem().polynomial()).trace(f.denominator());
    Rational over = f.numerator().coefficient(0);
    return sum.isZero()
        ? List.of()
        : List.of(over.over(sum), over.times(asked.problem().degree()).over(sum));
  }
}
