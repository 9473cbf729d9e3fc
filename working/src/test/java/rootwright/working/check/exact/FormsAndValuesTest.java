package rootwright.working.check.exact;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.FormulaReader;
import rootwright.algebra.notation.UnreadableException;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.working.check.second.EnclosureCheck;
import rootwright.working.step.Claim;
import rootwright.working.step.Setting;

/** Images are counted by the form of an expression; whether it vanishes, by its values. */
class FormsAndValuesTest {

  private static final Polynomial OPPOSITE = Polynomial.ofDescending(1, 0, -1);
  private static final Polynomial DOUBLE = Polynomial.ofDescending(1, 2, 1);

  private static Claim claim(Polynomial polynomial, String left, String right)
      throws UnreadableException {
    return Claim.equal(
        Setting.of(polynomial, List.of("r", "s").subList(0, polynomial.degree())),
        FormulaReader.formula(left),
        FormulaReader.formula(right));
  }

  /** The roots are 1 and −1; every value is added up by hand. */
  @ParameterizedTest
  @CsvSource({
    "sum r^12, 2",
    "sum r^11, 0",
    "sum r^10 s^2, 2",
    "sum r^11 s, -2",
    "sum r^10 s^10, 1",
    "sum r^100, 2",
    "product(r^10+1), 4",
    "product(r^11), -1",
    "product(r^12 s + 2), 3",
  })
  void aPowerThatReducesStillHasItsImages(String sum, String value) throws UnreadableException {
    Claim claim = claim(OPPOSITE, sum, value);
    assertThat(new ExactCheck().of(claim).isConfirmed()).as("exact: " + sum).isTrue();
    assertThat(new EnclosureCheck().of(claim).isConfirmed()).as("second: " + sum).isTrue();
  }

  @ParameterizedTest
  @CsvSource({"r, -1", "r^2 - s^2, 0", "r - s, 0", "r s + s, 0", "(r+1)(s+2), 0"})
  void atADoubleRootTheValuesDecide(String left, String right) throws UnreadableException {
    assertThat(new ExactCheck().of(claim(DOUBLE, left, right)).isConfirmed()).isTrue();
  }

  @Test
  void atADoubleRootAWrongValueIsStillRefuted() throws UnreadableException {
    assertThat(new ExactCheck().of(claim(DOUBLE, "r s", "-1")).isConfirmed()).isFalse();
    assertThat(new ExactCheck().of(claim(DOUBLE, "r - s", "1")).isConfirmed()).isFalse();
  }

  @Test
  void aFractionThatCancelsIsOneImageWhereItIsDefined() throws UnreadableException {
    Polynomial defined = Polynomial.ofDescending(1, 0, -4);
    Claim claim = claim(defined, "sum (2r+2)/(r+1)", "2");
    assertThat(new ExactCheck().of(claim).isConfirmed()).isTrue();
    assertThat(new EnclosureCheck().of(claim).isConfirmed()).isTrue();
    assertThat(new ExactCheck().of(claim(OPPOSITE, "sum (2r+2)/(r+1)", "2")).isConfirmed())
        .isFalse();
  }

  @Test
  void imagesOfAMapAreCountedByItsForm() throws UnreadableException {
    Formula map = FormulaReader.formula("r^8 s");
    Claim two = new Claim.HasRoots(Setting.of(OPPOSITE, List.of("r", "s")), OPPOSITE, map);
    assertThat(new ExactCheck().of(two).isConfirmed()).isTrue();
    assertThat(new EnclosureCheck().of(two).isConfirmed()).isTrue();
  }
}
