package rootwright.working.check.second;

import java.math.BigInteger;
import rootwright.algebra.enclosure.ComplexBall;
import rootwright.algebra.enclosure.Dyadic;
import rootwright.algebra.enclosure.RealBall;
import rootwright.algebra.number.Rational;

/**
 * Functions of angles q·π carried as balls: π by Machin's formula (1706), the cosine by its power
 * series with the first term left out as the bound of the rest.
 */
final class Circle {

  private static final int GUARD_BITS = 24;

  private final int bits;

  Circle(int bits) {
    this.bits = bits + GUARD_BITS;
  }

  /** The value of a function of the angle q·π. */
  ComplexBall of(String function, Rational q) {
    RealBall one = RealBall.exact(1);
    return ComplexBall.of(
        switch (function) {
          case "cos" -> cosine(q);
          case "sin" -> sine(q);
          case "tan" -> sine(q).over(cosine(q), bits);
          case "cot" -> cosine(q).over(sine(q), bits);
          case "sec" -> one.over(cosine(q), bits);
          default -> one.over(sine(q), bits);
        });
  }

  private RealBall sine(Rational q) {
    return cosine(q.minus(Rational.ONE.over(Rational.of(2))));
  }

  /** By cos(−x) = cos x, cos(2π − x) = cos x and cos(π − x) = −cos x the angle is below π/2. */
  private RealBall cosine(Rational q) {
    BigInteger turn = q.denominator().shiftLeft(1);
    Rational within = new Rational(q.numerator().mod(turn), q.denominator());
    if (within.compareTo(Rational.ONE) > 0) {
      within = Rational.of(2).minus(within);
    }
    Rational half = Rational.ONE.over(Rational.of(2));
    if (within.equals(half)) {
      return RealBall.exact(0);
    }
    return within.compareTo(half) > 0
        ? series(Rational.ONE.minus(within)).negate()
        : series(within);
  }

  /** 1 − x²/2! + x⁴/4! − …, the terms decreasing for 0 ≤ x < π/2 from the second on. */
  private RealBall series(Rational q) {
    RealBall x = pi().times(RealBall.of(q, bits));
    RealBall square = x.times(x);
    RealBall sum = RealBall.exact(1);
    RealBall term = RealBall.exact(1);
    Dyadic least = Dyadic.powerOfTwo(-bits);
    for (long k = 1; ; k++) {
      term = term.times(square).over(RealBall.exact(2 * k * (2 * k - 1)), bits).negate();
      Dyadic size =
          term.high().absolute().compareTo(term.low().absolute()) > 0
              ? term.high().absolute()
              : term.low().absolute();
      if (k > 1 && size.compareTo(least) < 0) {
        return sum.plus(RealBall.between(size.negate(), size));
      }
      sum = sum.plus(term);
    }
  }

  /** π = 16·arctan(1/5) − 4·arctan(1/239). */
  private RealBall pi() {
    return arctanOfReciprocal(5)
        .times(RealBall.exact(16))
        .minus(arctanOfReciprocal(239).times(RealBall.exact(4)));
  }

  /** 1/n − 1/(3n³) + …, every term rounded down by less than one unit. */
  private RealBall arctanOfReciprocal(int n) {
    BigInteger square = BigInteger.valueOf((long) n * n);
    BigInteger power = BigInteger.ONE.shiftLeft(bits).divide(BigInteger.valueOf(n));
    BigInteger sum = BigInteger.ZERO;
    long terms = 0;
    while (power.signum() > 0) {
      BigInteger term = power.divide(BigInteger.valueOf(2 * terms + 1));
      sum = terms % 2 == 0 ? sum.add(term) : sum.subtract(term);
      power = power.divide(square);
      terms++;
    }
    BigInteger error = BigInteger.valueOf(2 * terms + 2);
    return RealBall.between(
        Dyadic.of(sum.subtract(error)).scaled(-bits), Dyadic.of(sum.add(error)).scaled(-bits));
  }
}
