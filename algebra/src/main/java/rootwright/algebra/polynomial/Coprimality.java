package rootwright.algebra.polynomial;

import java.util.Arrays;
import java.util.Map;
import java.util.SplittableRandom;
import rootwright.algebra.modular.FieldPolynomials;
import rootwright.algebra.modular.OddModulus;
import rootwright.algebra.modular.WordPrimes;
import rootwright.algebra.number.Rational;

/**
 * Proves that two polynomials in several unknowns share no factor, without dividing them: with
 * numbers modulo a prime put for all unknowns but one, a common factor would stay a common factor
 * of the same degree in that one unknown, provided the leading coefficient of one of them does not
 * vanish. The numbers come from a fixed seed; they cannot make the proof wrong, only fail to find
 * it.
 */
final class Coprimality {

  private static final int ATTEMPTS = 3;

  private Coprimality() {}

  /** Whether it is proven that the two share no factor; false also if no proof was found. */
  static boolean isProven(MultivariatePolynomial first, MultivariatePolynomial second) {
    int unknowns = Math.min(first.unknowns(), second.unknowns());
    for (int unknown = 0; unknown < unknowns; unknown++) {
      boolean occurs = first.degreeIn(unknown) > 0 && second.degreeIn(unknown) > 0;
      if (occurs && !sharesNothingIn(unknown, first, second)) {
        return false;
      }
    }
    return true;
  }

  /** The same for two polynomials in one unknown with whole coefficients. */
  static boolean isProven(Polynomial first, Polynomial second) {
    if (first.degree() < 1 || second.degree() < 1) {
      return false;
    }
    OddModulus prime = WordPrimes.get(0);
    long[] a = image(first, prime);
    long[] b = image(second, prime);
    boolean keepsDegree = a.length == first.degree() + 1 || b.length == second.degree() + 1;
    return keepsDegree && new FieldPolynomials(prime).gcd(a, b).length == 1;
  }

  private static long[] image(Polynomial whole, OddModulus prime) {
    long[] image = new long[whole.degree() + 1];
    Arrays.setAll(image, k -> prime.represent(whole.numerator(k)));
    return FieldPolynomials.trim(image);
  }

  private static boolean sharesNothingIn(
      int unknown, MultivariatePolynomial first, MultivariatePolynomial second) {
    SplittableRandom random = new SplittableRandom(unknown);
    for (int attempt = 0; attempt < ATTEMPTS; attempt++) {
      OddModulus prime = WordPrimes.get(attempt);
      long[] point = new long[Math.max(first.unknowns(), second.unknowns())];
      for (int k = 0; k < point.length; k++) {
        point[k] = random.nextLong(prime.modulus());
      }
      long[] a = image(first, unknown, point, prime);
      long[] b = image(second, unknown, point, prime);
      boolean keepsDegree =
          a.length == first.degreeIn(unknown) + 1 || b.length == second.degreeIn(unknown) + 1;
      if (keepsDegree && new FieldPolynomials(prime).gcd(a, b).length == 1) {
        return true;
      }
    }
    return false;
  }

  /** Coefficients must be whole: a denominator would change what a common factor is modulo p. */
  private static long[] image(
      MultivariatePolynomial whole, int unknown, long[] point, OddModulus prime) {
    long[] image = new long[whole.degreeIn(unknown) + 1];
    for (Map.Entry<Monomial, Rational> term : whole.terms().entrySet()) {
      long product = prime.represent(term.getValue().numerator());
      for (int k = 0; k < term.getKey().length(); k++) {
        int exponent = term.getKey().exponent(k);
        if (k != unknown && exponent > 0) {
          product = prime.times(product, prime.power(point[k], exponent));
        }
      }
      int place = term.getKey().exponent(unknown);
      image[place] = prime.plus(image[place], product);
    }
    return FieldPolynomials.trim(image);
  }
}
