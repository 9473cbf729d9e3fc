package rootwright.algebra.roots;

import java.math.BigInteger;
import java.util.Arrays;
import java.util.List;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;

/**
 * Polynomials whose roots are the images of the roots of P under a map of one root, counted with
 * multiplicity, in primitive form with positive lead. The degree stays the same.
 */
public final class TransformedPolynomial {

  private TransformedPolynomial() {}

  /** The roots A(r)/B(r). Maps of degree one are substituted directly. */
  public static Transformed of(
      Polynomial polynomial, Polynomial numerator, Polynomial denominator) {
    if (numerator.degree() <= 1
        && denominator.degree() <= 1
        && isInvertible(numerator, denominator)) {
      return fractionalLinear(polynomial, numerator, denominator);
    }
    ResidueAlgebra algebra = ResidueAlgebra.of(polynomial);
    Inverse inverse = algebra.inverse(denominator);
    return inverse instanceof Inverse.Inverted inverted
        ? new Transformed.Exact(
            algebra.characteristic(algebra.times(numerator, inverted.value())).primitive())
        : new Transformed.ZeroDenominator(((Inverse.SharedFactor) inverse).common());
  }

  /** The roots f(r) of a polynomial map. */
  public static Polynomial of(Polynomial polynomial, Polynomial map) {
    if (map.degree() == 1) {
      Polynomial back = Polynomial.X.minus(Polynomial.constant(map.coefficient(0)));
      return polynomial.compose(back.times(map.lead().reciprocal())).primitive();
    }
    return map.equals(Polynomial.monomial(Rational.ONE, 2))
        ? squares(polynomial)
        : ResidueAlgebra.of(polynomial).characteristic(map).primitive();
  }

  /**
   * The roots r²: with P = E(x²) + x·O(x²), the polynomial E(y)² − y·O(y)² (Graeffe's step).
   *
   * @throws IllegalArgumentException if the polynomial is constant
   */
  public static Polynomial squares(Polynomial polynomial) {
    requireRoots(polynomial);
    Polynomial even = part(polynomial, 0);
    Polynomial odd = part(polynomial, 1);
    return even.times(even).minus(odd.times(odd).times(Polynomial.X)).primitive();
  }

  /** The roots 1/r. */
  public static Transformed reciprocals(Polynomial polynomial) {
    return of(polynomial, Polynomial.ONE, Polynomial.X);
  }

  /**
   * The roots r^k for a whole k ≥ 0.
   *
   * @throws IllegalArgumentException if k is negative or the polynomial constant
   */
  public static Polynomial powers(Polynomial polynomial, int exponent) {
    ResidueAlgebra algebra = ResidueAlgebra.of(polynomial);
    return algebra.characteristic(algebra.power(Polynomial.X, exponent)).primitive();
  }

  private static void requireRoots(Polynomial polynomial) {
    if (polynomial.degree() < 1) {
      throw new IllegalArgumentException("a constant has no roots: " + polynomial);
    }
  }

  private static Polynomial part(Polynomial polynomial, int parity) {
    BigInteger[] part = new BigInteger[polynomial.degree() / 2 + 1];
    Arrays.setAll(part, k -> polynomial.numerator(2 * k + parity));
    return Polynomial.ofAscending(part, polynomial.denominator());
  }

  /** y = (αr + β)/(γr + δ) means r = (δy − β)/(α − γy): put it in and clear the denominator. */
  private static Transformed fractionalLinear(
      Polynomial polynomial, Polynomial numerator, Polynomial denominator) {
    requireRoots(polynomial);
    Polynomial common = polynomial.gcd(denominator);
    if (common.degree() > 0) {
      return new Transformed.ZeroDenominator(common);
    }
    Polynomial over = line(denominator.coefficient(0), numerator.coefficient(0).negate());
    Polynomial under = line(denominator.coefficient(1).negate(), numerator.coefficient(1));
    Polynomial sum = Polynomial.ZERO;
    Polynomial underPower = Polynomial.ONE;
    // Horner's rule for Σ a_k·over^k·under^(n−k).
    for (int k = polynomial.degree(); k >= 0; k--) {
      sum = sum.times(over).plus(underPower.times(polynomial.coefficient(k)));
      underPower = underPower.times(under);
    }
    return new Transformed.Exact(sum.primitive());
  }

  private static boolean isInvertible(Polynomial numerator, Polynomial denominator) {
    Rational down = numerator.coefficient(1).times(denominator.coefficient(0));
    Rational up = numerator.coefficient(0).times(denominator.coefficient(1));
    return !down.equals(up);
  }

  private static Polynomial line(Rational slope, Rational constant) {
    return Polynomial.ofAscending(List.of(constant, slope));
  }
}
