package rootwright.algebra.roots;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rootwright.algebra.local.LocalRing;
import rootwright.algebra.local.LocalRoots;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Monomial;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.polynomial.RationalFunction;
import rootwright.algebra.stop.Stop;

/**
 * The product ∏ (B·T − A) over the images A/B of an orbit, from the p-adic roots of P.
 *
 * <p>With whole coefficients in A and B, the product is a symmetric polynomial in the roots, of
 * degree at most D in each, D being the sum over the images of the larger degree of A and B in one
 * fixed root. So a^D times it, a the lead of the primitive P, has whole coefficients; their size is
 * at most ∏ (‖A‖ + ‖B‖)·‖P‖^D with the sums of absolute values for A and B and the Euclidean norm
 * for P, because a^D·∏ max(1, |r|)^D is the D-th power of the Mahler measure of P (Landau 1905).
 *
 * <p>The images are fixed up to a factor only, so an exchange of two roots may change the sign of
 * the whole product; then it is multiplied by its own leading coefficient, which changes in the
 * same way.
 */
final class LocalOrbit {

  /** A and B with whole coefficients. */
  private record Quotient(MultivariatePolynomial over, MultivariatePolynomial under) {}

  private final Polynomial primitive;
  private final List<Quotient> quotients = new ArrayList<>();
  private final boolean alternates;

  LocalOrbit(Polynomial polynomial, Orbit orbit) {
    primitive = polynomial.primitive();
    for (RationalFunction image : orbit.images()) {
      BigInteger scale = denominator(image.numerator()).multiply(denominator(image.denominator()));
      quotients.add(
          new Quotient(
              image.numerator().times(Rational.of(scale)),
              image.denominator().times(Rational.of(scale))));
    }
    alternates = !orbit.function().isPolynomial() && alternates(orbit);
  }

  /** The monic polynomial ∏ (T − A/B), or nothing if some B is zero at the roots. */
  Optional<Polynomial> polynomial() {
    LocalRoots roots = LocalRoots.of(primitive, bound().shiftLeft(1));
    LocalRing ring = roots.ring();
    Powers powers = new Powers(ring, roots.roots());
    BigInteger[][] product = {ring.constant(primitive.numerator(primitive.degree()).pow(degree()))};
    for (Quotient quotient : quotients) {
      Stop.ifUnwanted();
      BigInteger[] over = powers.value(quotient.over());
      product =
          quotient.under().equals(MultivariatePolynomial.ONE)
              ? timesMonic(product, over, ring)
              : times(product, powers.value(quotient.under()), over, ring);
    }
    BigInteger[] top = product[quotients.size()];
    BigInteger[] whole = new BigInteger[product.length];
    for (int k = 0; k < product.length; k++) {
      whole[k] = whole(alternates ? ring.times(product[k], top) : product[k], ring);
    }
    return whole[quotients.size()].signum() == 0
        ? Optional.empty()
        : Optional.of(Polynomial.ofAscending(whole, whole[quotients.size()]));
  }

  private static BigInteger[][] times(
      BigInteger[][] product, BigInteger[] under, BigInteger[] over, LocalRing ring) {
    BigInteger[][] next = new BigInteger[product.length + 1][];
    for (int k = 0; k <= product.length; k++) {
      BigInteger[] shifted =
          k == 0 ? ring.constant(BigInteger.ZERO) : ring.times(product[k - 1], under);
      next[k] = k == product.length ? shifted : ring.minus(shifted, ring.times(product[k], over));
    }
    return next;
  }

  private static BigInteger[][] timesMonic(
      BigInteger[][] product, BigInteger[] over, LocalRing ring) {
    BigInteger[][] next = new BigInteger[product.length + 1][];
    for (int k = 0; k <= product.length; k++) {
      BigInteger[] shifted = k == 0 ? ring.constant(BigInteger.ZERO) : product[k - 1];
      next[k] = k == product.length ? shifted : ring.minus(shifted, ring.times(product[k], over));
    }
    return next;
  }

  /** The whole number of small size with this residue; a symmetric value has no other part. */
  private static BigInteger whole(BigInteger[] element, LocalRing ring) {
    for (int k = 1; k < element.length; k++) {
      if (element[k].signum() != 0) {
        throw new IllegalStateException("a symmetric value is not a number: an error of ours");
      }
    }
    BigInteger half = ring.modulus().shiftRight(1);
    return element[0].compareTo(half) > 0 ? element[0].subtract(ring.modulus()) : element[0];
  }

  /** The sum over the images of the degree in one root. */
  private int degree() {
    int degree = 0;
    for (Quotient quotient : quotients) {
      int under = quotient.under().degreeIn(0);
      degree += Math.max(quotient.over().degreeIn(0), under) + (alternates ? under : 0);
    }
    return degree;
  }

  private BigInteger bound() {
    BigInteger bound = BigInteger.ONE;
    for (Quotient quotient : quotients) {
      BigInteger under = size(quotient.under());
      bound = bound.multiply(size(quotient.over()).add(under));
      bound = alternates ? bound.multiply(under) : bound;
    }
    BigInteger squares = BigInteger.ZERO;
    for (int k = 0; k <= primitive.degree(); k++) {
      squares = squares.add(primitive.numerator(k).pow(2));
    }
    return bound.multiply(squares.sqrt().add(BigInteger.ONE).pow(degree()));
  }

  private static BigInteger size(MultivariatePolynomial whole) {
    BigInteger sum = BigInteger.ZERO;
    for (Rational coefficient : whole.terms().values()) {
      sum = sum.add(coefficient.numerator().abs());
    }
    return sum;
  }

  private static BigInteger denominator(MultivariatePolynomial polynomial) {
    BigInteger common = BigInteger.ONE;
    for (Rational coefficient : polynomial.terms().values()) {
      BigInteger next = coefficient.denominator();
      common = common.divide(common.gcd(next)).multiply(next);
    }
    return common;
  }

  /**
   * Whether one of the two renamings that generate all changes the sign of the product: each image
   * goes to a multiple of an image, and the signs of the factors multiply.
   */
  private boolean alternates(Orbit orbit) {
    for (int[] generator : Orbit.generators(orbit.names())) {
      boolean negative = false;
      for (RationalFunction image : orbit.images()) {
        MultivariatePolynomial renamed = image.denominator().rename(generator);
        negative ^= renamed.terms().lastEntry().getValue().signum() < 0;
      }
      if (negative) {
        return true;
      }
    }
    return false;
  }

  /** The powers of the roots that the expressions need, each worked out once. */
  private static final class Powers {

    private final LocalRing ring;
    private final List<List<BigInteger[]>> powers = new ArrayList<>();

    Powers(LocalRing ring, List<BigInteger[]> roots) {
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
      BigInteger[] sum = ring.constant(BigInteger.ZERO);
      for (Map.Entry<Monomial, Rational> term : whole.terms().entrySet()) {
        BigInteger[] product = ring.constant(term.getValue().numerator());
        for (int k = 0; k < term.getKey().length(); k++) {
          int exponent = term.getKey().exponent(k);
          product = exponent == 0 ? product : ring.times(product, power(k, exponent));
        }
        sum = ring.plus(sum, product);
      }
      return sum;
    }
  }
}
