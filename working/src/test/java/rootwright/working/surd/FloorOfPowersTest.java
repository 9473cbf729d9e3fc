package rootwright.working.surd;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rootwright.working.Stated;
import rootwright.working.solve.Solution;

class FloorOfPowersTest {

  private static final long SEED = Long.getLong("rootwright.seed", 20_261_203L);

  /** Whole parts worked out again with long decimals; Lucas numbers after A000032 of the OEIS. */
  @ParameterizedTest(name = "{0} = {1}")
  @CsvSource(
      delimiter = ';',
      value = {
        "last digit of ⌊(4+√11)^50⌋; 3",
        "last digit of ⌊(3+√7)^2026⌋; 1",
        "the last two digits of floor((2+sqrt(3))^20); 73",
        "⌊(2+√3)^6⌋; 2701",
        "⌊((1+√5)/2)^10⌋; 122",
        "⌊((1+√5)/2)^11⌋; 199",
        "ceil((1+√2)^5); 83",
        "⌊(√2+√3)^6⌋; 969",
        "⌊(√3+√2)^2026⌋ mod 10; 9",
        "⌊(2+√2)^5⌋; 463",
      })
  void wholePartsOfPowersComeOut(String ask, String value) {
    assertThat(Stated.text("", ask)).isEqualTo(value);
  }

  @Test
  void theRouteAddsTheConjugateAndTakesItOffAgain() {
    Solution solution = Stated.solution("", "last digit of ⌊(4+√11)^50⌋");
    String route = Stated.routes(solution).get(0);
    assertThat(Stated.lines(solution, route))
        .startsWith(
            "(x - (4 + sqrt(11)))*(x - (4 - sqrt(11))) = x^2 - 8*x + 5", "0 < 4 - sqrt(11) < 1");
    assertThat(Stated.lines(solution, route).get(Stated.lines(solution, route).size() - 1))
        .endsWith("S_50 - 1 === 3");
    assertThat(Stated.slips(solution)).contains("floor-forgotten 4");
    assertThat(solution.statement())
        .isEqualTo(
            "Find the last digit of ⌊(4 + √11)⁵⁰⌋, the greatest whole number not above (4 + √11)⁵⁰.");
  }

  @Test
  void aNegativeConjugateMakesTheParityDecide() {
    Solution odd = Stated.solution("", "⌊(1+√2)^7⌋");
    assertThat(Stated.text(odd.answer())).isEqualTo("478");
    assertThat(Stated.slips(odd)).contains("sign-of-the-conjugate 477");
    assertThat(odd.silent()).extracting(Solution.SilentSlip::name).contains("floor-forgotten");
  }

  @Test
  void whereTheConjugateIsLargeThereIsAValueButNoRoute() {
    Solution solution = Stated.solution("", "⌊(5+√2)^9⌋");
    assertThat(Stated.text(solution.answer())).isEqualTo("18377682");
    assertThat(solution.routes()).isEmpty();
    assertThat(solution.declined())
        .singleElement()
        .extracting("why")
        .asString()
        .contains("below 1");
    assertThat(Stated.refusal("", "⌊(5+√2)^90000⌋ mod 10"))
        .contains("too high to be multiplied out");
  }

  @Test
  void hugeExponentsHaveLastDigits() {
    assertThat(Stated.text("", "⌊(4+√11)^(10^15)⌋ mod 10")).isEqualTo("5");
    assertThat(Stated.refusal("", "⌊(4+√11)^(10^15)⌋")).contains("too many digits");
  }

  @Test
  void wholePartsAgreeWithLongDecimals() {
    SplittableRandom random = new SplittableRandom(SEED);
    MathContext digits = new MathContext(200, RoundingMode.HALF_EVEN);
    for (int trial = 0; trial < 12; trial++) {
      int d = 2 + random.nextInt(40);
      int root = (int) Math.sqrt(d);
      if (root * root == d) {
        continue;
      }
      int a = root + random.nextInt(2);
      int k = 1 + random.nextInt(30);
      BigInteger expected =
          BigDecimal.valueOf(d)
              .sqrt(digits)
              .add(BigDecimal.valueOf(a))
              .pow(k, digits)
              .toBigInteger();
      assertThat(Stated.text("", "⌊(%d+√%d)^%d⌋".formatted(a, d, k)))
          .as("seed %d: a=%d d=%d k=%d", SEED, a, d, k)
          .isEqualTo(expected.toString());
    }
  }
}
