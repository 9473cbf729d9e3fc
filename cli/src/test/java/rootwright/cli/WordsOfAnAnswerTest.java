package rootwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.FormulaReader;
import rootwright.algebra.notation.PlainWriter;
import rootwright.algebra.notation.UnreadableException;

/** What is said in the answer, in its warnings and in a refusal. */
class WordsOfAnAnswerTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "x^3-3x+1; Σ r^(1/3); 2; sum(r^2)",
        "x^3-3x+1; 2 + sqrt(r); 4; 2 + r",
        "x^3-3x+1; S_2 + h_(10^20); 6; S_2 + h_2",
        "x^3-3x+1; resolvent(i r); 10; ''",
        "x^3-3x+1; polynomial with roots (sqrt(2) r); 23; 2*r",
      })
  void whatIsBeyondTheLimitsIsRefusedWithItsPlaceAndAnAskThatWouldDo(
      String polynomial, String find, int at, String mend) {
    Shell shell = Shell.workAsJson(polynomial, find);
    assertThat(shell.status()).isEqualTo(2);
    assertThat(shell.json().at("/error/at").asInt()).isEqualTo(at);
    assertThat(shell.json().at("/error/mend").asText()).isEqualTo(mend);
    assertThat(shell.json().at("/error/expected").asText()).isNotBlank();
    if (!mend.isEmpty()) {
      assertThat(Shell.workAsJson(polynomial, mend).status()).isNotEqualTo(2);
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "x^4-2; roots",
        "x^3-x-1; r^2",
        "x^3-3x+1; r - s",
        "x^3-7x+3; real roots",
        "x^4-5x^2+1; real roots",
        "x^2-3x+5; 1/r - 1/s",
      })
  void everyTextForScriptsIsPlainAndReadsBack(String polynomial, String find)
      throws UnreadableException {
    JsonNode solution = Shell.workAsJson(polynomial, find).json();
    for (JsonNode value : solution.at("/answer/values")) {
      String text = value.path("text").asText();
      Formula read = FormulaReader.formula(text);
      assertThat(PlainWriter.write(read)).isEqualTo(text);
      assertThat(FormulaReader.formula(value.path("latex").asText())).isEqualTo(read);
    }
    FormulaReader.formula(solution.at("/answer/text").asText());
    for (JsonNode route : solution.path("routes")) {
      for (String text : Shell.texts(route.path("steps"), "text")) {
        assertThat(text).isPrintable().matches("\\p{ASCII}*");
      }
    }
  }

  @Test
  void severalValuesAreListedInLatexWithOneOr() {
    JsonNode answer = Shell.workAsJson("x^3 - 3x + 2", "r^2 s").json().path("answer");
    assertThat(answer.path("text").asText()).isEqualTo("-2 or 1 or 4");
    assertThat(answer.path("latex").asText()).isEqualTo("-2, 1 \\text{ or } 4");
    assertThat(
            Shell.run("work", "--polynomial", "x^3 - 3x + 2", "--find", "r^2 s", "--latex").out())
        .contains("Answer: $-2, 1 \\text{ or } 4$.");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"0 0 1 -3 1", "0, 1, -3, 1", "0x^3 + x^2 - 3x + 1", "x^3 - x^3 + x^2 - 1"})
  void aLeadOfZeroIsNamed(String polynomial) {
    JsonNode warnings = Shell.workAsJson(polynomial, "S_2").json().path("warnings");
    assertThat(Shell.texts(warnings, "code")).contains("lead-zero");
  }

  @Test
  void everyReadingIsAWarningForScripts() {
    JsonNode solution = Shell.workAsJson("x^3 - 1/2x - 1", "Σ 1/(r s)").json();
    assertThat(Shell.texts(solution.path("warnings"), "code")).contains("read-as");
    assertThat(
            StreamSupport.stream(solution.path("warnings").spliterator(), false)
                .filter(warning -> warning.path("code").asText().equals("read-as"))
                .count())
        .isEqualTo(solution.path("reading").size());
  }

  @Test
  void whatHasNoResidueIsNotCalledAZeroDenominator() {
    Shell shell = Shell.workAsJson("2x^3-x+3", "S_5 mod 4");
    assertThat(shell.status()).isEqualTo(3);
    assertThat(Shell.texts(shell.json().path("warnings"), "code"))
        .contains("no-residue")
        .doesNotContain("zero-denominator");
  }

  @Test
  void aRepeatedRootMayLeaveOneValueOnly() {
    Shell shell = Shell.workAsJson("(x-1)^2", "r^2 + 1");
    assertThat(shell.status()).isZero();
    assertThat(shell.json().at("/answer/kind").asText()).isEqualTo("exact");
    assertThat(shell.json().at("/answer/text").asText()).isEqualTo("2");
    assertThat(Shell.texts(shell.json().path("warnings"), "code"))
        .contains("by-coincidence", "repeated-root")
        .doesNotContain("not-symmetric");
  }

  @Test
  void moreValuesThanAreToldApartAreEnclosed() {
    Shell shell = Shell.workAsJson("(x-1)(x-2)(x-3)(x-4)(x-5)(x-6)(x-7)", "r + 10 s + 100 t");
    assertThat(shell.status()).isEqualTo(3);
    JsonNode answer = shell.json().path("answer");
    assertThat(answer.path("kind").asText()).isEqualTo("values");
    assertThat(answer.path("count").asInt()).isEqualTo(7 * 6 * 5);
    assertThat(Shell.texts(answer.path("values"), "decimal"))
        .hasSize(24)
        .startsWith("123.0000000", "124.0000000", "125.0000000");
    assertThat(Shell.texts(shell.json().path("warnings"), "text"))
        .anyMatch(text -> text.contains("210 forms") && text.contains("Σ(r + 10s + 100t)"));
    assertThat(Shell.work("x^8 - x - 1", "r s + t u").out())
        .contains("Answer   one of 210 values, such as −");
  }

  @Test
  void anOrbitThatCannotEvenBeListedIsCounted() {
    Shell shell = Shell.workAsJson("x^12-x-1", "r s^2 t^3 u^4 v^5");
    assertThat(shell.status()).isEqualTo(3);
    assertThat(shell.json().at("/answer/count").asInt()).isEqualTo(12 * 11 * 10 * 9 * 8);
    assertThat(shell.json().at("/answer/values")).isEmpty();
  }

  @Test
  void repeatedRootsAreNamedInAscendingOrder() {
    assertThat(
            Shell.texts(
                Shell.workAsJson("(x-2)^2 (x-1)^3", "roots").json().path("warnings"), "text"))
        .anyMatch(text -> text.startsWith("1 is a root 3 times, 2 is a root twice"));
  }

  @Test
  void aDecimalThatEndsIsEqualAndOneThatGoesOnIsAbout() {
    assertThat(Shell.work("2x^2-5x+2", "r + s").out()).contains("Answer   5/2 = 2.5");
    assertThat(Shell.work("3x^2-5x+2", "r + s").out()).contains("Answer   5/3  ≈ 1.666666667");
  }

  @Test
  void routesThatDeclinedForOneReasonShareALine() {
    String out =
        Shell.run("work", "--polynomial", "5x^3 - 10x^2 + x - 4", "--find", "Σ 1/(r-3)", "--all")
            .out();
    assertThat(out)
        .containsOnlyOnce("a root stands in a denominator")
        .containsOnlyOnce("log-derivative-flipped");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "r^2 + s^2; Find r² + s².",
        "S_3; Find S₃. Here Sₖ is the sum of the k-th powers of the roots.",
        "discriminant; Find the discriminant of x² − 3x + 1 = 0.",
        "roots; Find all roots of x² − 3x + 1 = 0.",
        "real roots; How many different real roots does x² − 3x + 1 = 0 have?",
        "reduce(r^5); Write r⁵ as a polynomial of degree at most 1 in the same root.",
        "S_9 mod 7; Find S₉ mod 7.",
      })
  void theStatementAloneIsTheSentenceOfASheet(String find, String sentence) {
    Shell shell = Shell.run("work", "--polynomial", "x^2-3x+1", "--find", find, "--statement");
    assertThat(shell.out().lines()).hasSize(1);
    assertThat(shell.out()).contains(sentence);
  }
}
