package rootwright.algebra.polynomial;

import cc.redberry.rings.Rings;
import cc.redberry.rings.poly.multivar.DegreeVector;
import cc.redberry.rings.poly.multivar.MonomialOrder;
import cc.redberry.rings.poly.multivar.MultivariateGCD;
import cc.redberry.rings.poly.univar.UnivariateGCD;
import cc.redberry.rings.poly.univar.UnivariatePolynomial;
import java.math.BigInteger;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import rootwright.algebra.number.Rational;

/**
 * Takes the greatest common divisor out of two polynomials in several unknowns.
 *
 * <p>Most pairs that are met share nothing or a monomial, which is seen at once. What is left goes
 * to Rings' modular algorithms; its answer is used only if both divisions come out and the
 * quotients are proven to share nothing, so it is not taken on trust.
 */
final class CommonDivisor {

  /** Up to this degree numbers stay small enough for Euclid's algorithm. */
  private static final int EUCLID_SERVES = 12;

  private CommonDivisor() {}

  /** Two polynomials without a common factor. */
  record Cofactors(MultivariatePolynomial first, MultivariatePolynomial second) {}

  /** Whether division after division (Euclid) would take long: the numbers grow on the way. */
  static boolean isLarge(Polynomial first, Polynomial second) {
    return first.degree() > EUCLID_SERVES && second.degree() > EUCLID_SERVES;
  }

  /**
   * The greatest common divisor of two polynomials in one unknown with whole coefficients by the
   * library; nothing if there is no proof that it is one.
   */
  static Optional<Polynomial> of(Polynomial first, Polynomial second) {
    UnivariatePolynomial<cc.redberry.rings.bigint.BigInteger> found =
        UnivariateGCD.PolynomialGCD(toLibrary(first), toLibrary(second));
    BigInteger[] ascending = new BigInteger[found.degree() + 1];
    Arrays.setAll(ascending, k -> new BigInteger(found.get(k).toByteArray()));
    Polynomial common = Polynomial.ofAscending(ascending, BigInteger.ONE).primitive();
    Polynomial.Division one = first.divide(common);
    Polynomial.Division other = second.divide(common);
    boolean proven =
        one.remainder().isZero()
            && other.remainder().isZero()
            && (other.quotient().degree() == 0
                || Coprimality.isProven(one.quotient().primitive(), other.quotient().primitive()));
    return proven ? Optional.of(common) : Optional.empty();
  }

  private static UnivariatePolynomial<cc.redberry.rings.bigint.BigInteger> toLibrary(
      Polynomial whole) {
    var ascending = new cc.redberry.rings.bigint.BigInteger[whole.degree() + 1];
    Arrays.setAll(ascending, k -> new cc.redberry.rings.bigint.BigInteger(whole.numerator(k)));
    return UnivariatePolynomial.create(Rings.Z, ascending);
  }

  /** The two, divided by their greatest common divisor; neither may be zero. */
  static Cofactors takenOut(MultivariatePolynomial first, MultivariatePolynomial second) {
    Monomial shared = sharedMonomial(first, second);
    MultivariatePolynomial a = whole(exact(first, shared));
    MultivariatePolynomial b = whole(exact(second, shared));
    if (Coprimality.isProven(a, b)) {
      return new Cofactors(exact(first, shared), exact(second, shared));
    }
    MultivariatePolynomial common =
        MultivariatePolynomial.term(Rational.ONE, shared).times(byLibrary(a, b));
    MultivariatePolynomial over = quotient(first, common).orElseThrow();
    MultivariatePolynomial under = quotient(second, common).orElseThrow();
    if (!Coprimality.isProven(whole(over), whole(under))) {
      throw new IllegalStateException("no proof that " + over + " and " + under + " are coprime");
    }
    return new Cofactors(over, under);
  }

  /** The quotient if the division leaves nothing. */
  static Optional<MultivariatePolynomial> quotient(
      MultivariatePolynomial dividend, MultivariatePolynomial divisor) {
    Map.Entry<Monomial, Rational> lead = divisor.terms().lastEntry();
    NavigableMap<Monomial, Rational> rest = new TreeMap<>(dividend.terms());
    NavigableMap<Monomial, Rational> quotient = new TreeMap<>();
    while (!rest.isEmpty()) {
      Map.Entry<Monomial, Rational> top = rest.lastEntry();
      int[] exponents = new int[Math.max(top.getKey().length(), lead.getKey().length())];
      for (int k = 0; k < exponents.length; k++) {
        exponents[k] = top.getKey().exponent(k) - lead.getKey().exponent(k);
        if (exponents[k] < 0) {
          return Optional.empty();
        }
      }
      Monomial shift = Monomial.of(exponents);
      Rational factor = top.getValue().over(lead.getValue());
      quotient.put(shift, factor);
      divisor
          .terms()
          .forEach(
              (monomial, value) -> {
                Monomial place = monomial.times(shift);
                Rational left = rest.getOrDefault(place, Rational.ZERO).minus(value.times(factor));
                if (left.isZero()) {
                  rest.remove(place);
                } else {
                  rest.put(place, left);
                }
              });
    }
    return Optional.of(MultivariatePolynomial.of(quotient));
  }

  private static MultivariatePolynomial exact(MultivariatePolynomial dividend, Monomial divisor) {
    return divisor.length() == 0
        ? dividend
        : quotient(dividend, MultivariatePolynomial.term(Rational.ONE, divisor)).orElseThrow();
  }

  private static Monomial sharedMonomial(
      MultivariatePolynomial first, MultivariatePolynomial second) {
    int[] least = new int[Math.min(first.unknowns(), second.unknowns())];
    Arrays.fill(least, Integer.MAX_VALUE);
    for (MultivariatePolynomial polynomial : List.of(first, second)) {
      for (Monomial monomial : polynomial.terms().keySet()) {
        for (int k = 0; k < least.length; k++) {
          least[k] = Math.min(least[k], monomial.exponent(k));
        }
      }
    }
    return Monomial.of(least);
  }

  /** The multiple with whole coefficients without common divisor. */
  private static MultivariatePolynomial whole(MultivariatePolynomial polynomial) {
    BigInteger over = BigInteger.ZERO;
    BigInteger under = BigInteger.ONE;
    for (Rational value : polynomial.terms().values()) {
      over = over.gcd(value.numerator());
      under = under.divide(under.gcd(value.denominator())).multiply(value.denominator());
    }
    return over.signum() == 0 ? polynomial : polynomial.times(new Rational(under, over));
  }

  private static MultivariatePolynomial byLibrary(
      MultivariatePolynomial first, MultivariatePolynomial second) {
    int unknowns = Math.max(first.unknowns(), second.unknowns());
    return fromLibrary(
        MultivariateGCD.PolynomialGCD(toLibrary(first, unknowns), toLibrary(second, unknowns)));
  }

  private static cc.redberry.rings.poly.multivar.MultivariatePolynomial<
          cc.redberry.rings.bigint.BigInteger>
      toLibrary(MultivariatePolynomial whole, int unknowns) {
    var polynomial =
        cc.redberry.rings.poly.multivar.MultivariatePolynomial.zero(
            unknowns, Rings.Z, MonomialOrder.LEX);
    whole
        .terms()
        .forEach(
            (monomial, value) -> {
              int[] exponents = new int[unknowns];
              Arrays.setAll(exponents, monomial::exponent);
              polynomial.add(
                  new cc.redberry.rings.poly.multivar.Monomial<>(
                      new DegreeVector(exponents),
                      new cc.redberry.rings.bigint.BigInteger(value.numerator())));
            });
    return polynomial;
  }

  private static MultivariatePolynomial fromLibrary(
      cc.redberry.rings.poly.multivar.MultivariatePolynomial<cc.redberry.rings.bigint.BigInteger>
          polynomial) {
    NavigableMap<Monomial, Rational> terms = new TreeMap<>();
    polynomial.forEach(
        term ->
            terms.put(
                Monomial.of(term.exponents),
                Rational.of(new BigInteger(term.coefficient.toString()))));
    return MultivariatePolynomial.of(terms);
  }
}
