package rootwright.composing.scan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import rootwright.algebra.number.Rational;
import rootwright.composing.scan.candidate.CoefficientBox;
import rootwright.composing.scan.candidate.CompiledExpression;
import rootwright.composing.scan.filter.AnswerFilter;
import rootwright.composing.scan.filter.CandidateFilter;
import rootwright.composing.scan.filter.DistinctRoots;
import rootwright.composing.scan.filter.Irreducible;
import rootwright.composing.scan.filter.RealRootCount;
import rootwright.composing.scan.filter.WantedNumber;

class ConflictsTest {

  private static List<List<String>> conflicts(
      CoefficientBox box, CompiledExpression expression, CandidateFilter... filters) {
    Scan scan = Scan.exhaustive(box, expression, List.of(filters), 5);
    return new Conflicts(scan, 1_000_000, ScanControl.alone())
        .find().stream().map(set -> set.stream().map(CandidateFilter::name).toList()).toList();
  }

  @Test
  void irreducibleAndThreeRealRootsExcludeEachOtherAmongTheSmallestMonicCubics() {
    assertThat(
            conflicts(
                CoefficientBox.monicUpTo(3, 1),
                Expressions.sum(3),
                new DistinctRoots(BruteForce.EXACT),
                new Irreducible(BruteForce.EXACT),
                new RealRootCount(3, BruteForce.EXACT)))
        .containsExactly(List.of("irreducible", "real-roots-3"));
  }

  @Test
  void answerThatNoCandidateHasIsToBlameAlone() {
    CompiledExpression squares = Expressions.sumOfSquares(2);
    assertThat(
            conflicts(
                CoefficientBox.monicUpTo(2, 3),
                squares,
                new AnswerFilter(squares, new WantedNumber(Rational.of(2024))),
                new DistinctRoots(BruteForce.EXACT)))
        .containsExactly(List.of("answer-equal-to-2024"));
  }

  @Test
  void wishesThatCanBeMetTogetherAreNotBlamed() {
    assertThat(
            conflicts(
                CoefficientBox.monicUpTo(3, 2),
                Expressions.sum(3),
                new Irreducible(BruteForce.EXACT),
                new RealRootCount(3, BruteForce.EXACT)))
        .isEmpty();
  }
}
