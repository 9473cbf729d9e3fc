package rootwright.working.route;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.working.answer.Answer;

class ReducePowersTest {

  private final Route route = new ReducePowers();

  /**
   * Division with remainder, a standard identity (statements from memory, recomputed with an
   * independent computer algebra system); the last three worked out independently.
   */
  @ParameterizedTest
  @CsvSource({
    "1 -2 -1, r^6, 70 29",
    "1 0 -1 -1, r^7, 2 2 1",
    "1 0 -1 -1, r^10, 4 5 3",
    "1 -3 2, r^10, 1023 -1022",
    "1 0 0 -1 -1, r^9, 1 2 1 0",
    "1 -1 1, r^100, -1 0",
    "1 -1 -3, r^10, 1159 1524",
    "1 -3 -2, r^6-2r^5-r^4+9r+4, 187 104",
    "1 -3 -2, (r+1)^4, 105 59",
  })
  void anExpressionInOneRootEndsInItsRemainder(String coefficients, String ask, String remainder) {
    String[] parts = remainder.split(" ");
    long[] descending = new long[parts.length];
    for (int k = 0; k < parts.length; k++) {
      descending[k] = Long.parseLong(parts[k]);
    }
    assertThat(Exercise.of(coefficients, ask).by(route).answer())
        .isEqualTo(new Answer.PolynomialIn(Polynomial.ofDescending(descending), "r"));
  }

  @Test
  void aConstantRemainderIsANumber() {
    assertThat(Exercise.of("1 -4 -3", "r^4-4r^3-4r^2+4r+10").by(route).answer())
        .isEqualTo(Answer.exact(Rational.of(7)));
  }

  @Test
  void theRootIsCalledAsTheAskCallsIt() {
    assertThat(Exercise.of("1 -2 -1", "s^3").by(route).answer())
        .isEqualTo(new Answer.PolynomialIn(Polynomial.ofDescending(5, 2), "s"));
  }

  /** Worked out independently. */
  @ParameterizedTest
  @CsvSource({
    "1 -3 4 -7, sum(r^3-3r^2+r+5), 27",
    "1 0 -1 -1, sum r^11, 22",
    "1 -2 3 -5, S_7, 51",
    "1 -1 0 0 -3, S_9, 109",
    "1 -1 -2 3, S_20, 5450",
    "1 -1 -3, r^10+s^10, 4207",
  })
  void reducedPowersAddUpOverTheRoots(String coefficients, String ask, String value) {
    assertThat(Exercise.of(coefficients, ask).valueBy(route)).hasToString(value);
  }

  @Test
  void whatThePolynomialCollapsesIsCountedForEveryRoot() {
    assertThat(Exercise.of("1 -3 4 -7", "sum(r^3-3r^2+r+5)").linesBy(route))
        .containsExactly(
            "r^3 = 3*r^2 - 4*r + 7",
            "r^3 - 3*r^2 + r + 5 = (3*r^2 - 4*r + 7) - 3*r^2 + r + 5 = -3*r + 12",
            "S_1 = e_1 = r + s + t = -(-3) = 3",
            "sum(r^3 - 3*r^2 + r + 5) = -3*S_1 + 3*12 = -3*3 + 3*12 = 27");
  }

  @Test
  void aFarPowerIsReachedBySquaring() {
    assertThat(Exercise.of("1 -1 1", "r^100").linesBy(route)).hasSizeLessThan(12);
  }

  @Test
  void lowPowersNeedNoReduction() {
    assertThat(Exercise.of("1 -2 3 -5", "sum r^2").refusalOf(route)).contains("reaches the degree");
  }

  @Test
  void numbersThatNobodyWritesAreNotWritten() {
    assertThat(Exercise.of("1 0 -1 -1", "sum r^3000").refusalOf(route)).contains("150 digits");
  }
}
