package rootwright.working.integers;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigInteger;
import java.util.ArrayList;
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
import rootwright.working.solve.Solution;

class IntegersTest {

  private static final long SEED = Long.getLong("rootwright.seed", 20_261_134L);
  private static final Subjects SUBJECTS = new Subjects(new Kinds());

  private static Solution work(String polynomial, String find) {
    try {
      return SUBJECTS.work(Statement.of(polynomial, find), ClassProfile.EVERYTHING);
    } catch (UnreadableException unreadable) {
      throw new AssertionError(find + ": " + unreadable.refusal(), unreadable);
    }
  }

  private static String text(Answer answer) {
    return PlainWriter.write(answer.formula());
  }

  private static List<String> lines(Solution solution) {
    return solution.routes().get(0).steps().stream()
        .map(step -> PlainWriter.write(step.shown()))
        .toList();
  }

  @ParameterizedTest(name = "{0}: {1} {2}")
  @CsvFileSource(resources = "integers.csv", delimiter = '|', numLinesToSkip = 1)
  void publishedAnswersAreFoundWithTheirProof(
      String source, String polynomial, String find, String answer) {
    Solution solution = work(polynomial == null ? "" : polynomial, find);
    assertThat(text(solution.answer())).as(source).isEqualTo(answer);
    assertThat(solution.routes()).as(source).hasSize(1);
  }

  @Test
  void theLetterDropsOutAtAPointAndLeavesDivisors() {
    Solution solution = work("x^2 - m x + 3m", "m if integer roots");
    assertThat(lines(solution))
        .containsExactly(
            "3^2 - m*3 + 3*m = 9",
            "(3 - r)*(3 - s) = 9",
            "4 ways to write 9 as a product of 2 whole numbers, whatever their order",
            "x^2 + 4*x - 12 = (x + 6)*(x - 2)",
            "x^2",
            "x^2 - 12*x + 36 = (x - 6)^2",
            "x^2 - 16*x + 48 = (x - 4)*(x - 12)",
            "m = -4, 0, 12, 16: 4 values");
    assertThat(solution.warnings()).extracting(Warning::code).contains(WarningCode.REPEATED_ROOT);
    assertThat(solution.statement())
        .isEqualTo("Find all values of m for which x² − mx + 3m = 0 has integer roots.");
  }

  @Test
  void forgottenCasesAreSlips() {
    Solution solution = work("x^2 + b x + 36", "how many b if two distinct integer roots");
    assertThat(solution.slips())
        .extracting(slip -> slip.name() + " " + text(slip.value()))
        .contains("equal-pair-allowed 10", "negatives-forgotten 4");
  }

  @Test
  void squaresBoundTheRootsWhereTheConstantTermIsOpen() {
    Solution solution = work("x^3 - 7x + k", "k if integer roots");
    assertThat(text(solution.answer())).isEqualTo("-6, 6");
    assertThat(lines(solution))
        .contains("0^2 - 2*(-7) = 14", "x^3 - 7*x + 6 = (x + 3)*(x - 1)*(x - 2)");
  }

  @Test
  void infinitelyManyValuesAreSaidToBeSo() {
    Solution solution = work("x^2 + 5x + k", "k if integer roots");
    assertThat(solution.answer()).isInstanceOf(Answer.None.class);
    assertThat(text(solution.answer())).contains("infinitely many", "-r² - 5r");
  }

  @Test
  void whatHasNoProofIsRefusedInsteadOfSearched() {
    assertThatThrownBy(
            () ->
                SUBJECTS.work(
                    Statement.of("x^3 + k x^2 + k x + 1", "k if integer roots, k prime"),
                    ClassProfile.EVERYTHING))
        .isInstanceOfSatisfying(
            UnreadableException.class,
            unreadable -> assertThat(unreadable.refusal().code()).isEqualTo("condition-unread"));
    assertThatThrownBy(
            () ->
                SUBJECTS.work(
                    Statement.of("x^2 + k^2 x + 1", "k if integer roots"), ClassProfile.EVERYTHING))
        .isInstanceOfSatisfying(
            UnreadableException.class,
            unreadable -> assertThat(unreadable.refusal().code()).isEqualTo("too-hard"));
  }

  @Test
  void theDescentIsShownFromTheEquationToTheSmallestPairs() {
    Solution solution = work("", "k if a^2 + b^2 + 3 = k a b, a, b positive integers");
    assertThat(lines(solution))
        .contains(
            "a' = k*b - a",
            "a^2 <= a*a'",
            "a^2 - b^2 <= 3",
            "(1^2 + 1^2 + 3)/(1*1) = 5",
            "(2^2 + 1^2 + 3)/(2*1) = 4");
    assertThat(solution.slips())
        .extracting(Solution.WrongTurning::name)
        .contains("only-equal-pair");
  }

  @Test
  void theSmallestSolutionOfTheSquareProblemHasAZero() {
    Solution solution = work("", "k if a^2 + b^2 = k (a b + 1), a, b, k positive integers");
    assertThat(lines(solution)).contains("a' = 0", "k = b^2", "(b^3)^2 + b^2 = b^2*(b^3*b + 1)");
  }

  /** Pairs of divisors, counted directly, and the quotients of a long search. */
  @Test
  void countsAgreeWithCountingDivisorsDirectly() {
    SplittableRandom random = new SplittableRandom(SEED);
    for (int k = 0; k < 12; k++) {
      int c = random.nextInt(1, 200);
      int pairs = 0;
      int distinct = 0;
      for (int d = 1; d * d <= c; d++) {
        pairs += c % d == 0 ? 2 : 0;
        distinct += c % d == 0 && d * d != c ? 2 : 0;
      }
      assertThat(work("x^2 + b x + " + c, "number of b if integer roots").answer())
          .as("seed %d: %d", SEED, c)
          .isEqualTo(new Answer.Count(BigInteger.valueOf(pairs)));
      assertThat(work("x^2 + b x + " + c, "number of b if distinct integer roots").answer())
          .as("seed %d: %d", SEED, c)
          .isEqualTo(new Answer.Count(BigInteger.valueOf(distinct)));
    }
    for (int c = 1; c <= 12; c++) {
      List<Long> quotients = new ArrayList<>();
      for (long a = 1; a <= 120; a++) {
        for (long b = 1; b <= a; b++) {
          if ((a * a + b * b + c) % (a * b) == 0) {
            quotients.add((a * a + b * b + c) / (a * b));
          }
        }
      }
      String expected =
          String.join(", ", quotients.stream().distinct().sorted().map(String::valueOf).toList());
      String find = "k if a^2 + b^2 + %d = k a b, a, b positive integers".formatted(c);
      assertThat(text(work("", find).answer())).as(find).isEqualTo(expected);
    }
  }
}
