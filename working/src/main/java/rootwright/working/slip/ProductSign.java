package rootwright.working.slip;

import java.util.List;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.roots.ResidueAlgebra;

/**
 * Π(r − k) taken as P(k)/a for odd degree, or the sign turned where it should stay. Common
 * practice.
 */
final class ProductSign extends ProductSlip {

  @Override
  public String name() {
    return "product-sign";
  }

  @Override
  public String text() {
    return "Each factor r − k is −(k − r): for odd degree the product changes sign.";
  }

  @Override
  public int weight() {
    return 5;
  }

  @Override
  List<Rational> wrong(Polynomial p, Polynomial g) {
    if (g.degree() != 1) {
      return List.of();
    }
    Rational product = ResidueAlgebra.of(p).norm(g);
    return List.of(p.degree() % 2 == 1 ? product.negate() : product);
  }
}
