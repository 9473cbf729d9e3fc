package rootwright.algebra.notation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;

class PolynomialReaderTest {

  private static Refusal refusal(String text) {
    return catchThrowableOfType(UnreadableException.class, () -> PolynomialReader.read(text))
        .refusal();
  }

  @ParameterizedTest(name = "{0}")
  @ValueSource(
      strings = {
        "x^3 = 4x − 1",
        "1-4x+x^3=0",
        "x³−4x+1",
        "x^{3}-4x+1",
        "1 0 -4 1",
        "1,0,−4,1",
        "[1, 0, -4, 1]",
        "P(x) = x^3 - 4x + 1",
        "0 = -x^3+4x-1 + 2(x^3 - 4x + 1)"
      })
  void oneCubicInManySpellingsIsOnePolynomial(String text) throws UnreadableException {
    assertThat(PolynomialReader.read(text).polynomial())
        .satisfiesAnyOf(
            read -> assertThat(read).isEqualTo(Polynomial.ofDescending(1, 0, -4, 1)),
            read -> assertThat(read.negate()).isEqualTo(Polynomial.ofDescending(1, 0, -4, 1)));
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = ';',
      quoteCharacter = '"',
      textBlock =
          """
          (x-1)²(x+4)            ; x^3 + 2*x^2 - 7*x + 4
          (x-1)(x-2)(x-3)        ; x^3 - 6*x^2 + 11*x - 6
          2(x-1/2)^2             ; 2*x^2 - 2*x + 1/2
          0.5x^2 - .25           ; 1/2*x^2 - 1/4
          x^2 + 6 3/4            ; x^2 + 27/4
          \\frac{x^2-1}{2}       ; 1/2*x^2 - 1/2
          z^2 + 1                ; z^2 + 1
          y^2 = 2                ; y^2 - 2
          t^3 - t                ; t^3 - t
          7                      ; 7
          0                      ; 0
          x - x                  ; 0
          6 3/4 2                ; 6*x^2 + 3/4*x + 2
          1/2, -3, 0.5           ; 1/2*x^2 - 3*x + 1/2
          x^(2*3) - 1            ; x^6 - 1
          (x^2+1)^0              ; 1
          (x-1)^3/2^2            ; 1/4*x^3 - 3/4*x^2 + 3/4*x - 1/4
          """)
  void bracketsAreMultipliedOutExactly(String text, String plain) throws UnreadableException {
    StatedPolynomial stated = PolynomialReader.read(text);
    assertThat(PlainWriter.write(PolynomialFormula.of(stated.polynomial(), stated.unknown())))
        .isEqualTo(plain);
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = ';',
      quoteCharacter = '"',
      nullValues = "-",
      textBlock =
          """
          k x^2 - 1        ; letter-in-coefficients ; 0 ; -
          x2 - 3x + 2      ; letter-in-coefficients ; 0 ; x^2 - 3x + 2
          x3 - 1           ; which-unknown          ; 0 ; x^3 - 1
          x^2 + 2,5x       ; not-a-polynomial       ; 0 ; x^2 + 2.5x
          a t^2 + b        ; which-unknown          ; 0 ; -
          1/x + 2          ; division-by-unknown    ; 0 ; -
          x^-1 + 2         ; exponent               ; 0 ; -
          x^n - 1          ; exponent               ; 2 ; -
          x^(1/2)          ; exponent               ; 3 ; -
          x^999999999      ; too-large              ; 0 ; -
          x^5000 - 1       ; too-large              ; 0 ; -
          (x+1)^500 x^1501 ; too-large          ; 0 ; -
          2^(10^9)x        ; too-large              ; 0 ; -
          x/0              ; zero-denominator       ; 0 ; -
          x^2/(1-1)        ; zero-denominator       ; 0 ; -
          1 2 3/0          ; zero-denominator       ; 5 ; -
          x^2 +- 3x        ; not-a-polynomial       ; 0 ; x^2 - 3x
          x^2 + √2         ; not-a-polynomial       ; 6 ; -
          x^2 + i          ; not-a-polynomial       ; 6 ; -
          Σ x              ; not-a-polynomial       ; 0 ; -
          x < 3            ; not-an-equation        ; 4 ; -
          x = 3 = 4        ; not-an-equation        ; 8 ; -
          x^^2             ; unexpected             ; 2 ; x^2
          x^2 2            ; number                 ; 4 ; x^2*2
          """)
  void whatIsNoPolynomialIsRefusedWithPlaceAndMend(String text, String code, int at, String mend) {
    Refusal refusal = refusal(text);
    assertThat(refusal.code()).as(refusal.toString()).isEqualTo(code);
    assertThat(refusal.at()).as(refusal.toString()).isEqualTo(at);
    assertThat(refusal.mend()).isEqualTo(mend == null ? "" : mend);
    assertThat(refusal.text()).endsWith(".");
  }

  @Test
  void theUnknownIsXBeforeZBeforeYBeforeTheOnlyLetter() throws UnreadableException {
    assertThat(PolynomialReader.readWithLetters("x^2 + y z").unknown()).isEqualTo("x");
    assertThat(PolynomialReader.readWithLetters("z^2 + y a").unknown()).isEqualTo("z");
    assertThat(PolynomialReader.readWithLetters("y^2 + a b").unknown()).isEqualTo("y");
    assertThat(PolynomialReader.read("w^2 + 1").unknown()).isEqualTo("w");
    assertThat(PolynomialReader.read("x^2 + 1", "x").unknown()).isEqualTo("x");
    assertThat(PolynomialReader.readWithLetters("x^2 + t", "t").names()).containsExactly("t", "x");
  }

  @Test
  void lettersInCoefficientsAreKeptAsUnknownsOfTheirOwn() throws UnreadableException {
    StatedWithLetters stated = PolynomialReader.readWithLetters("(m-3)x^2 - 2mx + m + 2 = 0");
    assertThat(stated.names()).containsExactly("x", "m");
    assertThat(PlainWriter.write(PolynomialFormula.of(stated.polynomial(), stated.names())))
        .isEqualTo("x^2*m - 3*x^2 - 2*x*m + m + 2");
  }

  @Test
  void writingAPolynomialAndReadingItGivesItBack() throws UnreadableException {
    long seed = RandomFormulas.seed(17);
    SplittableRandom random = new SplittableRandom(seed);
    for (int sample = 0; sample < 2_000; sample++) {
      Polynomial polynomial = Polynomial.ZERO;
      int degree = random.nextInt(8);
      for (int k = 0; k <= degree; k++) {
        Rational coefficient = Rational.of(random.nextInt(-9, 10), 1 + random.nextInt(4));
        polynomial = polynomial.plus(Polynomial.monomial(coefficient, k));
      }
      for (String text :
          new String[] {
            PlainWriter.write(PolynomialFormula.of(polynomial, "x")),
            UnicodeWriter.write(PolynomialFormula.of(polynomial, "x"))
          }) {
        assertThat(PolynomialReader.read(text).polynomial())
            .as("seed %d: %s", seed, text)
            .isEqualTo(polynomial);
      }
    }
  }

  @Test
  void digitsThatLostTheirHeightArePowersNotLettersWithAnIndex() {
    assertThatThrownBy(() -> PolynomialReader.readWithLetters("x3 - 4x2 + 2x + 6"))
        .isInstanceOfSatisfying(
            UnreadableException.class,
            refused -> assertThat(refused.refusal().mend()).isEqualTo("x^3 - 4x^2 + 2x + 6"));
  }
}
