package rootwright.working.pasted;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rootwright.algebra.notation.UnreadableException;
import rootwright.working.problem.Statement;

/** The sentences are worded as on contest sheets; the numbers are ours. */
class PastedProblemTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          Let r, s, t be the roots of x^3-6x^2+5x-1=0. Find r^2+s^2+t^2. | x^3-6x^2+5x-1=0 | r^2+s^2+t^2 | r s t
          Let $r$, $s$, and $t$ be the roots of $x^3-6x^2+5x-1=0$. Find $r^2+s^2+t^2$. | x^3-6x^2+5x-1=0 | r^2+s^2+t^2 | r s t
          The roots of x³ − 4x² + 2x + 6 = 0 are α, β, γ. Find the value of 1/α + 1/β + 1/γ. | x³ − 4x² + 2x + 6 = 0 | 1/α + 1/β + 1/γ | α β γ
          If α and β are the roots of the equation 2x^2 - 7x + 4 = 0, find α^3 + β^3. | 2x^2 - 7x + 4 = 0 | α^3 + β^3 | α β
          Given that a, b and c are the zeros of the polynomial P(x) = x^3 - 2x + 7, compute (a+1)(b+1)(c+1). | P(x) = x^3 - 2x + 7 | (a+1)(b+1)(c+1) | a b c
          The cubic 2x^3 - 3x + 5 has roots p, q, r. Evaluate p^4 + q^4 + r^4. | 2x^3 - 3x + 5 | p^4 + q^4 + r^4 | p q r
          The equation x^4 - x - 1 = 0 has four complex roots a, b, c, d. What is a^4+b^4+c^4+d^4? | x^4 - x - 1 = 0 | a^4+b^4+c^4+d^4 | a b c d
          Find r^2 + s^2 + t^2 if r, s, t are the roots of x^3 - 5x + 3 = 0. | x^3 - 5x + 3 = 0 | r^2 + s^2 + t^2 | r s t
          Compute α² + β², where α and β are the roots of 3x² − x + 5 = 0. | 3x² − x + 5 = 0 | α² + β² | α β
          Find the sum of the squares of the roots of x^3 - 5x + 3 = 0. | x^3 - 5x + 3 = 0 | the sum of the squares of the roots | ''
          What is the product of the reciprocals of the roots of the equation x^4 - 3x + 2.5 = 0? | x^4 - 3x + 2.5 = 0 | the product of the reciprocals of the roots | ''
          How many real roots does the equation x^5 - 5x + 3 = 0 have? | x^5 - 5x + 3 = 0 | How many real roots | ''
          Find the discriminant of 5x^3 - 7x + 2. | 5x^3 - 7x + 2 | the discriminant | ''
          Let P(x) = x^3 - 2x + 5. Compute S_4. | P(x) = x^3 - 2x + 5 | S_4 | ''
          For the equation x^3 - 2x + 5 = 0, find r^2 + s^2 + t^2. | x^3 - 2x + 5 = 0 | r^2 + s^2 + t^2 | ''
          Let r, s, t be the roots of x^3 + px + q = 0. Express r^4+s^4+t^4 in terms of p and q. | x^3 + px + q = 0 | r^4+s^4+t^4 | r s t
          Find all values of k for which the roots of x^3 - 12x^2 + kx - 28 = 0 are in arithmetic progression. | x^3 - 12x^2 + kx - 28 = 0 | k if roots in arithmetic progression | ''
          The roots of x^3 - 12x^2 + kx - 28 = 0 are in arithmetic progression. Find k. | x^3 - 12x^2 + kx - 28 = 0 | k if roots in arithmetic progression | ''
          Find the values of k for which x^3 - 12x + k = 0 has a double root. | x^3 - 12x + k = 0 | k if a double root | ''
          The sum of the squares of the roots of x^2 + kx + 6 = 0 is 13. Find k. | x^2 + kx + 6 = 0 | k if The sum of the squares of the roots is 13 | ''
          Find all real k such that x^3-3x+k=0 has three real roots. | x^3-3x+k=0 | k if three real roots | ''
          Let a, b, c be the roots of x^3 - x^2 + 2x - 5 = 0. Find a monic cubic whose roots are a+1, b+1, c+1. | x^3 - x^2 + 2x - 5 = 0 | polynomial with roots a+1, b+1, c+1 | a b c
          Let r be a root of x^2-3x-5=0. Find r^5. | x^2-3x-5=0 | r^5 | r
          Find the polynomial whose roots are the squares of the roots of x^3-2x+5=0. | x^3-2x+5=0 | polynomial with roots the squares of the roots | ''
          Let x_1, x_2, x_3 be the roots of x^3 - 3x + 1 = 0. Find x_1^2 + x_2^2 + x_3^2. | x^3 - 3x + 1 = 0 | x_1^2 + x_2^2 + x_3^2 | x_1 x_2 x_3
          """)
  void aSentenceIsCutIntoPolynomialAskAndNames(
      String sentence, String polynomial, String find, String names) throws UnreadableException {
    List<String> roots = names.isBlank() ? List.of() : List.of(names.split(" "));

    Statement plain = PastedProblem.plain(Statement.of("", sentence));

    assertThat(plain.polynomial()).isEqualTo(polynomial);
    assertThat(plain.find()).isEqualTo(find);
    assertThat(plain.roots()).isEqualTo(roots);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          If x + y = 3 and xy = 1, find x^5 + y^5. | x^5 + y^5 if x + y = 3 and xy = 1
          x+y+z=1, xy+yz+zx=-4, xyz=2, find x^3+y^3+z^3 | x^3+y^3+z^3 if x+y+z=1, xy+yz+zx=-4, xyz=2
          Real numbers x, y, z satisfy x + y + z = 7 and x^2 + y^2 + z^2 = 19. Find xy + yz + zx. | xy + yz + zx if x + y + z = 7 and x^2 + y^2 + z^2 = 19, x, y, z real
          If x + 1/x = 3, find x^5 + 1/x^5. | x^5 + 1/x^5 if x + 1/x = 3
          """)
  void aSentenceWithoutRootsGivesConditions(String sentence, String find)
      throws UnreadableException {
    Statement plain = PastedProblem.plain(Statement.of("", sentence));

    assertThat(plain.polynomial()).isEmpty();
    assertThat(plain.find()).isEqualTo(find);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          find the value of r^2+s^2+t^2 | r^2+s^2+t^2
          Compute r^2+s^2+t^2. | r^2+s^2+t^2
          1/r + 1/s + 1/t = ? | 1/r + 1/s + 1/t
          r^2 if 3 | r^2 if 3
          sum of the squares of the roots | sum of the squares of the roots
          """)
  void anAskLosesTheWordsThatOnlyAsk(String typed, String find) throws UnreadableException {
    assertThat(PastedProblem.plain(Statement.of("x^3 - 2x + 5", typed)).find()).isEqualTo(find);
  }

  @Test
  void theSameSentenceInBothPlacesOrBesideItsPolynomialIsRead() throws UnreadableException {
    String sentence = "Let r, s be the roots of x^2-5x+3=0. Find r^3+s^3.";

    assertThat(PastedProblem.plain(Statement.of(sentence, "")).find()).isEqualTo("r^3+s^3");
    assertThat(PastedProblem.plain(Statement.of("x^2 - 5x + 3", sentence)).find())
        .isEqualTo("r^3+s^3");
  }

  @Test
  void anotherPolynomialBesideTheSentenceIsRefused() {
    Statement both = Statement.of("x^2 - 5x + 4", "Let r, s be the roots of x^2-5x+3=0. Find r^3.");

    assertThatThrownBy(() -> PastedProblem.plain(both))
        .hasMessageContaining("polynomial of its own");
  }

  @Test
  void rootsThatAreCalledRealAndNamedAreRefusedSinceNothingMakesThemReal() {
    Statement real =
        Statement.of("", "Let r, s be the real roots of x^4 - 5x + 3 = 0. Find r^3 + s^3.");

    assertThatThrownBy(() -> PastedProblem.plain(real)).hasMessageContaining("real");
  }
}
