package rootwright.algebra.roots;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rootwright.algebra.local.LocalRing;
import rootwright.algebra.local.LocalRoots;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.polynomial.RationalFunction;
import rootwright.algebra.stop.Stop;

/**
 * The sum or product of the images A/B of an orbit as one fraction, from the p-adic roots of P.
 *
 * <p>Images with the same denominator are joined first. Numerator and denominator of the whole,
 * with whole coefficients in every A and B, are symmetric in the roots or both change sign
 * together; what bounds them is said at {@link LocalOrbit}.
 */
final class LocalTotal {

  /** A and B with whole coefficients. */
  private record Part(MultivariatePolynomial over, MultivariatePolynomial under) {

    static Part of(MultivariatePolynomial over, MultivariatePolynomial under) {
      Rational scale =
          Rational.of(LocalPowers.denominator(over).multiply(LocalPowers.denominator(under)));
      return new Part(over.times(scale), under.times(scale));
    }

    int degree() {
      return Math.max(over.degreeIn(0), under.degreeIn(0));
    }
  }

  private final Polynomial primitive;
  private final List<Part> parts;
  private final boolean sum;
  private final boolean alternates;

  private LocalTotal(Polynomial polynomial, List<Part> parts, Operation operation) {
    primitive = polynomial.primitive();
    this.parts = parts;
    sum = operation == Operation.SUM;
    alternates =
        LocalPowers.alternates(parts.stream().map(Part::under).toList(), polynomial.degree());
  }

  private enum Operation {
    SUM,
    PRODUCT
  }

  static LocalTotal sum(Polynomial polynomial, List<RationalFunction> images) {
    Map<MultivariatePolynomial, MultivariatePolynomial> byDenominator = new LinkedHashMap<>();
    for (RationalFunction image : images) {
      byDenominator.merge(image.denominator(), image.numerator(), (one, other) -> one.plus(other));
    }
    List<Part> parts = new ArrayList<>();
    byDenominator.forEach((under, over) -> parts.add(Part.of(over, under)));
    return new LocalTotal(polynomial, parts, Operation.SUM);
  }

  static LocalTotal product(Polynomial polynomial, List<RationalFunction> images) {
    List<Part> parts =
        images.stream().map(image -> Part.of(image.numerator(), image.denominator())).toList();
    return new LocalTotal(polynomial, parts, Operation.PRODUCT);
  }

  OrbitTotal value() {
    LocalRoots roots = LocalRoots.of(primitive, bound().shiftLeft(1));
    LocalRing ring = roots.ring();
    if (LocalPowers.takesTooLong(products(), ring)) {
      return new OrbitTotal.TooLarge();
    }
    LocalPowers powers = new LocalPowers(ring, roots.roots());
    BigInteger[] lead = ring.constant(primitive.numerator(primitive.degree()).pow(degree()));
    BigInteger[] over = sum ? ring.constant(BigInteger.ZERO) : lead;
    BigInteger[] under = lead;
    for (Part part : parts) {
      Stop.ifUnwanted();
      BigInteger[] a = powers.value(part.over());
      BigInteger[] b = powers.value(part.under());
      over = sum ? ring.plus(ring.times(over, b), ring.times(under, a)) : ring.times(over, a);
      under = ring.times(under, b);
    }
    BigInteger top = LocalPowers.whole(alternates ? ring.times(over, under) : over, ring);
    BigInteger bottom = LocalPowers.whole(alternates ? ring.times(under, under) : under, ring);
    return bottom.signum() == 0
        ? new OrbitTotal.ZeroDenominator()
        : new OrbitTotal.Exact(new Rational(top, bottom));
  }

  private long products() {
    long products = 3L * parts.size();
    for (Part part : parts) {
      products += LocalPowers.products(part.over()) + LocalPowers.products(part.under());
    }
    return products;
  }

  /** The sum over the parts of the degree in one root, twice where the sign may change. */
  private int degree() {
    return parts.stream().mapToInt(Part::degree).sum();
  }

  private BigInteger bound() {
    BigInteger bound = LocalPowers.norm(primitive).pow(degree());
    for (Part part : parts) {
      bound = bound.multiply(LocalPowers.size(part.over()).add(LocalPowers.size(part.under())));
    }
    return alternates ? bound.pow(2) : bound;
  }
}
