package rootwright.algebra.roots;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import rootwright.algebra.local.LocalRing;
import rootwright.algebra.local.LocalRoots;
import rootwright.algebra.number.Rational;
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
  private final MultivariatePolynomial denominator;
  private final boolean alternates;

  LocalOrbit(Polynomial polynomial, Orbit orbit) {
    primitive = polynomial.primitive();
    denominator = orbit.function().denominator();
    for (RationalFunction image : orbit.images()) {
      BigInteger scale =
          LocalPowers.denominator(image.numerator())
              .multiply(LocalPowers.denominator(image.denominator()));
      quotients.add(
          new Quotient(
              image.numerator().times(Rational.of(scale)),
              image.denominator().times(Rational.of(scale))));
    }
    alternates =
        !orbit.function().isPolynomial()
            && LocalPowers.alternates(
                orbit.images().stream().map(RationalFunction::denominator).toList(), orbit.names());
  }

  /** How many products of elements are needed about. */
  private long products() {
    long factors = quotients.size();
    long products =
        factors * factors / (quotients.get(0).under().equals(MultivariatePolynomial.ONE) ? 2 : 1);
    for (Quotient quotient : quotients) {
      products += LocalPowers.products(quotient.over()) + LocalPowers.products(quotient.under());
    }
    return products;
  }

  /** The monic polynomial ∏ (T − A/B), or why there is none. */
  OrbitPolynomial polynomial() {
    LocalRoots roots = LocalRoots.of(primitive, bound().shiftLeft(1));
    LocalRing ring = roots.ring();
    if (LocalPowers.takesTooLong(products(), ring)) {
      return new OrbitPolynomial.TooLarge(BigInteger.valueOf(quotients.size()));
    }
    LocalPowers powers = new LocalPowers(ring, roots.roots());
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
      whole[k] = LocalPowers.whole(alternates ? ring.times(product[k], top) : product[k], ring);
    }
    return whole[quotients.size()].signum() == 0
        ? new OrbitPolynomial.ZeroDenominator(denominator)
        : new OrbitPolynomial.Exact(Polynomial.ofAscending(whole, whole[quotients.size()]));
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
      BigInteger under = LocalPowers.size(quotient.under());
      bound = bound.multiply(LocalPowers.size(quotient.over()).add(under));
      bound = alternates ? bound.multiply(under) : bound;
    }
    return bound.multiply(LocalPowers.norm(primitive).pow(degree()));
  }
}
