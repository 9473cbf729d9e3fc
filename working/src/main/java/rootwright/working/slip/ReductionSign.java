package rootwright.working.slip;

import java.util.List;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.roots.ResidueAlgebra;
import rootwright.working.ask.Asked;
import rootwright.working.step.Idea;

/**
 * Powers reduced with an unmoved sign, r^n = +(a_(n−1)r^(n−1) + …)/a. Didiş and Erbaş 2015 report
 * such transpositions.
 */
final class ReductionSign implements Slip {

  @Override
  public String name() {
    return "reduction-sign";
  }

  @Override
  public String text() {
    return "Moving terms to the other side changes their signs.";
  }

  @Override
  public Idea spot() {
    return Idea.REDUCE;
  }

  @Override
  public int weight() {
    return 5;
  }

  @Override
  public List<Rational> on(Asked asked) {
    int n = asked.problem().degree();
    return asked
        .sumOverRoots()
        .filter(
            f -> f.isPolynomial() && f.numerator().degree() >= n && f.numerator().degree() <= 60)
        .map(f -> List.of(wrong(asked.problem().polynomial(), f.numerator())))
        .orElse(List.of());
  }

  /** Reduces with the wrong rule, then adds up rightly. */
  private static Rational wrong(Polynomial p, Polynomial f) {
    Polynomial head = Polynomial.monomial(p.lead(), p.degree());
    Polynomial rule = head.minus(p.minus(head));
    return ResidueAlgebra.of(p).trace(f.remainder(rule));
  }
}
