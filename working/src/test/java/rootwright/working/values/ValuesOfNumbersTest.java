package rootwright.working.values;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import rootwright.algebra.notation.PlainWriter;
import rootwright.algebra.notation.UnreadableException;
import rootwright.algebra.number.Rational;
import rootwright.working.Subjects;
import rootwright.working.answer.Answer;
import rootwright.working.gate.Warning;
import rootwright.working.gate.WarningCode;
import rootwright.working.kind.Kinds;
import rootwright.working.problem.Statement;
import rootwright.working.route.ClassProfile;
import rootwright.working.solve.Solution;

class ValuesOfNumbersTest {

  private static final long SEED = Long.getLong("rootwright.seed", 20_261_132L);
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

  private static List<WarningCode> codes(Solution solution) {
    return solution.warnings().stream().map(Warning::code).toList();
  }

  private static List<String> lines(Solution solution, String route) {
    return solution.routes().stream()
        .filter(working -> working.route().equals(route))
        .flatMap(working -> working.steps().stream())
        .map(step -> PlainWriter.write(step.shown()))
        .toList();
  }

  @ParameterizedTest(name = "{0}: {1}")
  @CsvFileSource(resources = "given-values.csv", delimiter = ';', numLinesToSkip = 1)
  void publishedValuesGiveTheAnswerByAWorking(String source, String find, String answer) {
    Solution solution = work(find);
    assertThat(text(solution)).as(source).isEqualTo(answer);
    assertThat(solution.routes()).as(find).isNotEmpty();
  }

  @Test
  void numbersSaidToBeRealThatAreNotKeepTheirValueAndLoseTheWordReal() {
    Solution solution = work("x^5+y^5+z^5 if x+y+z=0, x^2+y^2+z^2=6, x^3+y^3+z^3=9, x, y, z real");
    assertThat(text(solution)).isEqualTo("45");
    assertThat(solution.warnings())
        .anySatisfy(
            warning -> {
              assertThat(warning.code()).isEqualTo(WarningCode.NOT_REAL);
              assertThat(warning.text())
                  .contains("t³ − 3t − 3", "−135", "one real root", "complex numbers");
            });
    assertThat(solution.statement()).contains("complex numbers").doesNotContain("real numbers");
    assertThat(lines(solution, "newton"))
        .containsExactly(
            "e_1 = x + y + z = 0",
            "x^2 + y^2 + z^2 = e_1^2 - 2*e_2 = 6",
            "e_2 = (e_1^2 - 6)/2 = -6/2 = -3",
            "x^3 + y^3 + z^3 = e_1^3 - 3*e_1*e_2 + 3*e_3 = 9",
            "e_3 = (3*e_1*e_2 - e_1^3 + 9)/3 = 9/3 = 3",
            "x^5 + y^5 + z^5 = S_5 = -e_2*S_3 + e_3*S_2 = -(-3*9) + 3*6 = 45");
    assertThat(solution.slips())
        .anySatisfy(slip -> assertThat(slip.name()).isEqualTo("product-of-sums"));
  }

  @Test
  void dataThatContradictOneAnotherAreNamed() {
    Solution solution = work("x^4+y^4 if x+y=3, x^2+y^2=5, xy=1");
    assertThat(solution.answer()).isInstanceOf(Answer.None.class);
    assertThat(solution.warnings())
        .anySatisfy(
            warning -> {
              assertThat(warning.code()).isEqualTo(WarningCode.CONTRADICTORY);
              assertThat(warning.text()).contains("xy = 2 follows").contains("xy = 1");
            });
  }

  @Test
  void moreDataThanNeededAreSaidToBeRedundant() {
    Solution solution = work("x^4+y^4 if x+y=3, x^2+y^2=5, xy=2");
    assertThat(text(solution)).isEqualTo("17");
    assertThat(codes(solution)).contains(WarningCode.REDUNDANT);
  }

  @Test
  void tooFewDataAreShownByTwoExamples() {
    Solution solution = work("x^3+y^3+z^3 if x+y+z=1, xy+yz+zx=2");
    assertThat(solution.answer()).isInstanceOf(Answer.None.class);
    assertThat(solution.warnings())
        .anySatisfy(
            warning -> {
              assertThat(warning.code()).isEqualTo(WarningCode.SEVERAL_PARAMETERS);
              assertThat(warning.text()).contains("if the numbers are the roots of", "but");
            });
  }

  @Test
  void equationsOfHigherDegreeLeaveSeveralCasesAndTheDomainMayChoose() {
    Solution both = work("x+y if x^2+y^2=13, xy=6");
    assertThat(text(both)).isEqualTo("-5, 5");
    assertThat(text(work("x^3+y^3 if x^2+y^2=13, xy=6, x, y positive"))).isEqualTo("35");
    assertThat(text(work("x+y if x^2+y^2=3, xy=1"))).isEqualTo("-sqrt(5), sqrt(5)");
  }

  @Test
  void denominatorsInTheDataAreClearedAndKeptFromZero() {
    assertThat(text(work("xyz if x+y+z=6, xy+yz+zx=11, 1/x+1/y+1/z=11/6"))).isEqualTo("6");
    assertThat(text(work("1/(x y) + 1/(y z) + 1/(z x) if x+y+z = x y z, x+y+z=6"))).isEqualTo("1");
  }

  @Test
  void anAskThatIsNotSymmetricHasItsSeveralValues() {
    Solution solution = work("x - y if x + y = 5, x y = 6");
    assertThat(text(solution)).isEqualTo("-1, 1");
    assertThat(codes(solution)).contains(WarningCode.NOT_SYMMETRIC);
  }

  @Test
  void whatIsNoSymmetricValueIsRefusedWithItsPlace() {
    assertThatThrownBy(
            () ->
                SUBJECTS.work(
                    Statement.of("", "x y if x + y = 5, x - y = 1"), ClassProfile.EVERYTHING))
        .isInstanceOfSatisfying(
            UnreadableException.class,
            unreadable -> {
              assertThat(unreadable.refusal().code()).isEqualTo("not-symmetric");
              assertThat(unreadable.refusal().at()).isEqualTo(18);
            });
    assertThatThrownBy(
            () -> SUBJECTS.work(Statement.of("", "S_4 if S_1 = 3"), ClassProfile.EVERYTHING))
        .isInstanceOfSatisfying(
            UnreadableException.class,
            unreadable -> assertThat(unreadable.refusal().code()).isEqualTo("no-names"));
  }

  @Test
  void whatWouldTakeTooLongIsRefusedAtOnce() {
    for (String find :
        List.of(
            "x^1000000+y^1000000 if x+y=1, xy=1",
            "x+y if x^200+y^200=2, xy=1",
            "x^99+y^99+z^99 if x+y+z=0, xy+yz+zx=1")) {
      assertThatThrownBy(() -> SUBJECTS.work(Statement.of("", find), ClassProfile.EVERYTHING))
          .as(find)
          .isInstanceOfSatisfying(
              UnreadableException.class,
              unreadable -> assertThat(unreadable.refusal().code()).isEqualTo("too-large"));
    }
    Solution solution = work("x^7+y^7+z^7 if x^5+y^5+z^5=3, x^3+y^3+z^3=1, x^4+y^4+z^4=2");
    assertThat(solution.answer()).isInstanceOf(Answer.None.class);
  }

  /** Numbers are chosen, forgotten, and found again from their power sums. */
  @Test
  void numbersAreFoundAgainFromTheirPowerSums() {
    SplittableRandom random = new SplittableRandom(SEED);
    String[] names = {"x", "y", "z"};
    for (int k = 0; k < 8; k++) {
      int n = random.nextInt(2, 4);
      List<Integer> numbers = new ArrayList<>();
      for (int i = 0; i < n; i++) {
        numbers.add(random.nextInt(-4, 5));
      }
      StringBuilder find = new StringBuilder("S_6 if ");
      for (int power = 1; power <= n; power++) {
        int exponent = power;
        find.append("S_%d = %d, ".formatted(power, sum(numbers, exponent)));
      }
      find.append(String.join(", ", List.of(names).subList(0, n)));
      Solution solution = work(find.toString());
      assertThat(solution.answer())
          .as("seed %d: %s", SEED, find)
          .isEqualTo(Answer.exact(Rational.of(sum(numbers, 6))));
      String asked = find.toString().replaceFirst("S_6", "numbers");
      String expected =
          String.join(", ", numbers.stream().distinct().sorted().map(String::valueOf).toList());
      assertThat(text(work(asked))).as("seed %d: %s", SEED, asked).isEqualTo(expected);
    }
  }

  private static long sum(List<Integer> numbers, int power) {
    long sum = 0;
    for (int number : numbers) {
      long product = 1;
      for (int i = 0; i < power; i++) {
        product *= number;
      }
      sum += product;
    }
    return sum;
  }
}
