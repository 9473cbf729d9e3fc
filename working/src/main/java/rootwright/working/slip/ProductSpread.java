package rootwright.working.slip;

import java.util.List;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.roots.ResidueAlgebra;

/**
 * Π(c + r) taken as c^n + Πr, or c + Πr: a product spread over a sum. Over-linear thinking: Matz
 * 1982 (from memory).
 */
final class ProductSpread extends ProductSlip {

  @Override
  public String name() {
    return "product-spread";
  }

  @Override
  public String text() {
    return "A product of sums has all the mixed terms as well; evaluate P instead.";
  }

  @Override
  public int weight() {
    return 5;
  }

  @Override
  List<Rational> wrong(Polynomial p, Polynomial g) {
    Rational constant = g.coefficient(0);
    Rational head = ResidueAlgebra.of(p).norm(g.minus(Polynomial.constant(constant)));
    return constant.isZero()
        ? List.of()
        : List.of(constant.power(p.degree()).plus(head), constant.plus(head));
  }
}
