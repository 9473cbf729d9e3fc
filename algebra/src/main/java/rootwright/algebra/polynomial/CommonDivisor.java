package rootwright.algebra.polynomial;

import java.math.BigInteger;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import rootwright.algebra.number.Rational;

/**
 * The greatest common divisor of polynomials in several unknowns, by primitive remainders in the
 * last unknown and recursion on the coefficients. Meant for the small sizes that a person types.
 */
final class CommonDivisor {

  private CommonDivisor() {}

  /** A greatest common divisor; zero only if both are zero. */
  static MultivariatePolynomial of(MultivariatePolynomial first, MultivariatePolynomial second) {
    if (first.isZero()) {
      return second;
    }
    if (second.isZero()) {
      return first;
    }
    int unknown = Math.max(first.unknowns(), second.unknowns()) - 1;
    if (unknown < 0) {
      return MultivariatePolynomial.ONE;
    }
    MultivariatePolynomial firstContent = content(first, unknown);
    MultivariatePolynomial secondContent = content(second, unknown);
    MultivariatePolynomial content = of(firstContent, secondContent);
    MultivariatePolynomial a = exact(first, firstContent);
    MultivariatePolynomial b = exact(second, secondContent);
    if (a.degreeIn(unknown) < b.degreeIn(unknown)) {
      MultivariatePolynomial swap = a;
      a = b;
      b = swap;
    }
    while (b.degreeIn(unknown) > 0) {
      MultivariatePolynomial rest = remainder(a, b, unknown);
      a = b;
      b = rest.isZero() ? rest : exact(rest, content(rest, unknown));
    }
    // What is left without the unknown is zero (a divides) or a unit among primitive polynomials.
    return b.isZero() ? whole(a.times(content)) : whole(content);
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

  private static MultivariatePolynomial exact(
      MultivariatePolynomial dividend, MultivariatePolynomial divisor) {
    return whole(quotient(dividend, divisor).orElseThrow());
  }

  /** The greatest common divisor of the coefficients of the powers of one unknown. */
  private static MultivariatePolynomial content(MultivariatePolynomial of, int unknown) {
    MultivariatePolynomial content = MultivariatePolynomial.ZERO;
    for (MultivariatePolynomial part : of.coefficientsIn(unknown)) {
      content = of(content, part);
      if (content.isConstant() && !content.isZero()) {
        return MultivariatePolynomial.ONE;
      }
    }
    return content;
  }

  private static MultivariatePolynomial remainder(
      MultivariatePolynomial a, MultivariatePolynomial b, int unknown) {
    int degree = b.degreeIn(unknown);
    List<MultivariatePolynomial> divisor = b.coefficientsIn(unknown);
    MultivariatePolynomial rest = a;
    while (!rest.isZero() && rest.degreeIn(unknown) >= degree) {
      int top = rest.degreeIn(unknown);
      MultivariatePolynomial shift =
          MultivariatePolynomial.term(Rational.ONE, Monomial.power(unknown, top - degree));
      rest =
          rest.times(divisor.get(degree))
              .minus(b.times(rest.coefficientsIn(unknown).get(top)).times(shift));
    }
    return rest;
  }

  /** The multiple with whole coefficients without common divisor: keeps the numbers short. */
  private static MultivariatePolynomial whole(MultivariatePolynomial polynomial) {
    BigInteger over = BigInteger.ZERO;
    BigInteger under = BigInteger.ONE;
    for (Rational value : polynomial.terms().values()) {
      over = over.gcd(value.numerator());
      under = under.divide(under.gcd(value.denominator())).multiply(value.denominator());
    }
    return over.signum() == 0 ? polynomial : polynomial.times(new Rational(under, over));
  }
}
