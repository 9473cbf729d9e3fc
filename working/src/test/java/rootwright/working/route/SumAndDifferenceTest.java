package rootwright.working.route;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigInteger;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.value.ExactValue;
import rootwright.algebra.value.QuadraticSurd;
import rootwright.algebra.value.RationalValue;
import rootwright.working.answer.Answer;

/** Values worked out independently, by hand. */
class SumAndDifferenceTest {

  private static final String CYCLIC = "r^2 s + s^2 t + t^2 r";

  private final Route route = new SumAndDifference();

  private List<ExactValue> values(String coefficients, String ask) {
    return ((Answer.Values) Exercise.of(coefficients, ask).by(route).answer()).values();
  }

  @ParameterizedTest
  @CsvSource({
    "1 -1 -4 -1, r^2 s + s^2 t + t^2 r, -10, 3",
    "1 0 -7 7, r^2 s + s^2 t + t^2 r, 7, 14",
    "1 0 -3 1, r^2 s + s^2 t + t^2 r, -3, 6",
    "1 0 -7 7, r/s + s/t + t/r, -2, -1",
    "1 -5 6, r - s, -1, 1",
  })
  void twoRationalValuesAreListedAscending(String coefficients, String ask, long low, long high) {
    assertThat(values(coefficients, ask))
        .containsExactly(RationalValue.of(low), RationalValue.of(high));
  }

  @Test
  void irrationalValuesStayExact() {
    assertThat(values("1 0 -4 1", CYCLIC))
        .containsExactly(
            new QuadraticSurd(Rational.of(3, 2), Rational.of(-1, 2), BigInteger.valueOf(229)),
            new QuadraticSurd(Rational.of(3, 2), Rational.of(1, 2), BigInteger.valueOf(229)));
  }

  @Test
  void theValuesComeWithTheirPolynomial() {
    assertThat(((Answer.Values) Exercise.of("1 -1 -4 -1", CYCLIC).by(route).answer()).orbit())
        .isEqualTo(Polynomial.ofDescending(1, 7, -30));
  }

  @Test
  void theSumAndTheDiscriminantStandInTheWorking() {
    assertThat(Exercise.of("1 -1 -4 -1", CYCLIC).linesBy(route))
        .contains("A + B = sum(r^2*s) = e_1*e_2 - 3*e_3 = -4 - 3 = -7")
        .anyMatch(line -> line.startsWith("(A - B)^2 = ") && line.endsWith(" = 169"))
        .endsWith("A = (-7 +- 13)/2");
  }

  @Test
  void anAskThatOnlyChangesItsSignIsARoot() {
    assertThat(Exercise.of("1 -5 3", "r^3-s^3").linesBy(route))
        .endsWith("r^3 - s^3 = +-22*sqrt(13)");
    assertThat(Exercise.of("1 -8 13", "r-s").linesBy(route)).endsWith("r - s = +-2*sqrt(3)");
  }

  @Test
  void withARepeatedRootBothValuesFallTogether() {
    assertThat(Exercise.of("1 -4 5 -2", CYCLIC).by(route).answer())
        .isEqualTo(Answer.exact(Rational.of(7)));
  }

  @Test
  void aSymmetricAskHasNoPartner() {
    assertThat(Exercise.of("1 0 -4 1", "r s + s t + t r").refusalOf(route)).contains("one value");
  }

  @Test
  void anAskWithMoreImagesIsDeclined() {
    assertThat(Exercise.of("1 0 -4 1", "r^2 s").refusalOf(route)).contains("6 expressions");
  }
}
