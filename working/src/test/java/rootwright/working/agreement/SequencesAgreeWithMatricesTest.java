package rootwright.working.agreement;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigInteger;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.working.Stated;

/** Power sums as a sequence, against traces of powers of a companion matrix in Hipparchus. */
class SequencesAgreeWithMatricesTest {

  private static final long SEED = Long.getLong("rootwright.seed", 4_126L);
  private final SplittableRandom random = new SplittableRandom(SEED);

  private long[] monic(int degree) {
    long[] descending = new long[degree + 1];
    descending[0] = 1;
    for (int k = 1; k <= degree; k++) {
      descending[k] = random.nextLong(-5, 6);
    }
    descending[degree] = random.nextBoolean() ? 3 : -2;
    return descending;
  }

  private static String written(long... descending) {
    return Polynomial.ofDescending(descending).toString();
  }

  private static String message(long... descending) {
    return written(descending) + ", seed " + SEED;
  }

  @Test
  void powerSumsOfAnyIndexAreTracesOfPowersOfTheCompanionMatrix() {
    for (int sample = 0; sample < 20; sample++) {
      long[] p = monic(2 + sample % 3);
      Companion c = Companion.of(p);
      int k = random.nextInt(-6, 30);
      assertThat(Stated.text(written(p), "S_{%d}".formatted(k)))
          .as(message(p) + ", k = " + k)
          .isEqualTo(c.power(k).trace().toString());
    }
  }

  @Test
  void remaindersAndLastDigitsAreThoseOfTheTraces() {
    for (int sample = 0; sample < 12; sample++) {
      long[] p = monic(2 + sample % 3);
      int k = random.nextInt(20, 60);
      long m = random.nextLong(2, 200);
      BigInteger trace = Companion.of(p).power(k).trace().numerator();
      assertThat(Stated.text(written(p), "S_%d mod %d".formatted(k, m)))
          .as(message(p) + ", k = %d, m = %d".formatted(k, m))
          .isEqualTo(trace.mod(BigInteger.valueOf(m)).toString());
      assertThat(Stated.text(written(p), "last two digits of S_%d".formatted(k)))
          .as(message(p) + ", k = " + k)
          .isEqualTo(trace.mod(BigInteger.valueOf(100)).toString());
    }
  }

  @Test
  void thePeriodIsTheFirstPlaceAtWhichTheTracesReturn() {
    for (int sample = 0; sample < 8; sample++) {
      long[] p = monic(2);
      int m = 7;
      int period = Integer.parseInt(Stated.text(written(p), "period mod " + m));
      Companion c = Companion.of(p);
      int[] remainders = new int[period + 3];
      for (int k = 0; k < remainders.length; k++) {
        remainders[k] = c.power(k).trace().numerator().mod(BigInteger.valueOf(m)).intValue();
      }
      for (int earlier = 1; earlier < period; earlier++) {
        boolean returns =
            remainders[earlier] == remainders[0] && remainders[earlier + 1] == remainders[1];
        assertThat(returns).as(message(p) + " returns at " + earlier).isFalse();
      }
      assertThat(new int[] {remainders[period], remainders[period + 1]})
          .as(message(p))
          .containsExactly(remainders[0], remainders[1]);
    }
  }

  @Test
  void theRecurrenceHoldsForTheTraces() {
    for (int sample = 0; sample < 12; sample++) {
      long[] p = monic(3);
      Companion c = Companion.of(p);
      int k = random.nextInt(3, 25);
      Rational sum = Rational.ZERO;
      for (int j = 0; j <= 3; j++) {
        sum = sum.plus(c.power(k - j).trace().times(p[j]));
      }
      assertThat(sum).as(message(p)).isEqualTo(Rational.ZERO);
      String said = Stated.text(written(p), "recurrence");
      assertThat(said).as(message(p)).isNotBlank();
    }
  }
}
