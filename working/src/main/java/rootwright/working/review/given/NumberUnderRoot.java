package rootwright.working.review.given;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import rootwright.algebra.number.Rational;

/**
 * The square root of a number as a rational number times square roots of primes and of −1, and of
 * what is left when all primes up to {@value #LARGEST_TRIAL} are taken out.
 *
 * @param outside the factor
 * @param inside what stays under signs of their own
 */
record NumberUnderRoot(Rational outside, List<Rational> inside) {

  private static final int LARGEST_TRIAL = 1_000;

  NumberUnderRoot {
    inside = List.copyOf(inside);
  }

  static NumberUnderRoot of(Rational number) {
    BigInteger rest = number.numerator().multiply(number.denominator());
    BigInteger outside = BigInteger.ONE;
    List<Rational> inside = new ArrayList<>();
    if (rest.signum() < 0) {
      inside.add(Rational.MINUS_ONE);
      rest = rest.negate();
    }
    for (int p = 2; p <= LARGEST_TRIAL; p++) {
      BigInteger prime = BigInteger.valueOf(p);
      int times = 0;
      while (rest.mod(prime).signum() == 0) {
        rest = rest.divide(prime);
        times++;
      }
      outside = outside.multiply(prime.pow(times / 2));
      if (times % 2 == 1) {
        inside.add(Rational.of(p));
      }
    }
    BigInteger[] whole = rest.sqrtAndRemainder();
    if (whole[1].signum() == 0) {
      outside = outside.multiply(whole[0]);
    } else {
      inside.add(Rational.of(rest));
    }
    return new NumberUnderRoot(
        Rational.of(outside).over(Rational.of(number.denominator())), inside);
  }
}
