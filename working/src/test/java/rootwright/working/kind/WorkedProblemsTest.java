package rootwright.working.kind;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import rootwright.algebra.notation.PlainWriter;
import rootwright.algebra.number.Rational;
import rootwright.working.answer.Answer;
import rootwright.working.ask.ProblemReader;
import rootwright.working.problem.Statement;
import rootwright.working.route.ClassProfile;
import rootwright.working.route.Working;
import rootwright.working.solve.Solution;

/** Typed problems put through everything. Values worked out independently, by hand. */
class WorkedProblemsTest {

  private static Solution solved(String polynomial, String find) throws Exception {
    return new Kinds()
        .solve(ProblemReader.read(Statement.of(polynomial, find)), ClassProfile.EVERYTHING);
  }

  private static List<String> names(Solution solution) {
    return solution.routes().stream().map(Working::route).toList();
  }

  private static List<String> lines(Working working) {
    return working.steps().stream().map(step -> PlainWriter.write(step.shown())).toList();
  }

  private static List<String> working(Solution solution, String route) {
    return solution.routes().stream()
        .filter(working -> working.route().equals(route))
        .map(WorkedProblemsTest::lines)
        .findFirst()
        .orElseThrow();
  }

  @Test
  void theSumOfSquaresTakesAtMostFourLinesAndTheSecondOpinionAgrees() throws Exception {
    Solution solution = solved("4x^3-8x^2+3x+6", "sum of the squares of the roots");
    assertThat(solution.answer()).isEqualTo(Answer.exact(Rational.of(5, 2)));
    assertThat(solution.second().agrees()).isTrue();
    Working shortest = solution.routes().get(0);
    assertThat(shortest.steps()).hasSizeLessThanOrEqualTo(4);
    assertThat(lines(shortest))
        .anyMatch(line -> line.startsWith("e_1 = ") && line.endsWith(" = 2"))
        .anyMatch(line -> line.startsWith("e_2 = ") && line.endsWith(" = 3/4"));
  }

  @Test
  void aDoubleRootTypedInFactorsIsCountedTwice() throws Exception {
    Solution solution = solved("(x-1)^2(x+4)", "sum r^2");
    assertThat(solution.answer()).isEqualTo(Answer.exact(Rational.of(18)));
    assertThat(PlainWriter.write(solution.given().polynomial())).isEqualTo("x^3 + 2*x^2 - 7*x + 4");
    assertThat(names(solution)).contains("rational-root", "build-from-e", "newton");
  }

  @Test
  void aCyclicSumHasTwoValuesByTheirSumAndDifference() throws Exception {
    Solution solution = solved("x^3-x^2-4x-1", "r^2 s + s^2 t + t^2 r");
    assertThat(((Answer.Values) solution.answer()).values()).hasSize(2);
    assertThat(names(solution)).containsExactly("sum-and-difference");
  }

  @Test
  void aFarPowerSumHasATable() throws Exception {
    Solution solution = solved("x^3-x^2-2x+3", "p_20");
    assertThat(solution.answer()).isEqualTo(Answer.exact(Rational.of(5450)));
    assertThat(working(solution, "recurrence"))
        .contains("p_0 = 3")
        .anyMatch(line -> line.startsWith("p_1 = e_1"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"x^3 = 4x − 1", "1-4x+x^3=0", "x³−4x+1", "x^{3}-4x+1", "1 0 -4 1"})
  void theSameEquationInOtherClothesHasTheSameWorking(String polynomial) throws Exception {
    Solution solution = solved(polynomial, "sum r^4");
    assertThat(solution.answer()).isEqualTo(Answer.exact(Rational.of(32)));
    assertThat(working(solution, "newton")).contains("S_1 = e_1 = 0");
  }

  @Test
  void aRouteThatTheClassDoesNotHaveIsNotShown() throws Exception {
    Solution solution =
        new Kinds()
            .solve(
                ProblemReader.read(Statement.of("4x^3-8x^2+3x+6", "sum r^2")),
                new ClassProfile(Set.of("newton")));
    assertThat(names(solution)).contains("build-from-e").doesNotContain("newton");
    assertThat(solution.declined())
        .anyMatch(declined -> declined.name().equals("newton") && declined.why().contains("class"));
  }

  /** Each kind of ask has a working that a student can follow. */
  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "3x^3-7x^2+5x+11; r+s+t; 7/3",
        "x^4-3x^3+2x^2+5x-7; sum 1/r; 5/7",
        "x^4-2x^3-5x^2+3x+2; sum 1/(rs); -5/2",
        "x^3-4x^2+2x+6; (r+s)(s+t)(t+r); 14",
        "2x^3+x^2-4x+5; product(3-r); 28",
        "2x^3+x^2-4x+5; product(r^2+1); 13",
        "x^3-2x^2+7x-3; sum 1/(2-r); 1",
        "x^3-2x^2+7x-3; sum (r+1)/(r-2); 0",
        "x^3-2x^2+7x-3; sum 1/(2-r)^2; 3/11",
        "x^3-4x^2+x+1; (s+t)/r + (t+r)/s + (r+s)/t; -7",
        "x^2-6x+4; r/s+s/r; 7",
        "x^3-x-1; S_11; 22",
        "x^3-3x^2+4x-7; sum(r^3-3r^2+r+5); 27",
        "x^2-4x-3; r^4-4r^3-4r^2+4r+10; 7",
        "x^2-x-3; r^10+s^10; 4207",
        "x^3-5x^2+2x-1; sum r^2 s; 7",
        "x^2-3x-2; r^5+s^5; 573",
        "x^4-2x^3-5x^2+3x+2; sum (r+s)^2; 32",
        "x^4-2x^3-5x^2+3x+2; sum (r-s)^2; 52",
        "x^3+2x^2-5x+1; sum 1/(r^2-4); -43/77",
        "x^3+2x^2-5x+1; sum r/(r^2+1); 16/37",
        "x^3-3x^2-2x+5; sum 1/(r^2-1); 11/3",
        "5x^3-10x^2+x-4; sum 1/(r-3); -19/11",
      })
  void everyKindOfAskHasAWorking(String polynomial, String find, String value) throws Exception {
    Solution solution = solved(polynomial, find);
    assertThat(solution.answer()).isEqualTo(Answer.exact(Rational.parse(value)));
    assertThat(solution.routes()).isNotEmpty();
    assertThat(solution.routes()).allSatisfy(route -> assertThat(route.steps()).isNotEmpty());
  }
}
