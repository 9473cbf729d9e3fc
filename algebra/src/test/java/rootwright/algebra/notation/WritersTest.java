package rootwright.algebra.notation;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.algebra.polynomial.Polynomial;

class WritersTest {

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = ';',
      textBlock =
          """
          x^3 - 17*x + 25    ; x³ − 17x + 25        ; x^{3} - 17 x + 25
          -19/11             ; −19/11               ; -\\frac{19}{11}
          (3 +- sqrt(229))/2 ; (3 ± √229)/2         ; \\frac{3 \\pm \\sqrt{229}}{2}
          sum(r^2*s)         ; Σr²s                 ; \\sum r^{2} s
          sum(1/(r - 3))     ; Σ1/(r − 3)           ; \\sum \\frac{1}{r - 3}
          sum(r^2 + 4)       ; Σ(r² + 4)            ; \\sum (r^{2} + 4)
          1/(r*s)            ; 1/(rs)               ; \\frac{1}{r s}
          2*3^2              ; 2·3²                 ; 2 \\cdot 3^{2}
          1/2*x              ; 1/2·x                ; \\frac{1}{2} x
          2*sqrt(3)          ; 2√3                  ; 2 \\sqrt{3}
          sqrt(3)*i          ; √3·i                 ; \\sqrt{3} i
          P'(3)/P(3)         ; P′(3)/P(3)           ; \\frac{P'(3)}{P(3)}
          e_1^2 - 2*e_2      ; e₁² − 2e₂            ; e_{1}^{2} - 2 e_{2}
          S_(10^18) mod 7    ; S_(10¹⁸) mod 7       ; S_{10^{18}} \\bmod 7
          alpha*beta         ; αβ                   ; \\alpha \\beta
          abs(r - s)         ; |r − s|              ; \\left|r - s\\right|
          (r + s)*(s + t)    ; (r + s)(s + t)       ; (r + s) (s + t)
          (-3)^2             ; (−3)²                ; (-3)^{2}
          (1/2)^2            ; (1/2)²               ; \\left(\\frac{1}{2}\\right)^{2}
          x^(-1)             ; x⁻¹                  ; x^{-1}
          76/44              ; 76/44                ; \\frac{76}{44}
          4 - (-3)           ; 4 − (−3)             ; 4 - (-3)
          x*i                ; x·i                  ; x i
          """)
  void threeWritersWriteOneFormula(String plain, String unicode, String latex)
      throws UnreadableException {
    Formula formula = FormulaReader.formula(plain);
    assertThat(PlainWriter.write(formula)).isEqualTo(plain);
    assertThat(UnicodeWriter.write(formula)).isEqualTo(unicode);
    assertThat(LatexWriter.write(formula)).isEqualTo(latex);
  }

  @Test
  void aPolynomialIsWrittenHighestPowerFirstWithoutFactorOne() {
    assertThat(PlainWriter.write(PolynomialFormula.of(Polynomial.ofDescending(1, -1, -17, 0), "x")))
        .isEqualTo("x^3 - x^2 - 17*x");
    assertThat(PlainWriter.write(PolynomialFormula.of(Polynomial.ofDescending(-1, 0, -1), "x")))
        .isEqualTo("-x^2 - 1");
    assertThat(PlainWriter.write(PolynomialFormula.of(Polynomial.ZERO, "x"))).isEqualTo("0");
    assertThat(
            PlainWriter.write(
                PolynomialFormula.of(Polynomial.monomial(Rational.of(-3, 2), 2), "t")))
        .isEqualTo("-3/2*t^2");
  }

  @Test
  void aPolynomialInSeveralNamesIsWrittenByDegreeThenByName() {
    MultivariatePolynomial first = MultivariatePolynomial.unknown(0);
    MultivariatePolynomial second = MultivariatePolynomial.unknown(1);
    MultivariatePolynomial third = MultivariatePolynomial.unknown(2);
    MultivariatePolynomial cubes =
        first
            .power(3)
            .minus(first.times(second).times(Rational.of(3)))
            .plus(third.times(Rational.of(3)));
    Formula formula = PolynomialFormula.of(cubes, List.of("e_1", "e_2", "e_3"));
    assertThat(PlainWriter.write(formula)).isEqualTo("e_1^3 - 3*e_1*e_2 + 3*e_3");
    assertThat(formula.contains(part -> part instanceof Formula.Name)).isFalse();
  }

  @Test
  void aNumberBuiltWithAMinusInFrontOfAProductReadsBackAsTheNegative() throws UnreadableException {
    Formula built = Formula.number(-3).times(Formula.name("x"));
    assertThat(PlainWriter.write(built)).isEqualTo("-3*x");
    assertThat(FormulaReader.formula("-3*x")).isEqualTo(NormalForm.of(built));
  }

  @Test
  void aFractionBeforeAnotherNumberStandsInItsOwnBracket() throws UnreadableException {
    Formula built = Formula.number(Rational.of(3, 2)).times(Formula.number(Rational.of(-53, 4)));
    assertThat(UnicodeWriter.write(built)).isEqualTo("(3/2)(−53/4)");
    assertThat(FormulaReader.formula("(3/2)(−53/4)")).isEqualTo(NormalForm.of(built));
    assertThat(UnicodeWriter.write(Formula.number(Rational.of(1, 2)).times(Formula.name("x"))))
        .isEqualTo("1/2·x");
  }

  @Test
  void wordsAreEscapedInEveryMarkup() {
    Formula words = new Formula.Words("50% & <more>");
    assertThat(LatexWriter.write(words)).isEqualTo("\\text{50\\% \\& <more>}");
    assertThat(MathmlWriter.write(words)).contains("<mtext>50% &amp; &lt;more&gt;</mtext>");
  }
}
