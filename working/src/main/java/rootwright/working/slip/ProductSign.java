package rootwright.working.slip;

import java.util.List;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.roots.ResidueAlgebra;
import rootwright.working.ask.Asked;
import rootwright.working.step.Idea;

/**
 * Π(r − k) taken as P(k)/a for odd degree, or the sign turned where it should stay. Common
 * practice.
 */
final class ProductSign implements Slip {

  @Override
  public String name() {
    return "product-sign";
  }

  @Override
  public String text() {
    return "Each factor r − k is −(k − r): for odd degree the product changes sign.";
  }

  @Override
  public Idea spot() {
    return Idea.EVALUATE;
  }

  @Override
  public int weight() {
    return 5;
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
    if (g.degree() != 1) {
      return List.of();
    }
    Rational right = ResidueAlgebra.of(p).norm(g);
    return List.of(p.degree() % 2 == 1 ? right.negate() : right);
  }
}
