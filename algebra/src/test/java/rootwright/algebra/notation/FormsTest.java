package rootwright.algebra.notation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** An expression in all its forms, and lists that are one. */
class FormsTest {

  private static final List<String> ROOTS = List.of("r", "s", "t");

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          r^2     | r^2 s^2 t^2
          r*s     | r*s r*t s*t
          1/(r+s) | 1/(r+s) 1/(r+t) 1/(s+t)
          r-s     | r-s r-t s-t s-r t-r t-s
          r*s*t   | r*s*t
          r*s+t   | r*s+t r*t+s s*t+r
          """)
  void everyFormStandsOnce(String expression, String forms) throws UnreadableException {
    List<Formula> found = Forms.of(FormulaReader.formula(expression), ROOTS).orElseThrow();

    assertThat(found.get(0)).isEqualTo(FormulaReader.formula(expression));
    assertThat(found).hasSize(forms.split(" ").length);
    for (String form : forms.split(" ")) {
      assertThat(Forms.single(found, ROOTS)).isPresent();
      assertThat(Forms.of(FormulaReader.formula(form), ROOTS).orElseThrow()).hasSameSizeAs(found);
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          polynomial with roots rs, st, tr             | r*s
          polynomial with roots r^2, s^2, and t^2      | r^2
          polynomial with roots (1/r, 1/t, 1/s)        | 1/r
          polynomial with roots 4 - r, r + s - r + 4 - s - s, 4 - t | 4 - r
          """)
  void aListOfAllFormsIsReadAsOneExpression(String ask, String one) throws UnreadableException {
    assertThat(AskReader.read(ask, 3, Set.of("x")).formula())
        .isEqualTo(
            new Formula.Application("polynomial with roots", List.of(FormulaReader.formula(one))));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          polynomial with roots rs, st      | polynomial with roots r*s, r*t, s*t
          polynomial with roots r^2, s^2, t | polynomial with roots r^2, s^2, t^2
          polynomial with roots r, r, s, t  | polynomial with roots r, s, t
          """)
  void aListWithAnotherOrAMissingFormIsRefusedWithTheFullList(String ask, String mend) {
    assertThatThrownBy(() -> AskReader.read(ask, 3, Set.of("x")))
        .isInstanceOfSatisfying(
            UnreadableException.class,
            refused -> assertThat(refused.refusal().mend()).isEqualTo(mend));
  }

  @Test
  void newRootsAreReadInWords() throws UnreadableException {
    assertThat(
            AskReader.read("polynomial with roots the squares of the roots", 3, Set.of("x"))
                .formula())
        .isEqualTo(
            new Formula.Application(
                "polynomial with roots", List.of(FormulaReader.formula("r^2"))));
  }

  @Test
  void theMeanOfTheRootsIsTheirSumOverTheirNumber() throws UnreadableException {
    assertThat(AskReader.read("average of the squares of the roots", 3, Set.of("x")).formula())
        .isEqualTo(FormulaReader.formula("(sum(r^2))/3"));
  }
}
