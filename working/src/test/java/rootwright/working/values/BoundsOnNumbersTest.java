package rootwright.working.values;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import rootwright.algebra.notation.PlainWriter;
import rootwright.algebra.notation.UnreadableException;
import rootwright.algebra.number.Rational;
import rootwright.algebra.value.ExactValues;
import rootwright.algebra.value.RationalValue;
import rootwright.working.Subjects;
import rootwright.working.answer.Answer;
import rootwright.working.kind.Kinds;
import rootwright.working.problem.Statement;
import rootwright.working.route.ClassProfile;
import rootwright.working.route.Working;
import rootwright.working.solve.Solution;

class BoundsOnNumbersTest {

  private static final long SEED = Long.getLong("rootwright.seed", 20_261_135L);
  private static final Subjects SUBJECTS = new Subjects(new Kinds());

  private static Solution work(String find) {
    try {
      return SUBJECTS.work(Statement.of("", find), ClassProfile.EVERYTHING);
    } catch (UnreadableException unreadable) {
      throw new AssertionError(find + ": " + unreadable.refusal(), unreadable);
    }
  }

  private static String text(Solution solution) {
    return PlainWriter.write(solution.answer().formula());
  }

  private static List<String> lines(Solution solution) {
    return solution.routes().get(0).steps().stream()
        .map(step -> PlainWriter.write(step.shown()))
        .toList();
  }

  @ParameterizedTest(name = "{0}: {1}")
  @CsvFileSource(resources = "bounds.csv", delimiter = ';', numLinesToSkip = 1)
  void publishedBoundsAreAttained(String source, String find, String answer, String route) {
    Solution solution = work(find);
    assertThat(text(solution)).as(source).isEqualTo(answer);
    assertThat(solution.routes()).extracting(Working::route).containsExactly(route);
  }

  @Test
  void theEqualityCaseIsShownAndChecked() {
    Solution solution = work("greatest x if x+y+z+w=8, x^2+y^2+z^2+w^2=28, x, y, z, w real");
    assertThat(lines(solution))
        .contains(
            "(8 - x)^2 <= 3*(28 - x^2)",
            "(8 - x)^2 - 3*(28 - x^2) = 4*x^2 - 16*x - 20 = 4*(x + 1)*(x - 5)",
            "-1 <= x <= 5",
            "5 + 3*1 = 8",
            "5^2 + 3*1^2 = 28");
    assertThat(solution.slips()).extracting(Solution.WrongTurning::name).contains("sum-forgotten");
  }

  @Test
  void dataThatNoRealNumbersHaveGiveNoBound() {
    Solution solution = work("greatest x if x+y+z=6, x^2+y^2+z^2=5, x, y, z real");
    assertThat(solution.answer()).isInstanceOf(Answer.None.class);
  }

  @Test
  void anEndThatPositiveNumbersDoNotReachIsNotGiven() {
    Solution solution = work("least xyz if x+y+z=6, xy+yz+zx=9, x, y, z positive");
    assertThat(solution.answer()).isInstanceOf(Answer.None.class);
    assertThat(text(work("greatest xyz if x+y+z=6, xy+yz+zx=9, x, y, z positive"))).isEqualTo("4");
  }

  @Test
  void withoutAnOrderOfNumbersThereIsNoGreatest() {
    assertThatThrownBy(
            () ->
                SUBJECTS.work(
                    Statement.of("", "greatest x if x+y=3, x^2+y^2=5"), ClassProfile.EVERYTHING))
        .isInstanceOfSatisfying(
            UnreadableException.class,
            unreadable -> assertThat(unreadable.refusal().code()).isEqualTo("domain-open"));
  }

  /** Numbers are drawn; the largest of them never exceeds the bound from their sum and squares. */
  @Test
  void noDrawnNumberExceedsTheBound() {
    SplittableRandom random = new SplittableRandom(SEED);
    for (int k = 0; k < 12; k++) {
      int x = random.nextInt(-9, 10);
      int y = random.nextInt(-9, 10);
      int z = random.nextInt(-9, 10);
      String find =
          "greatest x if x+y+z=%d, x^2+y^2+z^2=%d, x, y, z real"
              .formatted(x + y + z, x * x + y * y + z * z);
      Answer.Exact bound = (Answer.Exact) work(find).answer();
      RationalValue largest = new RationalValue(Rational.of(Math.max(x, Math.max(y, z))));
      assertThat(ExactValues.compareReal(largest, bound.value()))
          .as("seed %d: %s", SEED, find)
          .isLessThanOrEqualTo(0);
    }
  }
}
