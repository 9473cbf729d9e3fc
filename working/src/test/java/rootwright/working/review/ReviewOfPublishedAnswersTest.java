package rootwright.working.review;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import rootwright.algebra.notation.UnreadableException;
import rootwright.working.ask.ProblemReader;
import rootwright.working.problem.Problem;
import rootwright.working.problem.Statement;
import rootwright.working.solve.TwoChecks;

/** Answers printed in books are lines that hold; one more than these are lines that do not. */
class ReviewOfPublishedAnswersTest {

  private final TwoChecks checks = new TwoChecks();

  @ParameterizedTest
  @CsvFileSource(resources = "/rootwright/working/kind/published-cases.csv", delimiter = ';')
  void aPrintedAnswerIsTrueAndAnyOtherIsWrong(
      String source, String basis, String polynomial, String ask, String kind, String answer)
      throws UnreadableException {
    if (!kind.equals("exact")) {
      return;
    }
    Problem problem = ProblemReader.read(Statement.of(polynomial, ask));
    Review right = Reviewer.of(problem, List.of(ask + " = " + answer), checks);
    assertThat(right.lines().get(0).verdict().isTrue()).as(source + basis).isTrue();
    assertThat(right.end()).as(source).isEqualTo(Review.End.ARRIVES);
    Review wrong = Reviewer.of(problem, List.of(ask + " = " + answer + " + 1"), checks);
    assertThat(wrong.firstWrong()).as(source).isPresent();
    assertThat(wrong.end()).as(source).isEqualTo(Review.End.ELSEWHERE);
  }

  /**
   * Dickson, First Course in the Theory of Equations, 1922, sec 103 ex 1 (p 129), by his method.
   */
  @Test
  void theTextbookMethodForASumOfSquaresFollowsLineByLine() throws UnreadableException {
    Problem problem = ProblemReader.read(Statement.of("x^3-4x^2+3x+7", "Σ r^2"));
    Review review =
        Reviewer.of(
            problem,
            List.of(
                "Σ r = 4",
                "Σ r s = 3",
                "(Σ r)^2 = Σ r^2 + 2 Σ r s",
                "16 = Σ r^2 + 6",
                "Σ r^2 = 10"),
            checks);
    assertThat(review.lines()).allMatch(line -> line.verdict() == LineVerdict.FOLLOWS);
    assertThat(review.end()).isEqualTo(Review.End.ARRIVES);
  }

  /** Burnside and Panton, The Theory of Equations, chapter III: Newton's method, from memory. */
  @Test
  void newtonsMethodForASumOfCubesFollowsLineByLine() throws UnreadableException {
    Problem problem = ProblemReader.read(Statement.of("x^3+2x^2-3x+5", "Σ r^3"));
    Review review =
        Reviewer.of(
            problem,
            List.of(
                "S_1 = -2",
                "S_2 + 2 S_1 + 2(-3) = 0",
                "S_2 = 10",
                "S_3 + 2 S_2 - 3 S_1 + 15 = 0",
                "S_3 = -20 - 6 - 15 = -41"),
            checks);
    assertThat(review.lines()).allMatch(line -> line.verdict() == LineVerdict.FOLLOWS);
    assertThat(review.end()).isEqualTo(Review.End.ARRIVES);
  }
}
