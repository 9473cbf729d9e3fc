package rootwright.algebra.notation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AskReaderTest {

  private static final Set<String> X = Set.of("x");

  private static Refusal refusal(String ask, int degree, Set<String> letters) {
    return catchThrowableOfType(
            UnreadableException.class, () -> AskReader.read(ask, degree, letters))
        .refusal();
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = ';',
      textBlock =
          """
          sum of the squares of the roots            ; sum(r^2)
          Find the sum of the roots.                 ; sum(r)
          the product of the roots                   ; product(r)
          sum of the reciprocals                     ; sum(1/r)
          sum of the reciprocals of the roots        ; sum(1/r)
          sum of the squares of the reciprocals of the roots ; sum((1/r)^2)
          sum of the reciprocals of the squares      ; sum(1/r^2)
          sum of the cubes                           ; sum(r^3)
          sum of the fourth powers of the roots      ; sum(r^4)
          sum of the 20th powers                     ; sum(r^20)
          number of real roots                       ; real roots
          How many real roots are there?             ; real roots
          the discriminant                           ; discriminant
          discriminant of the cubic                  ; discriminant
          sum of the products of pairs of roots      ; sum(r*s)
          square of the sum of the roots             ; (sum(r))^2
          sum of the squares of the differences of the roots ; sum((r - s)^2)
          sum of the real roots                      ; sum(real roots)
          sum of the absolute values of the roots    ; sum(abs(r))
          Σ r^2                                      ; sum(r^2)
          sum of r^2                                 ; sum(r^2)
          the product over all the roots of (1 + r)  ; product(1 + r)
          polynomial with roots 2r - 1               ; polynomial with roots(2*r - 1)
          """)
  void phrasesAndFormulasAreRead(String text, String plain) throws UnreadableException {
    ReadAsk ask = AskReader.read(text, 3, X);
    assertThat(PlainWriter.write(ask.formula())).isEqualTo(plain);
    assertThat(FormulaReader.formula(plain)).isEqualTo(ask.formula());
    assertThat(ask.roots()).containsExactly("r", "s", "t");
  }

  @ParameterizedTest(name = "{0} of degree {1}")
  @CsvSource(
      delimiter = ';',
      textBlock =
          """
          r + s               ; 3 ; r s t
          a^2 + b^2           ; 3 ; a b c
          αβ + βγ + γα        ; 3 ; α β γ
          alpha + beta        ; 2 ; α β
          x_1^2 + x_2^2       ; 3 ; x_1 x_2 x_3
          x1 + x2             ; 2 ; x_1 x_2
          r_1 r_2             ; 2 ; r_1 r_2
          Σ r^2 s             ; 7 ; r s t u v w r_1
          S_20                ; 8 ; r_1 r_2 r_3 r_4 r_5 r_6 r_7 r_8
          p^2 + q^2           ; 2 ; p q
          x + r               ; 3 ; r s t
          """)
  void theAskDefinesTheNames(String text, int degree, String names) throws UnreadableException {
    assertThat(String.join(" ", AskReader.read(text, degree, X).roots())).isEqualTo(names);
  }

  @Test
  void lettersOfThePolynomialAreNotRoots() throws UnreadableException {
    assertThat(RootNames.usual(3, Set.of("x", "s"))).containsExactly("r", "t", "u");
    assertThat(RootNames.usual(6, Set.of("x", "s")))
        .containsExactly("r_1", "r_2", "r_3", "r_4", "r_5", "r_6");
    assertThat(refusal("a + b", 2, Set.of("x", "a")).text()).contains("The letter b");
  }

  @Test
  void anUnknownLetterIsNamedWithItsPlace() {
    Refusal refusal = refusal("r^2 + 3k", 3, X);
    assertThat(refusal.code()).isEqualTo("unknown-letter");
    assertThat(refusal.text())
        .isEqualTo("The letter k is neither a root (r, s, t) nor a letter of the polynomial.");
    assertThat(refusal.at()).isEqualTo(7);
  }

  @Test
  void aMistypedWordOfAPhraseIsNamedWithItsMend() {
    Refusal refusal = refusal("sum of the squares of the rots", 3, X);
    assertThat(refusal.code()).isEqualTo("unknown-phrase");
    assertThat(refusal.at()).isEqualTo(26);
    assertThat(refusal.mend()).isEqualTo("sum of the squares of the roots");
    assertThat(refusal("find the sum of the alphas", 3, X).at()).isEqualTo(20);
  }

  @Test
  void moreNamesThanRootsAreRefused() throws UnreadableException {
    assertThat(refusal("r + s + t", 2, X).code()).isEqualTo("too-many-names");
    assertThat(
            catchThrowableOfType(UnreadableException.class, () -> RootNames.given("a,b,c", 2, X))
                .refusal())
        .isEqualTo(
            new Refusal(
                "too-many-names",
                "The polynomial has 2 roots, but 3 names are given.",
                "a,b,c",
                4,
                "names for 2 roots",
                ""));
    assertThat(RootNames.given("a, b", 3, X)).containsExactly("a", "b", "r");
    assertThat(
            catchThrowableOfType(UnreadableException.class, () -> RootNames.given("a,a", 2, X))
                .refusal()
                .text())
        .isEqualTo("The name a stands twice.");
  }

  @Test
  void namesThatWereGivenAreTheOnlyOnes() throws UnreadableException {
    assertThat(AskReader.read("a b", List.of("a", "b"), X).formula())
        .isEqualTo(Formula.name("a").times(Formula.name("b")));
    assertThat(
            catchThrowableOfType(
                    UnreadableException.class, () -> AskReader.read("r + a", List.of("a", "b"), X))
                .refusal()
                .text())
        .startsWith("The letter r is neither a root (a, b)");
  }

  @Test
  void aDigitBehindARootThatLostItsHeightIsAPower() {
    assertThatThrownBy(() -> AskReader.read("r2+s2+t2", 3, Set.of("x")))
        .isInstanceOfSatisfying(
            UnreadableException.class,
            refused -> assertThat(refused.refusal().mend()).isEqualTo("r^2+s^2+t^2"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          \\sum_{cyc} a^2 b         | a^2*b + b^2*c + c^2*a
          \\sum_{cyc} \\frac{a}{b}  | a/b + b/c + c/a
          \\prod_{\\text{cyc}} (a+b) | (a + b)*(b + c)*(c + a)
          \\sum_{sym} a^2 b         | sum(a^2*b)
          \\sum_{sym} a^2           | 2*sum(a^2)
          \\sum_{sym} a b c         | 6*sum(a*b*c)
          """)
  void cyclicAndSymmetricSumsAreWrittenOut(String ask, String plain) throws UnreadableException {
    assertThat(AskReader.read(ask, 3, Set.of("x")).formula())
        .isEqualTo(FormulaReader.formula(plain));
  }

  @Test
  void theSingularOfWhatIsAddedUpIsReadToo() throws UnreadableException {
    assertThat(AskReader.read("sum of square of roots", 3, Set.of("x")).formula())
        .isEqualTo(FormulaReader.formula("sum(r^2)"));
  }
}
