package rootwright.working.route;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.working.answer.Answer;

/** Values worked out independently, by hand. */
class ReciprocalOfRootTest {

  private final Route route = new ReciprocalOfRoot();

  @Test
  void theReciprocalOfARootIsAPolynomialInIt() {
    assertThat(Exercise.of("1 0 -1 -1", "1/r").linesBy(route))
        .containsExactly("P(r) = r*(r^2 - 1) - 1 = 0", "1/r = r^2 - 1");
    assertThat(Exercise.of("1 0 -1 -1", "1/r").by(route).answer())
        .isEqualTo(new Answer.PolynomialIn(Polynomial.ofDescending(1, 0, -1), "r"));
  }

  @Test
  void aLinearDenominatorIsDividedOutOfThePolynomial() {
    assertThat(Exercise.of("1 -2 7 -3", "(s+1)/(s-2)").linesBy(route))
        .containsExactly(
            "P(s) = (s - 2)*(s^2 + 7) + 11 = 0",
            "1/(s - 2) = -1/11*s^2 - 7/11",
            "(s + 1)/(s - 2) = 1 + 3*(1/(s - 2)) = -3/11*s^2 - 10/11");
  }

  @Test
  void theAnswerMayBeANumber() {
    assertThat(Exercise.of("1 -2 1", "1/r").by(route).answer())
        .isNotEqualTo(Answer.exact(Rational.ONE));
    assertThat(Exercise.of("2 -1", "1/r").by(route).answer())
        .isEqualTo(Answer.exact(Rational.of(2)));
  }

  @Test
  void aRootBelowTheStrokeThatIsZeroIsRefused() {
    assertThat(Exercise.of("1 -1 0 -4", "1/(r-2)").refusalOf(route)).contains("zero");
  }

  @Test
  void aPolynomialAskNeedsNoReciprocal() {
    assertThat(Exercise.of("1 0 -1 -1", "r^5").refusalOf(route)).contains("denominator");
  }
}
