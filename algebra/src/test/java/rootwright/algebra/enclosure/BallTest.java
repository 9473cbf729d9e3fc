package rootwright.algebra.enclosure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import java.util.SplittableRandom;
import org.apfloat.Apcomplex;
import org.apfloat.ApcomplexMath;
import org.apfloat.Apfloat;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rootwright.algebra.enclosure.Dyadic.Rounding;
import rootwright.algebra.number.Rational;

class BallTest {

  private static final long SEED = Long.getLong("rootwright.seed", 23L);

  @Test
  void dyadicRoundingKeepsTheSideAndTheLength() {
    SplittableRandom random = new SplittableRandom(SEED);
    for (int round = 0; round < 3000; round++) {
      Rational number =
          Rational.of(random.nextLong(-1_000_000, 1_000_000), random.nextLong(1, 100_000));
      int bits = random.nextInt(1, 70);
      Dyadic low = Dyadic.of(number, bits, Rounding.FLOOR);
      Dyadic high = Dyadic.of(number, bits, Rounding.CEILING);
      assertThat(low.toRational()).isLessThanOrEqualTo(number);
      assertThat(high.toRational()).isGreaterThanOrEqualTo(number);
      assertThat(low.mantissa().abs().bitLength()).isLessThanOrEqualTo(bits);
      // One unit in the last place apart at most.
      Rational gap = high.toRational().minus(low.toRational());
      Rational allowed = number.absolute().times(Rational.of(BigInteger.TWO).power(1 - bits));
      assertThat(gap).as("seed %d", SEED).isLessThanOrEqualTo(allowed);
      assertThat(low.compareTo(high)).isEqualTo(low.toRational().compareTo(high.toRational()));
    }
  }

  @Test
  void dyadicRootsBracketTheRoot() {
    SplittableRandom random = new SplittableRandom(SEED);
    for (int round = 0; round < 500; round++) {
      Dyadic number =
          new Dyadic(BigInteger.valueOf(random.nextLong(1, 1L << 50)), random.nextInt(-60, 60));
      int k = random.nextInt(1, 9);
      Dyadic low = number.root(k, 80, Rounding.FLOOR);
      Dyadic high = number.root(k, 80, Rounding.CEILING);
      assertThat(low.toRational().power(k)).isLessThanOrEqualTo(number.toRational());
      assertThat(high.toRational().power(k)).isGreaterThanOrEqualTo(number.toRational());
      assertThat(high.minus(low).top()).isLessThanOrEqualTo(high.top() - 78);
      assertThat(number.squareRoot(80, Rounding.FLOOR))
          .isEqualTo(number.root(2, 80, Rounding.FLOOR));
      assertThat(number.squareRoot(80, Rounding.CEILING))
          .isEqualTo(number.root(2, 80, Rounding.CEILING));
    }
    assertThat(Dyadic.of(81).root(4, 10, Rounding.CEILING)).isEqualTo(Dyadic.of(3));
    assertThat(Dyadic.of(81).root(4, 10, Rounding.FLOOR)).isEqualTo(Dyadic.of(3));
  }

  @Test
  void realBallsContainEveryResultOnTheirPoints() {
    SplittableRandom random = new SplittableRandom(SEED);
    for (int round = 0; round < 2000; round++) {
      RealBall a = ball(random);
      RealBall b = ball(random);
      Rational x = pointOf(a, random);
      Rational y = pointOf(b, random);
      assertThat(a.plus(b).contains(x.plus(y))).as("seed %d", SEED).isTrue();
      assertThat(a.minus(b).contains(x.minus(y))).as("seed %d", SEED).isTrue();
      assertThat(a.times(b).contains(x.times(y))).as("seed %d", SEED).isTrue();
      assertThat(a.power(5).contains(x.power(5))).as("seed %d", SEED).isTrue();
      if (!b.containsZero()) {
        assertThat(a.over(b, 20).contains(x.over(y))).as("seed %d", SEED).isTrue();
      }
      if (!a.isNegative() && x.signum() >= 0) {
        RealBall root = a.root(3, 40);
        assertThat(root.power(3).contains(x)).as("seed %d", SEED).isTrue();
        assertThat(a.squareRoot(40).power(2).contains(x)).as("seed %d", SEED).isTrue();
      }
    }
  }

  @Test
  void complexBallsContainEveryResultOnTheirPoints() {
    SplittableRandom random = new SplittableRandom(SEED);
    for (int round = 0; round < 1500; round++) {
      ComplexBall a = disc(random);
      ComplexBall b = disc(random);
      Rational[] z = pointOf(a, random);
      Rational[] w = pointOf(b, random);
      contains(a.plus(b), new Rational[] {z[0].plus(w[0]), z[1].plus(w[1])});
      contains(a.minus(b), new Rational[] {z[0].minus(w[0]), z[1].minus(w[1])});
      contains(a.times(b), product(z, w));
      contains(a.power(3), product(z, product(z, z)));
      if (!b.containsZero()) {
        Rational norm = w[0].times(w[0]).plus(w[1].times(w[1]));
        Rational[] inverse = {w[0].over(norm), w[1].negate().over(norm)};
        contains(b.reciprocal(20), inverse);
        contains(a.over(b, 20), product(z, inverse));
      }
      RealBall size = a.absolute(30);
      assertThat(size.power(2).contains(z[0].times(z[0]).plus(z[1].times(z[1])))).isTrue();
    }
  }

  @Test
  void exactBallsStayExactUnderSumsAndProducts() {
    ComplexBall z = ComplexBall.exact(3).plus(ComplexBall.I.times(ComplexBall.exact(4)));
    assertThat(z.power(2)).isEqualTo(new ComplexBall(Dyadic.of(-7), Dyadic.of(24), Dyadic.ZERO));
    assertThat(RealBall.exact(3).power(40).centre().toRational())
        .isEqualTo(Rational.of(3).power(40));
    assertThat(RealBall.exact(3).over(RealBall.exact(4), 10).isExact()).isTrue();
  }

  @ParameterizedTest
  @CsvSource({"2", "3", "5", "12", "40"})
  void principalRootsContainTheValueOfAnotherLibrary(int k) {
    SplittableRandom random = new SplittableRandom(SEED + k);
    for (int round = 0; round < 40; round++) {
      long x = random.nextLong(-1000, 1000);
      long y = round % 8 == 0 ? 1 : random.nextLong(-1000, 1000);
      if (y == 0) {
        continue;
      }
      ComplexBall root =
          new ComplexBall(Dyadic.of(x), Dyadic.of(y), Dyadic.powerOfTwo(-90)).root(k, 80);
      Apcomplex other =
          ApcomplexMath.root(new Apcomplex(new Apfloat(x, 60), new Apfloat(y, 60)), k);
      ComplexBall near =
          ComplexBall.of(
              RealBall.of(rational(other.real()), 170), RealBall.of(rational(other.imag()), 170));
      ComplexBall widened =
          near.plus(new ComplexBall(Dyadic.ZERO, Dyadic.ZERO, Dyadic.powerOfTwo(-150)));
      assertThat(root.contains(widened)).as("root %d of %d + %di", k, x, y).isTrue();
      assertThat(root.radius().top()).isLessThan(-60);
      assertThat(root.power(k).contains(Rational.of(x), Rational.of(y))).isTrue();
    }
  }

  private static Rational rational(Apfloat number) {
    BigDecimal decimal = new BigDecimal(number.toString(true));
    return decimal.scale() >= 0
        ? new Rational(decimal.unscaledValue(), BigInteger.TEN.pow(decimal.scale()))
        : Rational.of(decimal.toBigIntegerExact());
  }

  @Test
  void principalRootsOfDiscsContainTheRootsOfTheirPoints() {
    SplittableRandom random = new SplittableRandom(SEED);
    for (int round = 0; round < 300; round++) {
      ComplexBall disc = disc(random);
      Rational[] z = pointOf(disc, random);
      if (disc.meetsRealAxis() && disc.realCentre().signum() <= 0 || disc.containsZero()) {
        assertThatThrownBy(() -> disc.squareRoot(30)).isInstanceOf(BranchCutException.class);
      } else {
        // The root of the point alone must lie in the root of the disc.
        ComplexBall point = ComplexBall.of(RealBall.of(z[0], 90), RealBall.of(z[1], 90));
        assertThat(disc.squareRoot(30).contains(point.squareRoot(80))).isTrue();
        assertThat(disc.root(7, 30).contains(point.root(7, 80))).isTrue();
      }
    }
  }

  @Test
  void onlyDivisorsThatMayBeZeroAreRefused() {
    RealBall nearZero = new RealBall(Dyadic.ONE, Dyadic.ONE);
    assertThatThrownBy(() -> RealBall.ONE.over(nearZero, 10))
        .isInstanceOf(BallContainsZeroException.class)
        .hasMessageContaining("1 ± 1");
    assertThatThrownBy(() -> ComplexBall.ONE.over(ComplexBall.ZERO, 10))
        .isInstanceOf(BallContainsZeroException.class);
    assertThatThrownBy(() -> new RealBall(Dyadic.ONE, Dyadic.of(-1)))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void onlyCertainDigitsAreWritten() {
    Dyadic third = Dyadic.of(Rational.of(1, 3), 100, Rounding.FLOOR);
    assertThat(RealBall.exact(third).decimal(10)).contains("0.3333333333");
    RealBall loose = new RealBall(third, Dyadic.of(Rational.of(1, 10_000), 30, Rounding.CEILING));
    assertThat(loose.decimal(10)).contains("0.333");
    assertThat(new RealBall(Dyadic.ZERO, Dyadic.powerOfTwo(-20)).decimal(10)).contains("0.00000");
    assertThat(new RealBall(Dyadic.ZERO, Dyadic.ONE).decimal(10)).isEmpty();
    assertThat(new RealBall(Dyadic.of(-2), Dyadic.powerOfTwo(-30)).decimal(5)).contains("-2.0000");
    assertThat(RealBall.exact(1234567).decimal(4)).contains("1.235e6");
    SplittableRandom random = new SplittableRandom(SEED);
    for (int round = 0; round < 300; round++) {
      RealBall ball = ball(random);
      if (!ball.containsZero()) {
        ball.decimal(12)
            .ifPresent(
                text -> {
                  Rational x = pointOf(ball, random);
                  int digits = text.replaceAll("e.*|[-.]", "").replaceAll("^0+", "").length();
                  BigDecimal rounded =
                      new BigDecimal(x.numerator())
                          .divide(
                              new BigDecimal(x.denominator()),
                              new MathContext(digits, RoundingMode.HALF_UP));
                  assertThat(new BigDecimal(text.endsWith(".") ? text + "0" : text))
                      .isEqualByComparingTo(rounded);
                });
      }
    }
  }

  private static void contains(ComplexBall disc, Rational[] point) {
    assertThat(disc.contains(point[0], point[1])).as("seed %d", SEED).isTrue();
  }

  private static Rational[] product(Rational[] z, Rational[] w) {
    return new Rational[] {
      z[0].times(w[0]).minus(z[1].times(w[1])), z[0].times(w[1]).plus(z[1].times(w[0]))
    };
  }

  private static RealBall ball(SplittableRandom random) {
    return new RealBall(
        new Dyadic(BigInteger.valueOf(random.nextLong(-1 << 20, 1 << 20)), random.nextInt(-24, -8)),
        new Dyadic(BigInteger.valueOf(random.nextLong(0, 1 << 10)), random.nextInt(-20, -12)));
  }

  private static Rational pointOf(RealBall ball, SplittableRandom random) {
    Rational t = Rational.of(random.nextInt(-16, 17), 16);
    return ball.centre().toRational().plus(ball.radius().toRational().times(t));
  }

  private static ComplexBall disc(SplittableRandom random) {
    RealBall x = ball(random);
    RealBall y = ball(random);
    return new ComplexBall(x.centre(), y.centre(), x.radius());
  }

  /** A point of the disc: 3-4-5 and its kin reach the edge exactly. */
  private static Rational[] pointOf(ComplexBall disc, SplittableRandom random) {
    List<long[]> directions =
        List.of(
            new long[] {3, 4, 5},
            new long[] {-5, 12, 13},
            new long[] {-8, -15, 17},
            new long[] {1, 0, 1},
            new long[] {0, -1, 1},
            new long[] {20, -21, 29});
    long[] d = directions.get(random.nextInt(directions.size()));
    Rational t = disc.radius().toRational().times(Rational.of(random.nextInt(0, 5), 4));
    return new Rational[] {
      disc.realCentre().toRational().plus(t.times(Rational.of(d[0], d[2]))),
      disc.imaginaryCentre().toRational().plus(t.times(Rational.of(d[1], d[2])))
    };
  }
}
