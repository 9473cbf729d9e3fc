package rootwright.working.slip;

import java.util.List;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.roots.ResidueAlgebra;
import rootwright.working.ask.Asked;
import rootwright.working.step.Idea;

/**
 * Π(k − r) taken as P(k): the lead is not divided out. Seen as a lead error by Tong, Uyen, Thi and
 * Lai 2017.
 */
final class ProductUndivided implements Slip {

  @Override
  public String name() {
    return "p-k-undivided";
  }

  @Override
  public String text() {
    return "P(k) is the lead times the product; divide by the lead.";
  }

  @Override
  public Idea spot() {
    return Idea.EVALUATE;
  }

  @Override
  public int weight() {
    return 15;
  }

  @Override
  public List<Rational> on(Asked asked) {
    return asked
        .productOverRoots()
        .filter(f -> f.isPolynomial() && f.numerator().degree() >= 1)
        .map(f -> wrong(asked.problem().polynomial(), f.numerator()))
        .orElse(List.of());
  }

  private static List<Rational> wrong(Polynomial p, Polynomial g) {
    return List.of(ResidueAlgebra.of(p).norm(g).times(p.lead().power(g.degree())));
  }
}
