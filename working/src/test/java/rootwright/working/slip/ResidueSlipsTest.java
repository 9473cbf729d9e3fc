package rootwright.working.slip;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import rootwright.working.Stated;

/**
 * Wrong remainders, by hand: for x² − 5x + 3 the power sums are 2, 5, 19, 80, 343, and modulo 7
 * these are 2, 5, 5, 3, 0.
 */
class ResidueSlipsTest {

  @Test
  void theNeighboursThePowerOfTheSumAndTheTableThatBeginsWithOneAreForeseen() {
    var solution = Stated.solution("x^2 - 5x + 3", "S_3 mod 7");
    assertThat(Stated.text(solution.answer())).isEqualTo("3");
    assertThat(Stated.slips(solution))
        .containsExactlyInAnyOrder(
            "index-off-by-one 5",
            "index-off-by-one 0",
            // 5³ = 125 = 17·7 + 6
            "square-of-the-sum 6",
            // 1, 5, 22, 95 = 13·7 + 4
            "p0-is-1 4");
  }

  @Test
  void theWrongTableIsNotWrittenFarOut() {
    assertThat(Stated.slips(Stated.solution("x^3 - x - 1", "S_(10^18) mod 10^9+7")))
        .noneMatch(slip -> slip.startsWith("p0-is-1"));
  }

  @Test
  void whereNoPowerSumIsAskedForNothingIsForeseen() {
    assertThat(Stated.slips(Stated.solution("x^2 - 5x + 3", "(r^2 + s^2) mod 7"))).isEmpty();
  }
}
