package rootwright.algebra.roots;

import java.math.BigInteger;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Monomial;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.polynomial.RationalFunction;

/**
 * The polynomial ∏ (T − σE) over the distinct formal images of an expression E in the roots of a
 * polynomial P. Its roots are exactly the values that E can take when the root names are dealt out
 * in every way, so E has a single value when it is a power (T − c)^m.
 */
public sealed interface OrbitPolynomial {

  /** The greatest degree of P for an expression that names more than one root. */
  int GREATEST_DEGREE = 16;

  /**
   * The polynomial.
   *
   * @param polynomial monic; its degree is the size of the orbit
   */
  record Exact(Polynomial polynomial) implements OrbitPolynomial {

    /** The sum of all images, each distinct formal image once: the textbook Σ of the expression. */
    public Rational sum() {
      return polynomial.coefficient(polynomial.degree() - 1).negate();
    }

    /** The value of E if every way to deal out the names gives the same. */
    public Optional<Rational> singleValue() {
      int degree = polynomial.degree();
      Rational mean = sum().over(Rational.of(degree));
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
   * The orbit has more images than are worked with, or the expression names several roots of a
   * polynomial of higher degree than is worked with.
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
    RationalFunction function = orbit.function();
    if (function.unknowns() == 1) {
      return ofOneRoot(polynomial, function);
    }
    if (!orbit.isListed() || polynomial.degree() > GREATEST_DEGREE) {
      return new TooLarge(orbit.size());
    }
    Optional<FormalTraces> traces = orbit.traces();
    if (traces.isPresent()) {
      return new Exact(traces.get().polynomial(polynomial));
    }
    return new LocalOrbit(polynomial, orbit).polynomial();
  }

  private static OrbitPolynomial ofOneRoot(Polynomial polynomial, RationalFunction function) {
    Polynomial over = inOneUnknown(function.numerator());
    Polynomial under = inOneUnknown(function.denominator());
    return TransformedPolynomial.of(polynomial, over, under) instanceof Transformed.Exact exact
        ? new Exact(exact.polynomial().monic())
        : new ZeroDenominator(function.denominator());
  }

  private static Polynomial inOneUnknown(MultivariatePolynomial expression) {
    Polynomial sum = Polynomial.ZERO;
    for (Map.Entry<Monomial, Rational> term : expression.terms().entrySet()) {
      sum = sum.plus(Polynomial.monomial(term.getValue(), term.getKey().degree()));
    }
    return sum;
  }
}
