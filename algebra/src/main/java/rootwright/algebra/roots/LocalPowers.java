package rootwright.algebra.roots;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import rootwright.algebra.local.LocalRing;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Monomial;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.algebra.polynomial.Polynomial;

/**
 * The p-adic roots of a polynomial with their powers, each worked out once, and what polynomials in
 * them come to.
 */
final class LocalPowers {

  private final LocalRing ring;
  private final List<List<BigInteger[]>> powers = new ArrayList<>();

  LocalPowers(LocalRing ring, List<BigInteger[]> roots) {
    this.ring = ring;
    for (BigInteger[] root : roots) {
      powers.add(new ArrayList<>(Arrays.asList(ring.constant(BigInteger.ONE), root)));
    }
  }

  private BigInteger[] power(int root, int exponent) {
    List<BigInteger[]> known = powers.get(root);
    while (known.size() <= exponent) {
      known.add(ring.times(known.get(known.size() - 1), known.get(1)));
    }
    return known.get(exponent);
  }

  BigInteger[] value(MultivariatePolynomial whole) {
    return value(whole, whole.unknowns() - 1);
  }

  /** What stands beside each power of one root is worked out before that power is put to it. */
  private BigInteger[] value(MultivariatePolynomial whole, int last) {
    int root = last;
    while (root >= 0 && whole.degreeIn(root) == 0) {
      root--;
    }
    if (root < 0) {
      return ring.constant(whole.coefficient(Monomial.ONE).numerator());
    }
    BigInteger[] sum = ring.constant(BigInteger.ZERO);
    List<MultivariatePolynomial> beside = whole.coefficientsIn(root);
    for (int exponent = 0; exponent < beside.size(); exponent++) {
      MultivariatePolynomial part = beside.get(exponent);
      if (part.isConstant() && !part.isZero()) {
        BigInteger factor = part.coefficient(Monomial.ONE).numerator();
        sum = ring.plus(sum, ring.times(power(root, exponent), factor));
      } else if (!part.isZero()) {
        BigInteger[] value = value(part, root - 1);
        sum = ring.plus(sum, exponent == 0 ? value : ring.times(value, power(root, exponent)));
      }
    }
    return sum;
  }

  /** How many products of elements {@link #value} takes about, powers of roots not counted. */
  static int products(MultivariatePolynomial whole) {
    Set<Monomial> beginnings = new HashSet<>();
    for (Monomial monomial : whole.terms().keySet()) {
      int[] exponents = new int[monomial.length()];
      Arrays.setAll(exponents, monomial::exponent);
      for (int from = 1; from < exponents.length; from++) {
        exponents[from - 1] = 0;
        beginnings.add(Monomial.of(exponents));
      }
    }
    return beginnings.size();
  }

  /**
   * Steps with 32 bits each that multiplying may take, were numbers multiplied as at school: what
   * should be over in a second.
   */
  private static final BigInteger MOST_STEPS = BigInteger.valueOf(150_000_000);

  /** Whether so many products of elements should be left because they would take too long. */
  static boolean takesTooLong(long products, LocalRing ring) {
    long words = ring.modulus().bitLength() / 32 + 1L;
    BigInteger length = BigInteger.valueOf(words * ring.degree());
    return BigInteger.valueOf(products).multiply(length.pow(2)).compareTo(MOST_STEPS) > 0;
  }

  /** At least the sum of the absolute values of the coefficients, which are whole. */
  static BigInteger size(MultivariatePolynomial whole) {
    BigInteger sum = BigInteger.ZERO;
    for (Rational coefficient : whole.terms().values()) {
      sum = sum.add(coefficient.numerator().abs());
    }
    return sum;
  }

  /** The least common denominator of the coefficients. */
  static BigInteger denominator(MultivariatePolynomial polynomial) {
    BigInteger common = BigInteger.ONE;
    for (Rational coefficient : polynomial.terms().values()) {
      BigInteger next = coefficient.denominator();
      common = common.divide(common.gcd(next)).multiply(next);
    }
    return common;
  }

  /** At least the Euclidean norm of a polynomial with whole coefficients, so its Mahler measure. */
  static BigInteger norm(Polynomial whole) {
    BigInteger squares = BigInteger.ZERO;
    for (int k = 0; k <= whole.degree(); k++) {
      squares = squares.add(whole.numerator(k).pow(2));
    }
    return squares.sqrt().add(BigInteger.ONE);
  }

  /** The whole number of small size with this residue; a symmetric value has no other part. */
  static BigInteger whole(BigInteger[] element, LocalRing ring) {
    for (int k = 1; k < element.length; k++) {
      if (element[k].signum() != 0) {
        throw new IllegalStateException("a symmetric value is not a number: an error of ours");
      }
    }
    BigInteger half = ring.modulus().shiftRight(1);
    return element[0].compareTo(half) > 0 ? element[0].subtract(ring.modulus()) : element[0];
  }

  /**
   * Whether a renaming of the roots may change the sign of the product of the denominators of the
   * images: each goes to a multiple of another, and the signs multiply.
   */
  static boolean alternates(Collection<MultivariatePolynomial> denominators, int names) {
    for (int[] generator : Orbit.generators(names)) {
      boolean negative = false;
      for (MultivariatePolynomial denominator : denominators) {
        negative ^= denominator.rename(generator).terms().lastEntry().getValue().signum() < 0;
      }
      if (negative) {
        return true;
      }
    }
    return false;
  }
}
