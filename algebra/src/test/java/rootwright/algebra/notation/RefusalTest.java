package rootwright.algebra.notation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RefusalTest {

  private static Refusal refusal(String text) {
    return catchThrowableOfType(UnreadableException.class, () -> FormulaReader.read(text))
        .refusal();
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = ';',
      quoteCharacter = '"',
      nullValues = "-",
      textBlock =
          """
          ""              ; empty             ; 0  ; -
          "   "           ; empty             ; 0  ; -
          x^3 - 6x^^2     ; unexpected        ; 9  ; x^3 - 6x^2
          (x+1            ; bracket           ; 4  ; (x+1)
          ((x+1)(x-[2     ; bracket           ; 11 ; ((x+1)(x-[2]))
          x+1)            ; bracket           ; 3  ; x+1
          (x+1]           ; bracket           ; 4  ; (x+1)
          x^2 +           ; unexpected        ; 5  ; x^2
          * x             ; unexpected        ; 0  ; x
          x + * 3         ; unexpected        ; 4  ; x  * 3
          x 2             ; number            ; 2  ; x^2
          (x+1)2          ; number            ; 5  ; (x+1)*2
          2 3             ; number            ; 2  ; 2*3
          1 + 2.          ; number            ; 6  ; 1 + 2
          x # 2           ; unknown-character ; 2  ; x^2
          x! + 1          ; unknown-character ; 1  ; x + 1
          discriminent    ; unknown-word      ; 0  ; discriminant
          sqrtx           ; unknown-word      ; 0  ; sqrt x
          \\frac{1}       ; unexpected        ; 8  ; -
          \\foo{1}        ; unknown-command   ; 0  ; -
          sum of squares  ; unknown-word      ; 4  ; -
          reduce          ; unexpected        ; 6  ; -
          root(1, x)      ; number            ; 4  ; -
          |x - 1          ; bracket           ; 6  ; |x - 1|
          \\sum_{odd} r^2 s ; caption         ; 0  ; -
          \\sum_{k=0}^{3} r^k ; caption       ; 0  ; -
          \\sum_{i=1}^{n} i ; caption         ; 0  ; -
          Σ_{i<j} r_i/r_j ; caption           ; 0  ; -
          Σ_{i≠j} √(r_i r_j) ; caption        ; 0  ; -
          r_              ; unexpected        ; 2  ; -
          """)
  void placeAndMendAreNamed(String text, String code, int at, String mend) {
    Refusal refusal = refusal(text);
    assertThat(refusal.code()).as(refusal.toString()).isEqualTo(code);
    assertThat(refusal.at()).as(refusal.toString()).isEqualTo(at);
    assertThat(refusal.mend()).as(refusal.toString()).isEqualTo(mend == null ? "" : mend);
    assertThat(refusal.text()).endsWith(".");
    if (!refusal.mend().isEmpty()) {
      assertThatCode(() -> FormulaReader.read(refusal.mend())).doesNotThrowAnyException();
    }
  }

  @Test
  void hugeTextsAreRefusedAtOnce() {
    assertThat(refusal("(".repeat(1_000_000)).code()).isEqualTo("too-long");
    assertThat(refusal("(".repeat(10_000)).code()).isEqualTo("too-deep");
    assertThat(refusal("1/".repeat(9_000) + "1").code()).isEqualTo("too-deep");
    assertThat(refusal("-".repeat(10_000) + "x").code()).isEqualTo("too-deep");
    assertThat(refusal("√".repeat(10_000) + "x").code()).isEqualTo("too-deep");
    assertThat(refusal("x^".repeat(9_000) + "x").code()).isEqualTo("too-deep");
    assertThat(refusal("Σ".repeat(10_000) + "x").code()).isEqualTo("too-deep");
    assertThat(refusal("|".repeat(10_001) + "x").code()).isEqualTo("too-deep");
    assertThat(refusal("9".repeat(1_000_000)).code()).isEqualTo("too-long");
    assertThat(refusal("9".repeat(10_000)).code()).isEqualTo("too-many-digits");
    assertThat(refusal("\\frac{".repeat(3_000)).code()).isEqualTo("too-deep");
  }

  @Test
  void longSumsAndProductsAreRead() throws UnreadableException {
    assertThat(FormulaReader.formula("x+".repeat(9_000) + "x").parts()).hasSize(9_001);
    assertThat(FormulaReader.formula("x*".repeat(9_000) + "x").parts()).hasSize(9_001);
    assertThat(FormulaReader.formula("x ".repeat(9_000) + "x").parts()).hasSize(9_001);
  }

  @Test
  void aControlCharacterIsNamedByItsNumber() {
    assertThat(refusal("x\u0007+1").text())
        .isEqualTo("The character “U+0007” has no meaning in a formula.");
    assertThat(refusal("x\uD800+1").text()).contains("U+D800");
  }

  @Test
  void theCaretStandsBelowThePlace() {
    String line = System.lineSeparator();
    assertThat(ErrorCaret.write(refusal("x^3 - 6x^^2")))
        .isEqualTo(
            "error: Two power signs follow each other."
                + line
                + "  x^3 - 6x^^2"
                + line
                + "           ^ expected a whole number"
                + line
                + "  perhaps: x^3 - 6x^2");
    assertThat(ErrorCaret.write(refusal("x\u0007"))).contains("  x␇" + line + "   ^");
  }

  @Test
  void aLongTextIsShownRoundThePlace() {
    String shown =
        ErrorCaret.write(refusal("x + ".repeat(100) + "# + " + "y + ".repeat(100) + "1"));
    String[] lines = shown.split("\\R");
    assertThat(lines[1]).startsWith("  …").endsWith("…").hasSizeLessThan(80);
    assertThat(lines[1].charAt(lines[2].indexOf('^'))).isEqualTo('#');
  }
}
