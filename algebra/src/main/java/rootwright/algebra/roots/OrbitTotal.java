package rootwright.algebra.roots;

import java.math.BigInteger;
import java.util.List;
import java.util.Optional;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.polynomial.RationalFunction;

/**
 * The textbook Σ or Π of an expression in the roots of a polynomial: over all distinct images when
 * the roots are renamed. Orbits may be much larger than those whose polynomial can be found.
 */
public sealed interface OrbitTotal {

  /** The most images that are added up. */
  int MOST_IMAGES = 2_600;

  /** The total. */
  record Exact(Rational value) implements OrbitTotal {}

  /** Some way to deal out the names makes the denominator zero. */
  record ZeroDenominator() implements OrbitTotal {}

  /** There are more images or more roots than are worked with, or it would take too long. */
  record TooLarge() implements OrbitTotal {}

  /**
   * The sum of all images; unknown k of the expression is the k-th root name.
   *
   * @throws IllegalArgumentException if P is constant or the expression uses more names than P has
   *     roots
   */
  static OrbitTotal sum(Polynomial polynomial, RationalFunction expression) {
    return images(polynomial, expression)
        .map(images -> LocalTotal.sum(polynomial, images).value())
        .orElseGet(TooLarge::new);
  }

  /**
   * The product of all images; unknown k of the expression is the k-th root name.
   *
   * @throws IllegalArgumentException if P is constant or the expression uses more names than P has
   *     roots
   */
  static OrbitTotal product(Polynomial polynomial, RationalFunction expression) {
    return images(polynomial, expression)
        .map(images -> LocalTotal.product(polynomial, images).value())
        .orElseGet(TooLarge::new);
  }

  private static Optional<List<RationalFunction>> images(
      Polynomial polynomial, RationalFunction expression) {
    if (polynomial.degree() < 1) {
      throw new IllegalArgumentException("a constant has no roots: " + polynomial);
    }
    if (polynomial.degree() > OrbitPolynomial.GREATEST_DEGREE) {
      return Optional.empty();
    }
    Orbit orbit = Orbit.of(expression, polynomial.degree());
    return orbit.size().compareTo(BigInteger.valueOf(MOST_IMAGES)) > 0
        ? Optional.empty()
        : Optional.of(orbit.allImages());
  }
}
