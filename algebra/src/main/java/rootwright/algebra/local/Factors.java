package rootwright.algebra.local;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import rootwright.algebra.modular.FieldPolynomials;

/**
 * The irreducible factors of a squarefree polynomial over a prime field: first by degree, from gcds
 * with x^(p^d) − x, then factors of equal degree by Cantor and Zassenhaus's random splitting
 * (Mathematics of Computation 36 (1981) 587–592).
 */
final class Factors {

  private Factors() {}

  /**
   * The products of the irreducible factors of each degree: entry d − 1 is the product of those of
   * degree d, monic, 1 if there are none.
   */
  static List<long[]> byDegree(FieldPolynomials polynomials, long[] squarefree) {
    long[] rest = polynomials.monic(squarefree);
    BigInteger prime = BigInteger.valueOf(polynomials.field().modulus());
    long[] one = {polynomials.field().one()};
    List<long[]> parts = new ArrayList<>();
    long[] power = polynomials.unknown();
    while (rest.length > 1) {
      int degree = parts.size() + 1;
      if (2 * degree > rest.length - 1) {
        while (parts.size() < rest.length - 2) {
          parts.add(one);
        }
        parts.add(rest);
        return parts;
      }
      power = polynomials.power(power, prime, rest);
      long[] part = polynomials.gcd(polynomials.minus(power, polynomials.unknown()), rest);
      parts.add(part);
      rest = polynomials.quotient(rest, part);
    }
    return parts;
  }

  /** The irreducible factors of a product of monic irreducible ones of this degree. */
  static List<long[]> ofEqualDegree(
      FieldPolynomials polynomials, long[] product, int degree, SplittableRandom random) {
    if (product.length - 1 <= degree) {
      return product.length == 1 ? List.of() : List.of(product);
    }
    BigInteger half =
        BigInteger.valueOf(polynomials.field().modulus())
            .pow(degree)
            .subtract(BigInteger.ONE)
            .shiftRight(1);
    long[] one = {polynomials.field().one()};
    while (true) {
      long[] guess = new long[product.length - 1];
      for (int k = 0; k < guess.length; k++) {
        guess[k] = random.nextLong(polynomials.field().modulus());
      }
      long[] power = polynomials.power(FieldPolynomials.trim(guess), half, product);
      long[] part = polynomials.gcd(polynomials.minus(power, one), product);
      if (part.length > 1 && part.length < product.length) {
        List<long[]> factors = new ArrayList<>(ofEqualDegree(polynomials, part, degree, random));
        long[] other = polynomials.quotient(product, part);
        factors.addAll(ofEqualDegree(polynomials, other, degree, random));
        return factors;
      }
    }
  }

  /** A monic irreducible polynomial of this degree; about one in as many is. */
  static long[] irreducible(FieldPolynomials polynomials, int degree, SplittableRandom random) {
    while (true) {
      long[] guess = new long[degree + 1];
      for (int k = 0; k < degree; k++) {
        guess[k] = random.nextLong(polynomials.field().modulus());
      }
      guess[degree] = polynomials.field().one();
      if (polynomials.gcd(guess, polynomials.derivative(guess)).length == 1
          && byDegree(polynomials, guess).size() == degree
          && byDegree(polynomials, guess).get(degree - 1).length == degree + 1) {
        return guess;
      }
    }
  }
}
