package rootwright.composing.scan.candidate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

class CoefficientBoxTest {

  private static final CoefficientBox SMALL =
      new CoefficientBox(
          List.of(
              new CoefficientRange(-2, 3),
              CoefficientRange.only(7),
              new CoefficientRange(0, 1),
              CoefficientRange.upTo(2)));

  @Test
  void everyCandidateHasOneNumber() {
    Set<List<Long>> met = new HashSet<>();
    for (long index = 0; index < SMALL.candidates(); index++) {
      long[] coefficients = SMALL.coefficientsAt(index);
      assertThat(SMALL.contains(coefficients)).isTrue();
      List<Long> list = new ArrayList<>();
      for (long coefficient : coefficients) {
        list.add(coefficient);
      }
      met.add(list);
    }
    assertThat(SMALL.candidates()).isEqualTo(4L * 2 * 1 * 6);
    assertThat(met).hasSize(48);
  }

  @Test
  void theLeadIsNeverZeroButTheOthersMayBe() {
    assertThat(SMALL.contains(new long[] {0, 7, 0, 0})).isFalse();
    assertThat(SMALL.contains(new long[] {0, 7, 0, -1})).isTrue();
    for (long index = 0; index < SMALL.candidates(); index++) {
      assertThat(SMALL.coefficientsAt(index)[3]).isNotZero();
    }
  }

  @Test
  void rowsFollowOneAnotherInTheOrderOfTheNumbers() {
    for (CoefficientBox box :
        List.of(SMALL, SMALL.with(0, CoefficientRange.upTo(5_000)), CoefficientBox.upTo(2, 3))) {
      Row row = new Row(box);
      long index = 0;
      long[] ascending = new long[box.degree() + 1];
      for (long number = 0; number < box.rows(); number++) {
        row.moveTo(number);
        for (int place = 0; place < row.length(); place++) {
          row.copyTo(place, ascending);
          assertThat(row.index(place)).isEqualTo(index);
          assertThat(ascending).isEqualTo(box.coefficientsAt(index));
          index++;
        }
      }
      assertThat(index).isEqualTo(box.candidates());
    }
  }

  @Test
  void wideningKeepsFixedCoefficientsAndSigns() {
    CoefficientBox box =
        new CoefficientBox(
            List.of(
                CoefficientRange.upTo(1),
                new CoefficientRange(1, 4),
                new CoefficientRange(0, 2),
                CoefficientRange.only(1)));
    assertThat(box.widened(2)).hasToString("1..1 0..4 1..6 -3..3");
  }

  @Test
  void impossibleBoxesAreRefusedWithTheReason() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> CoefficientBox.upTo(2, 3).with(2, CoefficientRange.only(0)))
        .withMessageContaining("lead");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new CoefficientRange(3, 2))
        .withMessageContaining("3..2");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> CoefficientBox.upTo(4, 1L << 40))
        .withMessageContaining("too many candidates");
  }

  @Test
  void rangesAreReadBackAsTheyAreWritten() {
    CoefficientRange range = new CoefficientRange(-7, 12);
    assertThat(CoefficientRange.parse(range.toString())).isEqualTo(range);
  }
}
