package rootwright.composing.scan;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigInteger;
import java.util.List;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;
import rootwright.composing.scan.candidate.CoefficientBox;
import rootwright.composing.scan.candidate.CompiledExpression;
import rootwright.composing.scan.filter.AnswerFilter;
import rootwright.composing.scan.filter.WholeNumber;

class ScanEstimateTest {

  private static Scan scan(CoefficientBox box) {
    CompiledExpression sum = Expressions.sum(2);
    return Scan.exhaustive(box, sum, List.of(new AnswerFilter(sum, new WholeNumber())), 5);
  }

  @Test
  void sampleOfAClockThatTicksOnceARowIsProportional() {
    CoefficientBox box = CoefficientBox.upTo(2, 50);
    AtomicLong clock = new AtomicLong();
    ScanEstimate estimate = ScanEstimate.of(scan(box), 3, clock::getAndIncrement, 1_000);
    assertThat(estimate.nanoseconds()).isEqualTo(1_000);
    assertThat(estimate.examined()).isEqualTo(1_000L * 101);
    assertThat(estimate.nanosecondsForAll(1)).isEqualTo(BigInteger.valueOf(box.rows()));
    assertThat(estimate.nanosecondsForAll(2)).isEqualTo(BigInteger.valueOf(box.rows() / 2));
  }

  @Test
  void sampleOfTheWholeBoxKnowsTheExactNumber() {
    CoefficientBox box = CoefficientBox.upTo(2, 6);
    ScanEstimate estimate = ScanEstimate.of(scan(box), 3, () -> 0, 1);
    assertThat(estimate.examined()).isEqualTo(box.candidates());
    assertThat(estimate.expectedAccepted())
        .isEqualTo(BigInteger.valueOf(scan(box).run(ScanControl.alone()).accepted()));
  }

  @Test
  void spentBudgetStillScreensOneRow() {
    ScanEstimate estimate =
        ScanEstimate.of(scan(CoefficientBox.upTo(2, 6)), 3, new AtomicLong()::getAndIncrement, 0);
    assertThat(estimate.examined()).isEqualTo(13);
  }
}
