package rootwright.working.review;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import rootwright.algebra.notation.UnreadableException;
import rootwright.working.ask.ProblemReader;
import rootwright.working.problem.Statement;
import rootwright.working.solve.TwoChecks;

class ReviewerTest {

  private static Review review(String polynomial, String find, String... lines)
      throws UnreadableException {
    return Reviewer.of(
        ProblemReader.read(Statement.of(polynomial, find)), List.of(lines), new TwoChecks());
  }

  private static List<String> verdicts(Review review) {
    return review.lines().stream().map(line -> line.verdict().code()).toList();
  }

  @Test
  void everyLineOfARightWorkingFollows() throws UnreadableException {
    Review review =
        review(
            "4x^3-8x^2+3x+6",
            "Σ r^2",
            "1. r + s + t = 2, rs + st + tr = 3/4",
            "2. Σ r^2 = (r+s+t)^2 - 2(rs+st+tr)",
            "3.      = 4 - 3/2",
            "So the answer is 5/2.");
    assertThat(verdicts(review)).containsOnly("follows");
    assertThat(review.end()).isEqualTo(Review.End.ARRIVES);
    assertThat(review.lines().get(0).reason()).isEqualTo("read off the coefficients");
    assertThat(review.lines().get(2).reason()).contains("put in");
  }

  @Test
  void theWrongCrossSignIsNamedAndWhatComesOfItIsRightlyDone() throws UnreadableException {
    Review review =
        review(
            "4x^3-8x^2+3x+6",
            "Σ r^2",
            "e1 = 2",
            "e2 = 3/4",
            "Σ r^2 = e1^2 - 2 e2 = 4 + 3/2",
            "= 11/2",
            "3 Σ r^2 = 33/2");
    assertThat(verdicts(review))
        .containsExactly("follows", "follows", "wrong", "follows-from-wrong", "follows-from-wrong");
    assertThat(review.firstWrong())
        .hasValueSatisfying(
            line -> {
              assertThat(line.number()).isEqualTo(3);
              assertThat(line.slips()).extracting(SlipMatch::name).contains("cross-sign");
            });
    assertThat(review.end()).isEqualTo(Review.End.ELSEWHERE);
  }

  @Test
  void aWrongFormulaIsTracedToTheTermThatItMisses() throws UnreadableException {
    Review review =
        review(
            "4x^3-8x^2+3x+6",
            "Σ r^2",
            "sum squared: (r+s+t)^2 = r^2+s^2+t^2+rs+st+tr",
            "4 = Σ r^2 + 3/4",
            "Σ r^2 = 13/4");
    assertThat(verdicts(review))
        .containsExactly("wrong", "follows-from-wrong", "follows-from-wrong");
    assertThat(review.lines().get(0).slips())
        .extracting(SlipMatch::name)
        .contains("one-cross-term");
  }

  @Test
  void contradictingLinesDoNotMakeEverythingFollow() throws UnreadableException {
    Review review = review("4x^3-8x^2+3x+6", "Σ r^2", "e1 = 2", "e1 = 5", "S_3 + S_2 = 7 e3");
    assertThat(verdicts(review)).containsExactly("follows", "wrong", "wrong");
  }

  @Test
  void theForgottenLeadIsFoundInTheFirstLine() throws UnreadableException {
    Review review =
        review("4x^3-8x^2+3x+6", "Σ r^2", "e1 = 8, e2 = 3", "Σr^2 = 64 - 6", "Σr^2 = 58");
    assertThat(review.lines().get(0).verdict()).isEqualTo(LineVerdict.WRONG);
    assertThat(review.lines().get(0).slips())
        .extracting(SlipMatch::name)
        .contains("lead-forgotten");
    assertThat(review.end()).isEqualTo(Review.End.ELSEWHERE);
  }

  @Test
  void aTrueLineOutOfNothingIsCalledUnexplained() throws UnreadableException {
    Review review = review("x^3-x^2-2x+3", "S_20", "S_20 = 5450");
    assertThat(verdicts(review)).containsExactly("true-unexplained");
    assertThat(review.end()).isEqualTo(Review.End.ARRIVES);
  }

  @Test
  void recurrenceAndReductionFollow() throws UnreadableException {
    Review review =
        review(
            "x^3-x^2-2x+3",
            "S_4",
            "r^3 = r^2 + 2r - 3",
            "r^4 = r^3 + 2r^2 - 3r",
            "S_1 = 1 and S_2 = 1 + 4 = 5",
            "S_3 = S_2 + 2 S_1 - 9",
            "S_3 = -2",
            "S_4 = S_3 + 2 S_2 - 3 S_1 = -2 + 10 - 3 = 5");
    assertThat(review.lines())
        .allSatisfy(
            line -> assertThat(line.verdict()).as(line.toString()).isEqualTo(LineVerdict.FOLLOWS));
    assertThat(review.end()).isEqualTo(Review.End.ARRIVES);
  }

  @Test
  void theLogarithmicDerivativeIsKnownAndItsTurnedSignIsFound() throws UnreadableException {
    Review review =
        review(
            "5x^3-10x^2+x-4",
            "Σ 1/(r-3)",
            "P'(x)/P(x) = Σ 1/(x-r)",
            "P(3) = 135 - 90 + 3 - 4 = 44",
            "P'(3) = 76",
            "Σ 1/(3-r) = P'(3)/P(3) = 76/44",
            "Σ 1/(r-3) = 19/11");
    assertThat(verdicts(review))
        .containsExactly("follows", "follows", "follows", "follows", "wrong");
    assertThat(review.lines().get(4).slips())
        .extracting(SlipMatch::name)
        .contains("log-derivative-flipped");
    assertThat(review.lines().get(4).reason()).contains("the sign is turned");
  }

  @Test
  void aNewLetterIsAName() throws UnreadableException {
    Review review =
        review(
            "5x^3-10x^2+x-4",
            "Σ 1/(r-3)",
            "Let y = r - 3.",
            "5y^3 + 35y^2 + 76y + 44 = 0",
            "Σ 1/y = -76/44");
    assertThat(review.lines().get(1).verdict()).isEqualTo(LineVerdict.FOLLOWS);
    assertThat(review.lines().get(2).verdict().isTrue()).isTrue();
    assertThat(review.end()).isEqualTo(Review.End.ARRIVES);
  }

  @Test
  void rootsThatAreFoundMayBePutIn() throws UnreadableException {
    Review review =
        review(
            "x^2-8x+13",
            "r^3+s^3",
            "x^2 - 8x + 13 = 0",
            "r = 4 + √3, s = 4 - √3",
            "(r - s)^2 = 12",
            "r^3 + s^3 = 200");
    assertThat(verdicts(review)).containsOnly("follows");
    Review wrong = review("x^2-8x+13", "r s", "r = 4 + √3, s = 4 + √3");
    assertThat(wrong.firstWrong()).isPresent();
  }

  @Test
  void wordsAndUnreadableLinesAreNeverCalledWrong() throws UnreadableException {
    Review review =
        review(
            "x^2-3x+1",
            "Σ r^2",
            "We use the formulas of Viète.",
            "r + s = = 3",
            "q + s = 3",
            "Σ r^2 ≥ 0",
            "",
            "Σ r^2 = 7");
    assertThat(verdicts(review))
        .containsExactly("remark", "undecided", "undecided", "remark", "true-unexplained");
    assertThat(review.lines().get(4).number()).isEqualTo(6);
  }
}
