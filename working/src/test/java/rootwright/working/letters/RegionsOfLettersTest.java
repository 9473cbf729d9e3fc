package rootwright.working.letters;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rootwright.algebra.notation.UnreadableException;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.value.ExactValue;
import rootwright.algebra.value.RationalValue;
import rootwright.working.check.ClaimCheck;
import rootwright.working.check.Verdict;
import rootwright.working.check.exact.ExactCheck;
import rootwright.working.check.second.EnclosureCheck;
import rootwright.working.solve.Solution;
import rootwright.working.step.Claim;
import rootwright.working.step.LetterInterval;
import rootwright.working.step.RootPlace;

/** All values of a letter at which the roots are of some nature, and extreme values there. */
class RegionsOfLettersTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        // Worked out by hand: discriminants 4m + 24, 3125k⁴ − 800000, 4m² − 4m − 24, k² − 16.
        "(m-3)x^2 - 2mx + m + 2 = 0; m if exactly one real solution; -6 or 3",
        "x^5 - 5x + k; k if three real roots; -4 < k < 4",
        "x^2 - 2mx + m + 6; m if roots real; m <= -2, m >= 3",
        "x^2 + kx + 4; k if all roots positive; k <= -4",
        "x^2 + kx + 1; k if no real roots; -2 < k < 2",
        "x^4 + kx^2 + 1; k if four real roots; k < -2",
        // The condition 4p³ + 27q² ≤ 0 for three real roots, Cardano 1545.
        "x^3 - 3x + k; k if all roots real; -2 <= k <= 2",
        "x^3 + k x + 2; k if all roots real; k <= -3",
        // A single value between intervals: (x + 1)³ for k = 3.
        "x^3 + kx^2 + 3x + 1; k if all roots real; k <= -15/4, k = 3",
        "x^2 + x + k; k if roots real and k > 0; 0 < k <= 1/4",
        "x^2 + k^2 + 1; k if roots real; no such value",
      })
  void everyValueBelongsThatShouldAndNoOther(String polynomial, String find, String answer)
      throws Exception {
    assertThat(Lettered.answer(polynomial, find)).isEqualTo(answer);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "x^2 - 2mx + m + 6; least r^2 + s^2 if all roots real; 8",
        "x^3 - 3x + k; greatest k if all roots real; 2",
        "x^3 - 3x + k; smallest value of k if all roots real; -2",
        "x^2 + x + k; greatest r s if roots real; 1/4",
        "x^2 - k x + k; least r^2 + s^2 if roots real; 0",
      })
  void extremeValuesAreTakenWhereTheRootsAreReal(String polynomial, String find, String answer)
      throws Exception {
    assertThat(Lettered.answer(polynomial, find)).isEqualTo(answer);
  }

  @Test
  void theVertexOutsideTheRegionIsASlip() throws UnreadableException {
    Solution solution = Lettered.work("x^2 - 2mx + m + 6", "least r^2 + s^2 if all roots real");
    assertThat(Lettered.slips(solution)).containsExactly("vertex-outside -49/4");
    assertThat(solution.conditions()).containsExactly("m = −2, where it is attained");
  }

  @Test
  void theValueAtWhichTheEquationBecomesLinearIsKeptAndFlagged() throws UnreadableException {
    Solution solution =
        Lettered.work("(m-3)x^2 - 2mx + m + 2 = 0", "m if exactly one real solution");
    assertThat(Lettered.text(solution)).isEqualTo("-6 or 3");
    assertThat(Lettered.codes(solution)).contains("lead-zero");
    assertThat(solution.warnings().toString()).contains("becomes linear").contains("x = 5/6");
    assertThat(Lettered.slips(solution)).contains("linear-case-lost -6");
  }

  @Test
  void whatGrowsBeyondAllBoundsHasNoGreatestValue() throws UnreadableException {
    Solution solution = Lettered.work("x^2 - 2mx + m + 6", "greatest r^2 + s^2 if roots real");
    assertThat(Lettered.text(solution)).contains("beyond all bounds");
  }

  @Test
  void wrongCountsAndWrongExtremesAreRefutedByBothChecks() {
    // x² + k: two real roots below 0, none above.
    MultivariatePolynomial polynomial =
        MultivariatePolynomial.unknown(0).power(2).plus(MultivariatePolynomial.unknown(1));
    for (ClaimCheck check : List.of(new ExactCheck(), new EnclosureCheck())) {
      assertThat(check.of(counts(polynomial, 2, 0))).isInstanceOf(Verdict.Confirmed.class);
      assertThat(check.of(counts(polynomial, 0, 2))).isInstanceOf(Verdict.Refuted.class);
      assertThat(check.of(extreme(1))).isInstanceOf(Verdict.Confirmed.class);
      assertThat(check.of(extreme(2))).isInstanceOf(Verdict.Refuted.class);
    }
  }

  @Test
  void countsAgreeWithTheRootsAtRandomValues() throws UnreadableException {
    long seed = Long.getLong("rootwright.seed", 20_262L);
    SplittableRandom random = new SplittableRandom(seed);
    for (int k = 0; k < 12; k++) {
      int b = random.nextInt(-4, 5);
      String polynomial = "x^3 + (%d)x + k".formatted(b);
      String region = Lettered.answer(polynomial, "k if all roots real");
      // 4b³ + 27k² ≤ 0 by the discriminant of the reduced cubic.
      assertThat(region.equals("no such value"))
          .as("%s, seed %d", polynomial, seed)
          .isEqualTo(b > 0);
    }
  }

  private static Claim counts(MultivariatePolynomial polynomial, int below, int above) {
    return new Claim.CountsBetween(polynomial, Polynomial.X, RootPlace.REAL, List.of(below, above));
  }

  /** k² on k ≥ 1, said to have the square of this number for its least value. */
  private static Claim extreme(int at) {
    ExactValue one = new RationalValue(Rational.ONE);
    return new Claim.Extreme(
        Polynomial.X.power(2),
        Polynomial.ONE,
        List.of(new LetterInterval(Optional.of(one), true, Optional.empty(), false)),
        new RationalValue(Rational.of((long) at * at)),
        new RationalValue(Rational.of(at)),
        Claim.Extreme.Side.LEAST);
  }
}
