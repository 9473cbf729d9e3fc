package rootwright.algebra.roots;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;

/** Far power sums begin in machine words and must not notice where they leave them. */
class WordPowersTest {

  private static final long SEED = Long.getLong("rootwright.seed", 20_261_125L);
  private static final int SAMPLES = 60;
  private static final int LAST = 150;

  @Test
  void singlePowerSumsAgreeWithTheTableWhereverWordsBecomeTooShort() {
    SplittableRandom random = new SplittableRandom(SEED);
    for (int sample = 0; sample < SAMPLES; sample++) {
      int degree = random.nextInt(1, 13);
      long size = 1L << random.nextInt(1, 40);
      long[] descending = random.longs(degree + 1L, -size, size + 1).toArray();
      descending[0] = sample % 3 == 0 ? random.nextLong(1, 9) : 1;
      PowerSums sums = PowerSums.of(Polynomial.ofDescending(descending));
      List<Rational> table = sums.upTo(LAST);
      for (int k = 0; k <= LAST; k++) {
        assertThat(sums.value(k))
            .as("seed %d, sample %d, S_%d", SEED, sample, k)
            .isEqualTo(table.get(k));
      }
    }
  }
}
