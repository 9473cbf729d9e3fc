package rootwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rootwright.algebra.notation.FormulaReader;
import rootwright.algebra.notation.PlainWriter;

/** The object that scripts rely on. */
class WorkContractTest {

  private static final String PROBLEMS =
      """
      4x^3-8x^2+3x+6 ; sum r^2 ; exact ; 0
      x^3-x^2-4x-1 ; r^2 s + s^2 t + t^2 r ; values ; 3
      x^3-4x+1 ; r^2 s + s^2 t + t^2 r ; values ; 3
      x^2-5x+3 ; r^3 - s^3 ; values ; 3
      x^3-3x^2+x+2 ; sum 1/(r-2) ; none ; 3
      x^4-4x^3+5x+2 ; roots ; set ; 0
      x^4-x^2-2x+2 ; roots ; set ; 0
      x^3-2x^2-3x+5 ; polynomial with roots (2r-1) ; polynomial ; 0
      x^4+2x^3-3x^2+5x+7 ; resolvent(r s + t u) ; polynomial ; 0
      x^3-x-1 ; reduce(r^7) ; polynomial ; 0
      x^5-4x+2 ; real roots ; count ; 0
      x^3-x+1 ; S_(10^18) mod 10^9+7 ; residue ; 0
      x^3-5x+3 ; discriminant ; exact ; 0
      """;

  private static Set<String> fields(JsonNode node) {
    Set<String> fields = new TreeSet<>();
    node.fieldNames().forEachRemaining(fields::add);
    return fields;
  }

  @ParameterizedTest
  @CsvSource(delimiter = ';', textBlock = PROBLEMS)
  void everyPromisedFieldIsThere(String polynomial, String find, String kind, int status) {
    Shell shell = Shell.workAsJson(polynomial, find);
    JsonNode solution = shell.json();
    assertThat(shell.status()).isEqualTo(status);
    assertThat(shell.err()).isEmpty();
    assertThat(fields(solution))
        .contains(
            "polynomial",
            "unknown",
            "roots",
            "find",
            "reading",
            "answer",
            "conditions",
            "warnings",
            "routes",
            "declined",
            "slips",
            "silent",
            "checks");
    assertThat(solution.at("/answer/kind").asText()).isEqualTo(kind);
    assertThat(solution.at("/answer/text").asText()).isNotBlank();
    assertThat(solution.at("/checks/exact").asBoolean()).isTrue();
    assertThat(solution.at("/checks/numeric")).isEqualTo(solution.at("/checks/second"));
    assertThat(fields(solution.at("/checks/second"))).contains("method", "agrees");
    if (!kind.equals("none")) {
      assertThat(solution.at("/answer/latex").asText()).isNotBlank();
      assertThat(solution.at("/checks/second/agrees").asBoolean()).isTrue();
    }
  }

  @ParameterizedTest
  @CsvSource(delimiter = ';', textBlock = PROBLEMS)
  void everyTextIsAsciiThatIsReadBackAsTheSameFormula(
      String polynomial, String find, String kind, int status) throws Exception {
    JsonNode solution = Shell.workAsJson(polynomial, find).json();
    List<String> texts = new ArrayList<>();
    texts.add(solution.path("polynomial").asText());
    if (!kind.equals("none")) {
      texts.addAll(List.of(solution.at("/answer/text").asText().split(" or ")));
    }
    texts.addAll(Shell.texts(solution.path("slips"), "value"));
    for (String text : texts) {
      assertThat(text).matches("\\p{ASCII}+");
      assertThat(PlainWriter.write(FormulaReader.formula(text))).isEqualTo(text);
    }
  }

  @ParameterizedTest
  @CsvSource(delimiter = ';', textBlock = PROBLEMS)
  void routesComeCheapestFirstWithTheirCostAndEveryLineChecked(
      String polynomial, String find, String kind, int status) {
    JsonNode solution = Shell.workAsJson(polynomial, find).json();
    double before = 0;
    for (JsonNode route : solution.path("routes")) {
      assertThat(fields(route)).contains("name", "title", "cost", "steps", "answer");
      assertThat(fields(route.path("cost"))).contains("lines", "ideas", "bits", "total");
      assertThat(route.at("/cost/lines").asInt()).isEqualTo(route.path("steps").size());
      double total = route.at("/cost/total").asDouble();
      assertThat(total).isGreaterThanOrEqualTo(before);
      before = total;
      for (JsonNode step : route.path("steps")) {
        assertThat(fields(step)).contains("text", "latex", "reason", "checked", "argument");
        assertThat(step.path("checked").asBoolean())
            .isNotEqualTo(step.path("argument").asBoolean());
      }
    }
    assertThat(Shell.texts(solution.path("declined"), "why"))
        .allSatisfy(why -> assertThat(why).isNotBlank());
  }

  @Test
  void integersHaveNoDecimalAndFractionsTenSignificantDigits() {
    assertThat(
            Shell.workAsJson("2x^3-6x^2+x+5", "S_2").json().at("/answer/decimal").isMissingNode())
        .isTrue();
    assertThat(
            Shell.workAsJson("5x^3-10x^2+x-4", "sum 1/(r-3)").json().at("/answer/decimal").asText())
        .isEqualTo("-1.727272727");
    assertThat(
            Shell.texts(
                Shell.workAsJson("x^3-4x+1", "r^2 s+s^2 t+t^2 r").json().at("/answer/values"),
                "decimal"))
        .containsExactly("-6.066372975", "9.066372975");
  }

  @Test
  void anAskInExactlyOneRootCarriesWhatItReducesTo() {
    assertThat(
            Shell.workAsJson("x^2-4x-3", "r^4-4r^3-4r^2+4r+10")
                .json()
                .at("/answer/reduced")
                .asText())
        .isEqualTo("7");
    assertThat(
            Shell.workAsJson("x^2-3x-2", "r^6-2r^5-r^4+9r+4").json().at("/answer/reduced").asText())
        .isEqualTo("187*r + 104");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      textBlock =
          """
          x^3-3x^2+x+2 ; sum 1/(r-2) ; zero-denominator
          (x-1)^2(x+4) ; sum r^2 ; repeated-root
          x^3-x^2-4x-1 ; r^2 s+s^2 t+t^2 r ; not-symmetric
          x^2-5x+3 ; r^3-s^3 ; order-open
          x^4+x^3+6x^2+x+35 ; S_2 ; reducible
          x^3-2x^2-x+2 ; S_2 ; rational-root
          x^3-7x^2+15x-9 ; real roots ; domain-open
          x^3-2 ; r^3 s^3 ; by-coincidence
          5 ; S_2 ; lead-zero
          0x^3+x^2-x-3 ; S_2 ; lead-zero
          """)
  void everyDoubtHasItsWarning(String polynomial, String find, String code) {
    JsonNode solution = Shell.workAsJson(polynomial, find).json();
    assertThat(Shell.texts(solution.path("warnings"), "code")).contains(code);
    assertThat(StreamSupport.stream(solution.path("warnings").spliterator(), false))
        .allSatisfy(
            warning -> {
              assertThat(warning.path("text").asText()).endsWith(".").doesNotContain("  ");
              assertThat(Character.isLowerCase(warning.path("text").asText().charAt(0))).isFalse();
            });
  }
}
