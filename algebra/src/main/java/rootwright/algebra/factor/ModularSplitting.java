package rootwright.algebra.factor;

import java.math.BigInteger;
import java.util.Arrays;
import rootwright.algebra.modular.FieldPolynomials;
import rootwright.algebra.modular.OddModulus;
import rootwright.algebra.modular.WordPrimes;
import rootwright.algebra.polynomial.Polynomial;

/**
 * Into how many irreducible factors a polynomial splits modulo a prime, by their degrees (Cantor,
 * Zassenhaus 1981). A factorisation over the rational numbers tries subsets of them, so their
 * number says how long it may take.
 */
final class ModularSplitting {

  private static final int PRIMES = 5;

  private final FieldPolynomials field;

  private ModularSplitting(OddModulus prime) {
    field = new FieldPolynomials(prime);
  }

  /** The least number of factors modulo a few primes; the degree if none of them serves. */
  static int fewestParts(Polynomial squarefree) {
    int fewest = squarefree.degree();
    for (int k = 0; k < PRIMES; k++) {
      OddModulus prime = WordPrimes.get(k);
      long[] image = new long[squarefree.degree() + 1];
      Arrays.setAll(image, j -> prime.represent(squarefree.numerator(j)));
      ModularSplitting splitting = new ModularSplitting(prime);
      if (image[image.length - 1] != 0 && splitting.isSquarefree(image)) {
        fewest = Math.min(fewest, splitting.parts(image));
      }
    }
    return fewest;
  }

  private boolean isSquarefree(long[] image) {
    return field.gcd(image, field.derivative(image)).length == 1;
  }

  /** Roots of x^(p^d) − x are the elements of degree dividing d. */
  private int parts(long[] image) {
    BigInteger p = BigInteger.valueOf(field.field().modulus());
    long[] rest = field.monic(image);
    long[] power = field.unknown();
    int parts = 0;
    for (int d = 1; rest.length - 1 >= 2 * d; d++) {
      power = field.power(power, p, rest);
      long[] common = field.gcd(rest, field.minus(power, field.unknown()));
      if (common.length > 1) {
        parts += (common.length - 1) / d;
        rest = field.quotient(rest, common);
        power = field.remainder(power, rest);
      }
    }
    return rest.length > 1 ? parts + 1 : parts;
  }
}
