package rootwright.working.route;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import rootwright.algebra.notation.PlainWriter;

class WrittenOutTest {

  private static String written(String ask) {
    return PlainWriter.write(
        WrittenOut.of(Exercise.of("1 -4 2 6", ask).asked().problem()).orElseThrow());
  }

  @Test
  void aSumOverUnorderedPairsHasOneTermForEachPair() {
    assertThat(written("sum 1/(r+s)")).isEqualTo("1/(r + s) + 1/(r + t) + 1/(s + t)");
  }

  @Test
  void aSumOverOrderedPairsHasBothOrders() {
    assertThat(written("sum r/s")).isEqualTo("r/s + r/t + s/r + s/t + t/r + t/s");
  }

  @Test
  void familiesAreWrittenInTheRoots() {
    assertThat(written("S_2 - e_2")).isEqualTo("(r^2 + s^2 + t^2) - (r*s + r*t + s*t)");
  }

  @Test
  void whatIsTooLongIsNotWritten() {
    assertThat(WrittenOut.of(Exercise.of("1 0 0 2 0 1", "sum r^3 s^2").asked().problem()))
        .isEmpty();
  }
}
