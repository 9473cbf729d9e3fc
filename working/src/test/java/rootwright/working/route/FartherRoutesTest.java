package rootwright.working.route;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rootwright.algebra.notation.PlainWriter;
import rootwright.algebra.notation.UnreadableException;
import rootwright.working.answer.Answer;
import rootwright.working.ask.ProblemReader;
import rootwright.working.kind.Kinds;
import rootwright.working.problem.Statement;
import rootwright.working.solve.Solution;

/** Routes for what has too many terms to be written out, and lines that must be on them. */
class FartherRoutesTest {

  private static final Kinds KINDS = new Kinds();

  private static Working route(String polynomial, String find, String name)
      throws UnreadableException {
    Solution solution =
        KINDS.solve(ProblemReader.read(Statement.of(polynomial, find)), ClassProfile.EVERYTHING);
    return solution.routes().stream()
        .filter(working -> working.route().equals(name))
        .findFirst()
        .orElseThrow(() -> new AssertionError("declined: " + solution.declined()));
  }

  private static List<String> lines(Working working) {
    return working.steps().stream().map(step -> PlainWriter.write(step.shown())).toList();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "x^4-x-1; Π (r^2+r+1); evaluate-zeros; P(y_1)*P(y_2) = 1; 1",
        "2x^4-x-1; Π (3r^2+r+1); evaluate-zeros; y_1*y_2 = 1/3; 55/4",
        "x^7-3x+1; Π (r^2+1); evaluate-zeros; y_1*y_2 = 1; 17",
        "x^4-x-1; Σ r/(r^2+1); invert-denominator; r/(r^2 + 1) = r*(-r^3 + r + 1) = r^2 - 1; -4",
        "x^6-x-1; Σ 1/(r^2+2); invert-denominator; S_2 = e_1*S_1 - 2*e_2 = 0; 217/83",
        "x^5-x-1; Σ 1/(r+s); pairs; y^10 + 3*y^6 + 11*y^5 - 4*y^2 + 4*y - 1 = 0; 4",
        "x^5-x-1; Π (r+s); pairs; y^10 + 3*y^6 + 11*y^5 - 4*y^2 + 4*y - 1 = 0; -1",
      })
  void longAsksHaveAWorkingThatGoesThroughAShortOne(
      String polynomial, String find, String route, String line, String value)
      throws UnreadableException {
    Working working = route(polynomial, find, route);
    assertThat(lines(working)).contains(line);
    assertThat(((Answer.Exact) working.answer()).value()).hasToString(value);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "x^4-x-1; r s; x^6 + x^4 - x^3 - x^2 - 1",
        "x^4-5x^2+6; r + s; x^5 - 10*x^3 + x",
      })
  void theValuesOfAPairAreTheRootsOfThePolynomialOfAllPairs(
      String polynomial, String find, String values) throws UnreadableException {
    Answer.Values answer = (Answer.Values) route(polynomial, find, "pairs").answer();
    assertThat(answer.orbit().toString().replace("1*x", "x")).isEqualTo(values.replace("1*x", "x"));
  }

  @ParameterizedTest
  @CsvSource({"S_1000", "S_999", "S_512"})
  void aFarPowerSumIsReachedBySquaring(String find) throws UnreadableException {
    Working working = route("x^3-x-1", find, "reduce-powers");
    assertThat(working.cost().lines()).isLessThan(30);
    assertThat(working.answer()).isInstanceOf(Answer.Exact.class);
  }

  @ParameterizedTest
  @CsvSource({"x^3-2x^2+3x-5"})
  void theSquaresOfTheRootsShowTheProductTheyComeFrom(String polynomial)
      throws UnreadableException {
    assertThat(lines(route(polynomial, "Σ r^4", "transform")))
        .first()
        .isEqualTo("P(x)*P(-x) = -x^6 - 2*x^4 + 11*x^2 + 25");
  }
}
