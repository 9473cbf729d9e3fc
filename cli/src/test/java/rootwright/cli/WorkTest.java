package rootwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a coach must see when a problem is worked on the command line. */
class WorkTest {

  private static JsonNode route(JsonNode solution, String name) {
    return elements(solution.path("routes"))
        .filter(route -> route.path("name").asText().equals(name))
        .findFirst()
        .orElseThrow(() -> new AssertionError("no route " + name + " in " + solution));
  }

  private static List<String> lines(JsonNode solution, String route) {
    return Shell.texts(route(solution, route).path("steps"), "text");
  }

  private static Stream<JsonNode> elements(JsonNode array) {
    return StreamSupport.stream(array.spliterator(), false);
  }

  private static String allLines(JsonNode solution) {
    return String.join(
        "\n",
        elements(solution.path("routes"))
            .flatMap(route -> Shell.texts(route.path("steps"), "text").stream())
            .toList());
  }

  private static List<String> warnings(JsonNode solution, String code) {
    return elements(solution.path("warnings"))
        .filter(warning -> warning.path("code").asText().equals(code))
        .map(warning -> warning.path("text").asText())
        .toList();
  }

  @Test
  void aSumOfSquaresComesWithItsCoefficientsAShortRouteAndANamedSecondCheck() {
    Shell shell = Shell.workAsJson("4x³−8x²+3x+6", "sum of the squares of the roots");
    JsonNode solution = shell.json();
    assertThat(shell.status()).isZero();
    assertThat(solution.at("/answer/text").asText()).isEqualTo("5/2");
    assertThat(solution.at("/routes/0/cost/lines").asInt()).isLessThanOrEqualTo(4);
    assertThat(allLines(solution)).contains("= 2", "= 3/4", "e_1", "e_2");
    assertThat(solution.at("/checks/second/agrees").asBoolean()).isTrue();
    assertThat(solution.at("/checks/second/method").asText())
        .isEqualTo("certified enclosures of the roots");
    assertThat(Shell.work("4x³−8x²+3x+6", "sum of squares").out())
        .contains("Answer   5/2", "e₁ = ", "certified enclosures of the roots");
  }

  @Test
  void aSumOfReciprocalsIsWorkedByTheDerivativeAndByShiftAndReversal() {
    Shell shell = Shell.workAsJson("5x³−10x²+x−4", "Σ1/(r−3)");
    JsonNode solution = shell.json();
    assertThat(shell.status()).isZero();
    assertThat(solution.at("/answer/text").asText()).isEqualTo("-19/11");
    assertThat(String.join("\n", lines(solution, "log-derivative")))
        .contains("76/44", "-sum(1/(3 - r)) = -19/11");
    assertThat(lines(solution, "transform"))
        .containsSequence("5*y^3 + 35*y^2 + 76*y + 44 = 0", "44*z^3 + 76*z^2 + 35*z + 5 = 0");
  }

  @Test
  void aRootThatMakesADenominatorZeroIsNamedAndTwoWaysOutAreOffered() {
    Shell shell = Shell.workAsJson("x³−3x²+x+2", "Σ1/(r−2)");
    JsonNode solution = shell.json();
    assertThat(shell.status()).isEqualTo(3);
    assertThat(solution.at("/answer/kind").asText()).isEqualTo("none");
    assertThat(solution.at("/answer/text").asText()).doesNotContainPattern("[0-9]");
    assertThat(solution.path("routes")).isEmpty();
    assertThat(warnings(solution, "zero-denominator"))
        .singleElement()
        .asString()
        .startsWith("2 is a root, so one term has denominator 0.")
        .contains("Σ1/(r − 3)")
        .contains("Over the other 2 roots it is −3.");
  }

  @Test
  void aRepeatedRootIsCountedTwiceAndTheOtherReadingIsShown() {
    Shell shell = Shell.workAsJson("(x−1)²(x+4)", "Σr²");
    JsonNode solution = shell.json();
    assertThat(shell.status()).isZero();
    assertThat(solution.at("/answer/text").asText()).isEqualTo("18");
    assertThat(solution.path("polynomial").asText()).isEqualTo("x^3 + 2*x^2 - 7*x + 4");
    assertThat(warnings(solution, "repeated-root"))
        .contains(
            "Over the distinct roots, each counted once, the value would be 17; say which is meant.");
    assertThat(
            elements(solution.path("slips"))
                .filter(slip -> slip.path("name").asText().equals("double-root-once"))
                .map(slip -> slip.path("value").asText()))
        .containsExactly("17");
  }

  @Test
  void aCyclicSumHasTwoValuesAndTheWordingThatMakesItDefinite() {
    Shell shell = Shell.workAsJson("x³−x²−4x−1", "r²s+s²t+t²r");
    JsonNode solution = shell.json();
    assertThat(shell.status()).isEqualTo(3);
    assertThat(solution.at("/answer/kind").asText()).isEqualTo("values");
    assertThat(Shell.texts(solution.at("/answer/values"), "text")).containsExactly("-10", "3");
    assertThat(warnings(solution, "not-symmetric"))
        .singleElement()
        .asString()
        .contains("two possible values: −10 and 3")
        .contains("all possible values")
        .contains("their sum −7");
    assertThat(allLines(solution)).contains("= -7").contains("= 169");
  }

  @Test
  void surdValuesStayExact() {
    Shell shell = Shell.workAsJson("x³−4x+1", "r²s+s²t+t²r");
    assertThat(shell.status()).isEqualTo(3);
    assertThat(shell.json().at("/answer/text").asText())
        .isEqualTo("(3 - sqrt(229))/2 or (3 + sqrt(229))/2");
    assertThat(Shell.work("x³−4x+1", "r²s+s²t+t²r").out()).doesNotContain("9.07");
  }

  @Test
  void aHighPowerSumComesWithItsTable() {
    Shell shell = Shell.workAsJson("x³−x²−2x+3", "p₂₀");
    JsonNode solution = shell.json();
    assertThat(shell.status()).isZero();
    assertThat(solution.at("/answer/text").asText()).isEqualTo("5450");
    assertThat(String.join("\n", lines(solution, "recurrence")))
        .contains("p_0 = 3")
        .containsPattern("p_1 = .*= 1")
        .containsPattern("p_2 = .*= 5")
        .containsPattern("p_20 = .*= 5450");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "x^3 = 4x − 1",
        "1-4x+x^3=0",
        "x³−4x+1",
        "x^{3}-4x+1",
        "1 0 -4 1",
      })
  void oneProblemInFiveWritingsIsOneProblem(String writing) {
    JsonNode solution = Shell.workAsJson(writing, "Σr⁴").json();
    assertThat(solution.at("/answer/text").asText()).isEqualTo("32");
    assertThat(solution.path("polynomial").asText()).isEqualTo("x^3 - 4*x + 1");
    assertThat(allLines(solution)).doesNotContainPattern("e_1 = .*4$");
  }

  @Test
  void aQuadraticDenominatorIsSplitAndBothPartsAreShown() {
    JsonNode solution = Shell.workAsJson("x³−3x²−2x+5", "Σ1/(r²−1)").json();
    assertThat(solution.at("/answer/text").asText()).isEqualTo("11/3");
    assertThat(String.join("\n", lines(solution, "partial-fractions")))
        .contains("1/(r^2 - 1) = -1/(2*(r + 1)) + 1/(2*(r - 1))")
        .containsPattern("1/\\(r \\+ 1\\).*= -7/3")
        .containsPattern("1/\\(r - 1\\).*= 5");
  }

  @Test
  void interpolationSaysWhyAnExcludedValueMayBePutIn() {
    JsonNode solution = Shell.workAsJson("x³−2x²−3x+1", "Σr⁵/((r−s)(r−t))").json();
    assertThat(solution.at("/answer/text").asText()).isEqualTo("19");
    JsonNode route = route(solution, "interpolate");
    assertThat(Shell.texts(route.path("steps"), "text").toString()).contains("h_3 = 19");
    assertThat(Shell.texts(route.path("steps"), "reason").toString())
        .contains("identity of polynomials", "may be put in although it was excluded");
  }

  @Test
  void wrongTurningsAreListedWithTheirValuesAndNeverTheRightOne() {
    JsonNode solution = Shell.workAsJson("2x³−6x²+x+5", "Σr²").json();
    assertThat(solution.at("/answer/text").asText()).isEqualTo("8");
    assertThat(
            elements(solution.path("slips"))
                .map(slip -> slip.path("name").asText() + " " + slip.path("value").asText()))
        .contains(
            "lead-forgotten 34",
            "square-of-the-sum 9",
            "one-cross-term 17/2",
            "cross-sign 10",
            "newton-count 15/2",
            "lead-half-forgotten 7");
    assertThat(Shell.texts(solution.path("slips"), "value")).doesNotContain("8");
    assertThat(Shell.texts(solution.path("silent"), "name")).contains("sign-slip");
  }

  @Test
  void aRouteThatTheClassDoesNotHaveIsLeftOut() {
    Shell shell =
        Shell.run(
            "work",
            "--polynomial",
            "5x^3-10x^2+x-4",
            "--find",
            "sum 1/(r-3)",
            "--without",
            "log-derivative,build-from-e",
            "--json");
    assertThat(Shell.texts(shell.json().path("routes"), "name"))
        .contains("transform")
        .doesNotContain("log-derivative", "build-from-e");
    assertThat(Shell.texts(shell.json().path("declined"), "name"))
        .contains("log-derivative", "build-from-e");
  }

  @Test
  void givenNamesOfTheRootsAreUsed() {
    Shell shell =
        Shell.run(
            "work", "--polynomial", "x^2-3x+1", "--find", "m^2+k^2", "--roots", "m,k", "--json");
    assertThat(shell.json().at("/answer/text").asText()).isEqualTo("7");
    assertThat(shell.json().path("roots").toString()).isEqualTo("[\"m\",\"k\"]");
  }

  @Test
  void latexIsOneSourceWithTheAnswerInIt() {
    Shell shell =
        Shell.run("work", "--polynomial", "5x^3-10x^2+x-4", "--find", "sum 1/(r-3)", "--latex");
    assertThat(shell.status()).isZero();
    assertThat(shell.out()).contains("-\\frac{19}{11}", "76}{44");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Let r, s, t be the roots of x^3-6x^2+5x-1=0. Find r^2+s^2+t^2.",
        "If α, β, γ are the roots of x³ – 6x² + 5x – 1 = 0, find the value of α² + β² + γ².",
        "What is the sum of the squares of the roots of $x^{3}-6x^{2}+5x-1=0$?"
      })
  void aWholeSentenceIsWorkedAsItsOnlyArgumentAndAsTheAsk(String sentence) {
    Shell alone = Shell.run("work", sentence, "--json");
    Shell asked = Shell.run("work", "--find", sentence, "--json");

    assertThat(alone.status()).isZero();
    assertThat(alone.json().at("/answer/text").asText()).isEqualTo("26");
    assertThat(asked.json()).isEqualTo(alone.json());
  }

  @Test
  void aSentenceThatStatesNoProblemIsRefusedWithAModel() {
    Shell shell = Shell.run("work", "My class likes polynomials.");

    assertThat(shell.status()).isEqualTo(2);
    assertThat(shell.err()).contains("Let r, s, t be the roots of");
  }

  @Test
  void newRootsMayBeListedAndTheSentenceListsThem() {
    Shell shell = Shell.work("2x^3 - 3x^2 + 5x - 7", "polynomial with roots rs, st, tr");

    assertThat(shell.status()).isZero();
    assertThat(shell.out())
        .containsIgnoringWhitespaces("Find the polynomial whose roots are rs, rt, st.")
        .contains("4x³ − 10x² + 21x − 49");
  }
}
