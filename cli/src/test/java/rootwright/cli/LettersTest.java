package rootwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** What a coach must see of letters and of two polynomials on the command line. */
class LettersTest {

  @Test
  void theLinearCaseIsAmongTheAnswersAndFlagged() {
    Shell shell = Shell.workAsJson("(m-3)x^2-2mx+m+2=0", "m if exactly one real solution");
    assertThat(shell.status()).isZero();
    assertThat(shell.json().at("/answer/kind").asText()).isEqualTo("set");
    assertThat(shell.json().at("/answer/text").asText()).isEqualTo("-6 or 3");
    assertThat(Shell.texts(shell.json().path("warnings"), "text").toString())
        .contains("becomes linear", "x = 5/6");
  }

  @Test
  void noRealValueIsAnAnswerAndTheUncheckedValuesAreASlip() {
    Shell shell = Shell.workAsJson("x^2-2mx+m+6", "m if r^2+s^2=0 and roots real");
    assertThat(shell.status()).isZero();
    assertThat(shell.json().at("/answer/text").asText()).isEqualTo("none");
    assertThat(Shell.texts(shell.json().path("slips"), "name")).contains("existence-unchecked");
    assertThat(Shell.texts(shell.json().path("warnings"), "code"))
        .contains("extraneous", "no-parameter");
    assertThat(Shell.work("x^2-2mx+m+6", "m if r^2+s^2=0 and roots real").out())
        .contains("no such value", "no root is real");
  }

  @Test
  void aFunctionOfTheLettersCarriesItsConditions() {
    Shell shell = Shell.workAsJson("(m-3)x^2-2mx+m+2", "r s");
    assertThat(shell.json().at("/answer/kind").asText()).isEqualTo("function");
    assertThat(shell.json().at("/answer/text").asText()).isEqualTo("(m + 2)/(m - 3)");
    assertThat(shell.json().at("/conditions/0").asText()).isEqualTo("m − 3 ≠ 0");
    assertThat(shell.json().at("/checks/second/method").asText()).contains("sampled");
  }

  @Test
  void twoPolynomialsAreWrittenWithAndBetweenThem() {
    Shell shell = Shell.workAsJson("x^2+kx+10 and x^2+5x+2k", "k if they share exactly one root");
    assertThat(shell.status()).isZero();
    assertThat(shell.json().at("/answer/text").asText()).isEqualTo("-7");
    assertThat(Shell.texts(shell.json().path("slips"), "value")).contains("-7, 5");
  }

  @Test
  void aConditionThatIsNotUnderstoodIsRefusedWithItsPlace() {
    Shell shell = Shell.work("x^2+kx+1", "k if the moon is full");
    assertThat(shell.status()).isEqualTo(2);
  }
}
