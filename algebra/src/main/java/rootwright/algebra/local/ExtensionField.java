package rootwright.algebra.local;

import java.math.BigInteger;
import java.util.Arrays;
import java.util.SplittableRandom;
import rootwright.algebra.modular.FieldPolynomials;
import rootwright.algebra.modular.OddModulus;

/**
 * The field with p^m elements, as remainders modulo an irreducible polynomial of degree m over the
 * prime field; an element is an array of m representatives, constant term first.
 */
final class ExtensionField {

  private final FieldPolynomials polynomials;
  private final long[] modulus;
  private final int degree;

  ExtensionField(FieldPolynomials polynomials, long[] irreducible) {
    this.polynomials = polynomials;
    modulus = irreducible;
    degree = irreducible.length - 1;
  }

  int degree() {
    return degree;
  }

  long[] modulus() {
    return modulus;
  }

  OddModulus prime() {
    return polynomials.field();
  }

  long[] zero() {
    return new long[degree];
  }

  long[] constant(long representative) {
    long[] element = new long[degree];
    element[0] = representative;
    return element;
  }

  /** The element that solves the modulus; only for a degree of at least two. */
  long[] generator() {
    long[] element = new long[degree];
    element[1] = prime().one();
    return element;
  }

  long[] any(SplittableRandom random) {
    long[] element = new long[degree];
    for (int k = 0; k < degree; k++) {
      element[k] = random.nextLong(prime().modulus());
    }
    return element;
  }

  static boolean isZero(long[] element) {
    for (long part : element) {
      if (part != 0) {
        return false;
      }
    }
    return true;
  }

  long[] minus(long[] a, long[] b) {
    long[] difference = new long[degree];
    for (int k = 0; k < degree; k++) {
      difference[k] = prime().minus(a[k], b[k]);
    }
    return difference;
  }

  long[] times(long[] a, long[] b) {
    long[] product = polynomials.times(FieldPolynomials.trim(a), FieldPolynomials.trim(b));
    return Arrays.copyOf(polynomials.remainder(product, modulus), degree);
  }

  long[] power(long[] base, BigInteger exponent) {
    return Arrays.copyOf(polynomials.power(FieldPolynomials.trim(base), exponent, modulus), degree);
  }

  /** The image under the Frobenius map, the p-th power: the conjugate of a root is a root. */
  long[] conjugate(long[] element) {
    return power(element, BigInteger.valueOf(prime().modulus()));
  }

  /** The number of elements. */
  BigInteger size() {
    return BigInteger.valueOf(prime().modulus()).pow(degree);
  }

  /** One over an element that is not zero. */
  long[] inverse(long[] element) {
    return power(element, size().subtract(BigInteger.TWO));
  }
}
