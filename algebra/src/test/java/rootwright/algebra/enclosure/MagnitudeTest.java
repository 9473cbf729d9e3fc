package rootwright.algebra.enclosure;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import rootwright.algebra.number.Rational;

class MagnitudeTest {

  private static final long SEED = Long.getLong("rootwright.seed", 41L);

  private static final Rational CLOSE = Rational.of(1, 1 << 24);

  @Test
  void everyOperationLiesOnTheSideItNames() {
    List<Magnitude> samples = samples();
    for (Magnitude a : samples) {
      for (Magnitude b : samples) {
        Rational x = a.toDyadic().toRational();
        Rational y = b.toDyadic().toRational();
        isJustAbove(a.plusUp(b), x.plus(y));
        isJustBelow(a.plusDown(b), x.plus(y));
        isJustAbove(a.timesUp(b), x.times(y));
        isJustBelow(a.timesDown(b), x.times(y));
        if (!y.isZero()) {
          isJustAbove(a.overUp(b), x.over(y));
        }
        if (x.compareTo(y) >= 0) {
          assertThat(a.minusDown(b).toDyadic().toRational()).isLessThanOrEqualTo(x.minus(y));
          assertThat(x.minus(y).minus(a.minusDown(b).toDyadic().toRational()))
              .isLessThanOrEqualTo(x.times(CLOSE));
        } else {
          assertThat(a.minusDown(b).isZero()).isTrue();
        }
        assertThat(Integer.signum(a.compareTo(b))).isEqualTo(x.compareTo(y));
      }
      Rational root = a.rootUp().toDyadic().toRational();
      Rational below = a.rootDown().toDyadic().toRational();
      Rational x = a.toDyadic().toRational();
      assertThat(root.times(root)).isGreaterThanOrEqualTo(x);
      assertThat(below.times(below)).isLessThanOrEqualTo(x);
      assertThat(root.minus(below)).isLessThanOrEqualTo(root.times(CLOSE));
    }
  }

  @Test
  void longIntegersAreRoundedToTheSideNamed() {
    SplittableRandom random = new SplittableRandom(SEED);
    for (int round = 0; round < 2000; round++) {
      BigInteger value = new BigInteger(random.nextInt(1, 200), new Random(random.nextLong()));
      for (BigInteger signed : List.of(value, value.negate(), value.add(BigInteger.ONE).negate())) {
        isJustAbove(Magnitude.up(signed, 0), Rational.of(signed.abs()));
        isJustBelow(Magnitude.down(signed, 0), Rational.of(signed.abs()));
      }
    }
    // Powers of two and their neighbours carry over into the next place.
    for (int k = 1; k < 130; k++) {
      for (int d = -1; d <= 1; d++) {
        BigInteger value = BigInteger.ONE.shiftLeft(k).add(BigInteger.valueOf(d));
        isJustAbove(Magnitude.up(value.negate(), 0), Rational.of(value));
        isJustBelow(Magnitude.down(value.negate(), 0), Rational.of(value));
      }
    }
  }

  private static void isJustAbove(Magnitude bound, Rational truth) {
    Rational value = bound.toDyadic().toRational();
    assertThat(value).as("seed %d", SEED).isGreaterThanOrEqualTo(truth);
    assertThat(value.minus(truth)).as("seed %d", SEED).isLessThanOrEqualTo(truth.times(CLOSE));
  }

  private static void isJustBelow(Magnitude bound, Rational truth) {
    Rational value = bound.toDyadic().toRational();
    assertThat(value).as("seed %d", SEED).isLessThanOrEqualTo(truth);
    assertThat(truth.minus(value)).as("seed %d", SEED).isLessThanOrEqualTo(truth.times(CLOSE));
  }

  private static List<Magnitude> samples() {
    SplittableRandom random = new SplittableRandom(SEED);
    List<Magnitude> samples =
        new ArrayList<>(
            List.of(
                Magnitude.ZERO,
                Magnitude.ONE,
                Magnitude.powerOfTwo(31),
                Magnitude.powerOfTwo(-32),
                Magnitude.up((1L << 31) - 1, 0),
                Magnitude.up((1L << 31) - 1, 1),
                Magnitude.up((1L << 31) - 1, -40)));
    for (int k = 0; k < 60; k++) {
      samples.add(Magnitude.up(random.nextLong(1, 1L << 40), random.nextInt(-80, 40)));
    }
    return samples;
  }
}
