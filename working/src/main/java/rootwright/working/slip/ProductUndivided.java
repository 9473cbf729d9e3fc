package rootwright.working.slip;

import java.util.List;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.roots.ResidueAlgebra;

/**
 * Π(k − r) taken as P(k): the lead is not divided out. Seen as a lead error by Tong, Uyen, Thi and
 * Lai 2017.
 */
final class ProductUndivided extends ProductSlip {

  @Override
  public String name() {
    return "p-k-undivided";
  }

  @Override
  public String text() {
    return "P(k) is the lead times the product; divide by the lead.";
  }

  @Override
  public int weight() {
    return 15;
  }

  @Override
  List<Rational> wrong(Polynomial p, Polynomial g) {
    return List.of(ResidueAlgebra.of(p).norm(g).times(p.lead().power(g.degree())));
  }
}
