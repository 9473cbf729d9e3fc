package rootwright.lesson.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rootwright.algebra.notation.FormulaReader;

class SpeechTest {

  private static final List<String> ROOTS = List.of("r", "s", "t");

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "alpha^2 + beta^2 | alpha squared plus beta squared",
        "(7/3)^2 | seven thirds, all of it squared",
        "(7/3)^2 - 2 | seven thirds, all of it squared, minus two",
        "e_2 | e two",
        "Σ r^2 | the sum over the roots of r squared",
        "Σ 1/(k - r) | the sum over the roots of one over, k minus r",
        "Σ 1/(r-3) = -19/11 |"
            + " the sum over the roots of one over, r minus three, equals minus nineteen elevenths",
        "P'(3)/P(3) | P prime of three over P of three"
      })
  void formulasAreSaidInPlainWords(String typed, String spoken) throws Exception {
    assertThat(Speech.of(FormulaReader.formula(typed), ROOTS)).isEqualTo(spoken);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "minus the coefficient of x² over the lead | minus the coefficient of x squared over the"
            + " lead",
        "every term changes sign | every term changes sign",
        "For k from 1 to n, a root makes it zero | For k from one to n, a root makes it zero",
        "build it from e₁, e₂ and so on | build it from e one, e two and so on"
      })
  void formulasAreFoundBetweenWords(String line, String spoken) {
    assertThat(Speech.of(Phrase.scanned(line), ROOTS)).isEqualTo(spoken);
  }
}
