package rootwright.algebra.roots;

import java.math.BigInteger;
import java.util.List;
import java.util.Optional;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.polynomial.RationalFunction;

/**
 * The polynomial ∏ (T − σE) over the distinct formal images of an expression E in the roots of a
 * polynomial P. Its roots are exactly the values that E can take when the root names are dealt out
 * in every way, so E has a single value when it is a power (T − c)^m.
 */
public sealed interface OrbitPolynomial {

  /**
   * The polynomial.
   *
   * @param polynomial monic; its degree is the size of the orbit
   */
  record Exact(Polynomial polynomial) implements OrbitPolynomial {

    /** The value of E if every way to deal out the names gives the same. */
    public Optional<Rational> singleValue() {
      int degree = polynomial.degree();
      Rational mean = polynomial.coefficient(degree - 1).over(Rational.of(-degree));
      Polynomial linear = Polynomial.ofAscending(List.of(mean.negate(), Rational.ONE));
      return polynomial.equals(linear.power(degree)) ? Optional.of(mean) : Optional.empty();
    }
  }

  /**
   * Some way to deal out the names makes the denominator zero.
   *
   * @param denominator of E in lowest terms
   */
  record ZeroDenominator(MultivariatePolynomial denominator) implements OrbitPolynomial {}

  /**
   * The orbit has more images than are worked with.
   *
   * @param size the number of distinct images
   */
  record TooLarge(BigInteger size) implements OrbitPolynomial {}

  /**
   * The orbit polynomial of an expression in the roots of P; unknown k of the expression is the
   * k-th root name.
   *
   * @throws IllegalArgumentException if P is constant or the expression uses more names than P has
   *     roots
   */
  static OrbitPolynomial of(Polynomial polynomial, RationalFunction expression) {
    if (polynomial.degree() < 1) {
      throw new IllegalArgumentException("a constant has no roots: " + polynomial);
    }
    return of(polynomial, Orbit.of(expression, polynomial.degree()));
  }

  /**
   * The orbit polynomial of an orbit that is already known: quicker when many polynomials are asked
   * about one expression.
   *
   * @throws IllegalArgumentException if the orbit is not one of as many names as P has roots
   */
  static OrbitPolynomial of(Polynomial polynomial, Orbit orbit) {
    if (orbit.names() != polynomial.degree()) {
      throw new IllegalArgumentException(
          orbit.names() + " root names for a polynomial of degree " + polynomial.degree());
    }
    if (!orbit.isListed()) {
      return new TooLarge(orbit.size());
    }
    Optional<FormalTraces> traces = orbit.traces();
    if (traces.isPresent()) {
      return new Exact(traces.get().polynomial(polynomial));
    }
    return new LocalOrbit(polynomial, orbit)
        .polynomial()
        .<OrbitPolynomial>map(Exact::new)
        .orElse(new ZeroDenominator(orbit.function().denominator()));
  }
}
