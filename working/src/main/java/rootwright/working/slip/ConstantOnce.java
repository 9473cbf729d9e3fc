package rootwright.working.slip;

import java.util.List;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.roots.ResidueAlgebra;
import rootwright.working.ask.Asked;
import rootwright.working.problem.RootFunction;
import rootwright.working.step.Idea;

/** Σ(f(r) + c) taken as Σf(r) + c. Common practice. */
final class ConstantOnce implements Slip {

  @Override
  public String name() {
    return "constant-once";
  }

  @Override
  public String text() {
    return "The constant stands once for every root.";
  }

  @Override
  public Idea spot() {
    return Idea.SUM_OVER_ROOTS;
  }

  @Override
  public int weight() {
    return 15;
  }

  @Override
  public List<Rational> on(Asked asked) {
    return asked
        .sumOverRoots()
        .filter(RootFunction::isPolynomial)
        .map(f -> f.numerator())
        .filter(f -> f.degree() > 0 && !f.coefficient(0).isZero())
        .map(f -> List.of(oncePerSum(asked, f)))
        .orElse(List.of());
  }

  private static Rational oncePerSum(Asked asked, Polynomial f) {
    Rational right = ResidueAlgebra.of(asked.problem().polynomial()).trace(f);
    return right.minus(f.coefficient(0).times(asked.problem().degree() - 1));
  }
}
