package rootwright.algebra.notation;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is read, shown by what the plain writer makes of it. */
class FormulaReaderTest {

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = ';',
      quoteCharacter = '"',
      textBlock =
          """
          3x^3 - 5x + 7          ; 3*x^3 - 5*x + 7
          3*x**3-5*x+7           ; 3*x^3 - 5*x + 7
          x³−4x+1                ; x^3 - 4*x + 1
          x^{3}-4x+1             ; x^3 - 4*x + 1
          x^3 = 4x − 1           ; x^3 = 4*x - 1
          $x^{10} - 4\\,x+1$     ; x^10 - 4*x + 1
          2x·3                   ; 2*x*3
          (x-1)²(x+4)            ; (x - 1)^2*(x + 4)
          rs+st+tr               ; r*s + s*t + t*r
          1/r+1/s                ; 1/r + 1/s
          \\frac{1}{r}+\\frac1s  ; 1/r + 1/s
          \\frac12 x             ; 1/2*x
          \\dfrac{r+s}{t}        ; (r + s)/t
          r_1^2 r_2              ; r_1^2*r_2
          x_{12}^2               ; x_12^2
          x₁² + x₂²              ; x_1^2 + x_2^2
          a_{n-1}                ; a_(n-1)
          αβ + βγ                ; alpha*beta + beta*gamma
          alpha beta             ; alpha*beta
          \\alpha^2\\beta        ; alpha^2*beta
          -x^2                   ; -x^2
          -3x                    ; -3*x
          -3                     ; -3
          (-3)^2                 ; (-3)^2
          2^3^2                  ; 2^(3^2)
          x^-1                   ; x^(-1)
          x⁻¹                    ; x^(-1)
          x^(1/2)                ; x^(1/2)
          a/b/c                  ; (a/b)/c
          a*b/c                  ; a*b/c
          a/b*c                  ; (a/b)*c
          a*(b/c)                ; a*(b/c)
          76/44                  ; 76/44
          19/11                  ; 19/11
          -19/11                 ; -19/11
          1/2x                   ; 1/2*x
          1/rs                   ; 1/(r*s)
          x/2y                   ; x/(2*y)
          1/2(x+1)               ; 1/2*(x + 1)
          x^1/2                  ; x^1/2
          0.25x                  ; 1/4*x
          .5                     ; 1/2
          6 3/4                  ; 27/4
          2½x                    ; 5/2*x
          x + 1 1/2              ; x + 3/2
          6\\frac{3}{4}          ; 27/4
          √3                     ; sqrt(3)
          2√3                    ; 2*sqrt(3)
          (3±√229)/2             ; (3 +- sqrt(229))/2
          ±2√3                   ; +-2*sqrt(3)
          7 + 2*sqrt(3)          ; 7 + 2*sqrt(3)
          \\sqrt[3]{x+1}         ; cbrt(x + 1)
          \\sqrt2                ; sqrt(2)
          \\sqrt[5]{r}           ; root(5, r)
          ∛r+∛s                  ; cbrt(r) + cbrt(s)
          √r²                    ; sqrt(r^2)
          √(r)²                  ; sqrt(r)^2
          2 - 3i                 ; 2 - 3*i
          S_20                   ; S_20
          S_(10^18) mod 10^9+7   ; S_(10^18) mod 10^9 + 7
          S_{-2}                 ; S_(-2)
          p_{100}                ; p_100
          p₂₀                    ; p_20
          e1^2 - 2e2             ; e_1^2 - 2*e_2
          h_2                    ; h_2
          S_k                    ; S_k
          e + p + h              ; e + p + h
          Σ r^2 s                ; sum(r^2*s)
          sum r^2 s              ; sum(r^2*s)
          Σ r^2 + 4              ; sum(r^2) + 4
          Σ(r^2+4)               ; sum(r^2 + 4)
          Σ 1/(r+s)              ; sum(1/(r + s))
          Σ1/(r-3)               ; sum(1/(r - 3))
          Σ r Σ 1/r              ; sum(r)*sum(1/r)
          Σ r · Σ 1/r            ; sum(r)*sum(1/r)
          2Σ r^2                 ; 2*sum(r^2)
          (Σ r)^2                ; (sum(r))^2
          Π (1+r)                ; product(1 + r)
          product (1 + r)        ; product(1 + r)
          \\sum_{r} r^2          ; sum(r^2)
          \\prod (1+r)           ; product(1 + r)
          \\sum_{i=1}^{n} r_i^2  ; sum(r_1^2)
          \\sum_{i<j} r_i r_j    ; sum(r_1*r_2)
          \\sum_{1\\le i<j\\le n} (x_i-x_j)^2 ; sum((x_1 - x_2)^2)
          \\sum_{i\\ne j} r_i^2 r_j ; sum(r_1^2*r_2)
          \\sum_{i\\ne j} r_i r_j ; 2*sum(r_1*r_2)
          Σ x_i^2 x_j            ; sum(x_1^2*x_2)
          log_2 7                ; log(7, 2)
          \\log_{2}(7)           ; log(7, 2)
          a ≡ b (mod 7)          ; a === b mod 7
          r^{1/4}                ; r^(1/4)
          discriminant           ; discriminant
          real roots             ; real roots
          roots                  ; roots
          reduce(r^6)            ; reduce(r^6)
          resolvent(rs+tu)       ; resolvent(r*s + t*u)
          polynomial with roots (2r-1) ; polynomial with roots(2*r - 1)
          polynomial with roots (r+s, rs) ; polynomial with roots(r + s, r*s)
          P'(3)/P(3)             ; P'(3)/P(3)
          Σ r^5/P'(r)            ; sum(r^5/P'(r))
          log(2)                 ; log(2)
          |r-s|                  ; abs(r - s)
          2|r|                   ; 2*abs(r)
          r <= 3                 ; r <= 3
          1 < x ≤ 2              ; 1 < x <= 2
          a ≡ b mod 7            ; a === b mod 7
          r, s, t                ; r, s, t
          7 or 14                ; 7, 14
          \\left(r+s\\right)^2   ; (r + s)^2
          [(r+s)t]^2             ; ((r + s)*t)^2
          r(s+t)                 ; r*(s + t)
          mu                     ; mu
          \\operatorname{disc}   ; discriminant
          ⌊√2⌋                   ; floor(sqrt(2))
          """)
  void readsAndWritesPlainly(String text, String plain) throws UnreadableException {
    Formula formula = FormulaReader.formula(text);
    assertThat(PlainWriter.write(formula)).isEqualTo(plain);
    assertThat(FormulaReader.formula(plain)).isEqualTo(formula);
    assertThat(NormalForm.of(formula)).isEqualTo(formula);
  }
}
