package rootwright.working.slip;

import java.util.List;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.working.ask.Asked;
import rootwright.working.step.Idea;

/** A slip on the way to Π g(r) over all roots, g a polynomial that is not constant. */
abstract class ProductSlip implements Slip {

  @Override
  public final Idea spot() {
    return Idea.EVALUATE;
  }

  @Override
  public final List<Rational> on(Asked asked) {
    return asked
        .productOverRoots()
        .filter(f -> f.isPolynomial() && f.numerator().degree() >= 1)
        .map(f -> wrong(asked.problem().polynomial(), f.numerator()))
        .orElse(List.of());
  }

  /** What is taken for the product of g over the roots of p, the likeliest first. */
  abstract List<Rational> wrong(Polynomial p, Polynomial g);
}
