package rootwright.working.review.given;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Monomial;
import rootwright.algebra.polynomial.MultivariatePolynomial;

/**
 * An equation solved for one unknown.
 *
 * @param fact the equation
 * @param unknown the number of the unknown
 * @param value what it is equal to, without the unknown itself
 */
record Solved(Known fact, int unknown, MultivariatePolynomial value) {

  /** The first fact that can be solved for an unknown that occurs in the polynomial. */
  static Optional<Solved> first(List<Known> facts, MultivariatePolynomial polynomial) {
    for (Known fact : facts) {
      for (int k : Steps.unknownsIn(polynomial)) {
        Optional<MultivariatePolynomial> value = value(fact.zero(), k);
        if (value.isPresent()) {
          return Optional.of(new Solved(fact, k, value.get()));
        }
      }
    }
    return Optional.empty();
  }

  private static Optional<MultivariatePolynomial> value(MultivariatePolynomial zero, int unknown) {
    if (zero.degreeIn(unknown) != 1) {
      return Optional.empty();
    }
    List<MultivariatePolynomial> parts = zero.coefficientsIn(unknown);
    if (!parts.get(1).isConstant()) {
      return Optional.empty();
    }
    Rational lead = parts.get(1).coefficient(Monomial.ONE);
    return Optional.of(parts.get(0).times(lead.reciprocal().negate()));
  }

  /** A polynomial with the value put in. */
  MultivariatePolynomial into(MultivariatePolynomial polynomial, int unknowns) {
    List<MultivariatePolynomial> images = new ArrayList<>();
    for (int k = 0; k < unknowns; k++) {
      images.add(k == unknown ? value : MultivariatePolynomial.unknown(k));
    }
    return polynomial.substitute(images);
  }
}
