package rootwright.working.identity;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import rootwright.algebra.notation.PlainWriter;
import rootwright.algebra.notation.UnreadableException;
import rootwright.working.Subjects;
import rootwright.working.answer.Answer;
import rootwright.working.gate.Warning;
import rootwright.working.gate.WarningCode;
import rootwright.working.kind.Kinds;
import rootwright.working.problem.Statement;
import rootwright.working.route.ClassProfile;
import rootwright.working.route.Working;
import rootwright.working.solve.Solution;

class IdentityUnderConditionTest {

  private static final long SEED = Long.getLong("rootwright.seed", 20_261_133L);
  private static final Subjects SUBJECTS = new Subjects(new Kinds());

  private static Solution work(String find) {
    try {
      return SUBJECTS.work(Statement.of("", find), ClassProfile.EVERYTHING);
    } catch (UnreadableException unreadable) {
      throw new AssertionError(find + ": " + unreadable.refusal(), unreadable);
    }
  }

  private static List<String> lines(Solution solution, String route) {
    return solution.routes().stream()
        .filter(working -> working.route().equals(route))
        .flatMap(working -> working.steps().stream())
        .map(step -> PlainWriter.write(step.shown()))
        .toList();
  }

  @ParameterizedTest(name = "{0}: {1}")
  @CsvFileSource(resources = "identities.csv", delimiter = ';', numLinesToSkip = 1)
  void publishedIdentitiesAreProvedAndFalseOnesRefuted(
      String source, String find, boolean holds, String route) {
    Solution solution = work(find);
    assertThat(solution.answer()).as(source).isEqualTo(new Answer.Truth(holds));
    assertThat(solution.routes()).extracting(Working::route).as(find).contains(route);
  }

  @Test
  void theProofIsOneIdentity() {
    Solution solution = work("prove r^3 + s^3 + t^3 = 3 r s t if r + s + t = 0");
    assertThat(lines(solution, "eliminate"))
        .containsExactly("t = -r - s", "r^3 + s^3 + (-r - s)^3 = 3*r*s*(-r - s)");
    assertThat(lines(solution, "reduction"))
        .containsExactly(
            "r^3 + s^3 + t^3 - 3*r*s*t = (r^2 - r*s - r*t + s^2 - s*t + t^2)*(r + s + t)",
            "r^3 + s^3 + t^3 = 3*r*s*t");
    assertThat(solution.statement())
        .isEqualTo(
            "Let r, s, t be complex numbers with r + s + t = 0. Prove that r³ + s³ + t³ = 3rst.");
    assertThat(solution.slips())
        .extracting(Solution.WrongTurning::name)
        .containsExactly("condition-forgotten");
  }

  @Test
  void aFalseClaimIsRefutedInSmallNumbers() {
    Solution solution = work("prove a + b + c = 0 if a^3 + b^3 + c^3 = 3 a b c");
    assertThat(lines(solution, "counterexample"))
        .containsExactly(
            "a = 1, b = 1, c = 1", "1^3 + 1^3 + 1^3 = 3*1*1*1", "1 + 1 + 1 = 3", "3 != 0");
    assertThat(solution.slips())
        .extracting(Solution.WrongTurning::name)
        .contains("example-believed");
  }

  @Test
  void whatRestsOnRealNumbersIsNotDecided() {
    Solution solution = work("prove a = b if a^2 + b^2 = a b, a, b real");
    assertThat(solution.answer()).isInstanceOf(Answer.None.class);
    assertThat(solution.warnings())
        .singleElement()
        .satisfies(warning -> assertThat(warning.text()).contains("real numbers"));
  }

  @Test
  void conditionsWithoutNumbersAndConditionsWithoutUseAreSaid() {
    Solution empty = work("prove x = 0 if x + y = 1, x + y = 2");
    assertThat(empty.warnings())
        .extracting(Warning::code)
        .containsExactly(WarningCode.CONTRADICTORY);
    Solution idle = work("prove (x+y)^2 = x^2 + 2 x y + y^2 if x + y = 1");
    assertThat(idle.answer()).isEqualTo(new Answer.Truth(true));
    assertThat(idle.warnings()).extracting(Warning::code).contains(WarningCode.REDUNDANT);
  }

  @Test
  void inequalitiesAreProvedBySquares() throws UnreadableException {
    assertThat(
            SUBJECTS
                .work(
                    Statement.of("", "prove a^2 + b^2 > 2 a b if a != b"), ClassProfile.EVERYTHING)
                .answer())
        .isEqualTo(new Answer.Truth(true));
  }

  /** A multiple of the condition follows from it; with 1 added it does not. */
  @Test
  void multiplesOfTheConditionFollowAndOthersDoNot() {
    SplittableRandom random = new SplittableRandom(SEED);
    for (int k = 0; k < 10; k++) {
      String condition =
          "%d x + %d y + z - %d"
              .formatted(random.nextInt(1, 4), random.nextInt(-3, 0), random.nextInt(0, 4));
      String factor = "(x^2 + %d x y - %d z)".formatted(random.nextInt(1, 5), random.nextInt(1, 5));
      String claim = "(%s)*%s".formatted(condition, factor);
      Solution follows = work("prove %s = 0 if %s = 0".formatted(claim, condition));
      assertThat(follows.answer()).as("seed %d: %s", SEED, claim).isEqualTo(new Answer.Truth(true));
      Solution not = work("prove %s = 1 if %s = 0".formatted(claim, condition));
      assertThat(not.answer()).as("seed %d: %s", SEED, claim).isEqualTo(new Answer.Truth(false));
    }
  }
}
