package rootwright.working.review;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.PlainWriter;
import rootwright.algebra.notation.UnreadableException;
import rootwright.algebra.number.Rational;
import rootwright.working.answer.Answer;
import rootwright.working.ask.ProblemReader;
import rootwright.working.kind.Kinds;
import rootwright.working.problem.Problem;
import rootwright.working.problem.Statement;
import rootwright.working.route.ClassProfile;
import rootwright.working.route.Working;
import rootwright.working.solve.Solution;
import rootwright.working.solve.TwoChecks;

/** What we write ourselves must pass, and must fail as soon as one number in it is changed. */
class ReviewOfOurOwnTest {

  private static final long SEED = Long.getLong("rootwright.seed", 20_261_125L);

  private final Kinds kinds = new Kinds();
  private final TwoChecks checks = new TwoChecks();

  private static Problem problem(String polynomial, String find) throws UnreadableException {
    return ProblemReader.read(Statement.of(polynomial, find));
  }

  @ParameterizedTest
  @CsvSource({
    "4x^3-8x^2+3x+6, r^2+s^2+t^2",
    "5x^3-10x^2+x-4, 1/(r-3)+1/(s-3)+1/(t-3)",
    "x^3-x^2-2x+3, S_6",
    "x^3-4x^2+2x+6, (r+s)(s+t)(t+r)",
    "2x^3+x^2-4x+5, (3-r)(3-s)(3-t)",
    "x^4-3x^3+2x^2+5x-7, 1/r+1/s+1/t+1/u"
  })
  void noLineOfOurRoutesIsCalledWrong(String polynomial, String find) throws UnreadableException {
    Problem problem = problem(polynomial, find);
    Solution solution = kinds.solve(problem, ClassProfile.EVERYTHING);
    assertThat(solution.routes()).isNotEmpty();
    for (Working working : solution.routes()) {
      List<String> lines =
          working.steps().stream().map(step -> PlainWriter.write(step.shown())).toList();
      Review review = Reviewer.of(problem, lines, checks);
      assertThat(review.lines())
          .as(working.route() + " " + lines)
          .noneMatch(line -> line.verdict() == LineVerdict.WRONG);
    }
  }

  @Test
  void aChangedNumberIsFoundInItsLine() throws UnreadableException {
    SplittableRandom random = new SplittableRandom(SEED);
    Problem problem = problem("4x^3-8x^2+3x+6", "Σ r^2");
    List<String> right =
        List.of("e1 = 2", "e2 = 3/4", "Σ r^2 = e1^2 - 2 e2", "e1^2 - 2 e2 = 5/2", "Σ r^2 = 5/2");
    for (int k = 0; k < 40; k++) {
      int at = random.nextInt(right.size());
      if (at == 2) {
        continue;
      }
      String wrong =
          right.get(at).substring(0, right.get(at).indexOf('=') + 1)
              + " "
              + (random.nextInt(3, 90) + "/" + 7 * random.nextInt(1, 5));
      List<String> lines = new ArrayList<>(right);
      lines.set(at, wrong);
      Review review = Reviewer.of(problem, lines, checks);
      assertThat(review.firstWrong().map(LineFinding::number))
          .as("seed %d: %s", SEED, lines)
          .contains(at + 1);
    }
  }

  @ParameterizedTest
  @CsvSource({
    "2x^3-6x^2+x+5, r^2+s^2+t^2",
    "2x^3+x^2-4x+5, (3-r)(3-s)(3-t)",
    "x^4-3x^3+2x^2+5x-7, 1/r+1/s+1/t+1/u"
  })
  void everySlipIsRecognisedByItsValue(String polynomial, String find) throws UnreadableException {
    Problem problem = problem(polynomial, find);
    Solution solution = kinds.solve(problem, ClassProfile.EVERYTHING);
    assertThat(solution.slips()).hasSizeGreaterThan(2);
    for (Solution.WrongTurning slip : solution.slips()) {
      Formula value = slip.value().formula();
      Review review =
          Reviewer.of(problem, List.of(find + " = " + PlainWriter.write(value)), checks);
      assertThat(review.lines().get(0).slips())
          .as(slip.name())
          .extracting(SlipMatch::name)
          .contains(slip.name());
      assertThat(review.end()).isEqualTo(Review.End.ELSEWHERE);
    }
  }

  @Test
  void theAnswerItselfIsNeverMatchedWithASlip() throws UnreadableException {
    Problem problem = problem("2x^3-6x^2+x+5", "Σ r^2");
    Solution solution = kinds.solve(problem, ClassProfile.EVERYTHING);
    assertThat(solution.answer()).isEqualTo(Answer.exact(Rational.of(8)));
    Review review = Reviewer.of(problem, List.of("Σ r^2 = 8"), checks);
    assertThat(review.lines().get(0).slips()).isEmpty();
    assertThat(review.lines().get(0).verdict().isTrue()).isTrue();
  }
}
