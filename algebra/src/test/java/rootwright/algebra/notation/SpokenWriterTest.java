package rootwright.algebra.notation;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SpokenWriterTest {

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = ';',
      textBlock =
          """
          -19/11               ; minus nineteen elevenths
          1/2                  ; one half
          3/4                  ; three quarters
          α²+β²                ; alpha squared plus beta squared
          e_2                  ; e two
          S_20                 ; S twenty
          P'(3)                ; P prime of three
          P'(3)/P(3)           ; P prime of three over P of three
          P''(r)               ; P double prime of r
          Σ 1/r                ; the sum over the roots of one over r
          Σ 1/(r-3)            ; the sum over the roots of one over, r minus three
          Σ 1/(r-3) = -19/11   ; the sum over the roots of one over, r minus three, equals minus nineteen elevenths
          Σ r^2 + 4            ; the sum over the roots of r squared plus four
          Σ r^2 s              ; the sum of all different terms like r squared s
          Π (1+r)              ; the product over the roots of the quantity one plus r
          (r+s)^2              ; the quantity r plus s, squared
          (r+s)(s+t)           ; the quantity r plus s, times the quantity s plus t
          (r+s)/t - 1          ; r plus s, over t minus one
          2r^3 s               ; two r cubed s
          r^10                 ; r to the tenth
          r^k                  ; r to the power k
          x_1 + x_2            ; x one plus x two
          (3±√229)/2           ; three plus or minus the square root of two hundred and twenty-nine, over two
          discriminant         ; the discriminant
          reduce(r^6)          ; the reduced form of r to the sixth
          S_5 mod 7            ; S five modulo seven
          x^2 <= 2             ; x squared is at most two
          |r-s|                ; the absolute value of r minus s
          log_2 7              ; the logarithm to base two of seven
          real roots           ; the number of real roots
          sum(real roots)      ; the sum of the real roots
          |r|^2                ; the quantity the absolute value of r, squared
          2 - 3i               ; two minus three i
          """)
  void readsAloud(String text, String spoken) throws UnreadableException {
    assertThat(SpokenWriter.write(FormulaReader.formula(text))).isEqualTo(spoken);
  }

  @Test
  void numbersAreSpokenAsInEnglish() {
    assertThat(NumberWords.cardinal(BigInteger.valueOf(5450)))
        .isEqualTo("five thousand four hundred and fifty");
    assertThat(NumberWords.cardinal(BigInteger.valueOf(10_007)))
        .isEqualTo("ten thousand and seven");
    assertThat(NumberWords.cardinal(BigInteger.valueOf(1_000_000))).isEqualTo("1000000");
    assertThat(NumberWords.ordinal(BigInteger.valueOf(21))).isEqualTo("twenty-first");
    assertThat(NumberWords.ordinal(BigInteger.valueOf(40))).isEqualTo("fortieth");
    assertThat(NumberWords.ordinal(BigInteger.valueOf(100))).isEqualTo("one hundredth");
  }

  @Test
  void aSpokenFormulaHoldsNoSignButCommasAndHyphens() {
    long seed = RandomFormulas.seed(51);
    RandomFormulas formulas = new RandomFormulas(seed);
    for (int sample = 0; sample < 2_000; sample++) {
      Formula formula = formulas.draw(3);
      assertThat(SpokenWriter.write(formula))
          .as("seed %d sample %d: %s", seed, sample, PlainWriter.write(formula))
          .matches("[A-Za-z0-9, -]+")
          .doesNotContain(",,")
          .doesNotEndWith(",");
    }
  }
}
