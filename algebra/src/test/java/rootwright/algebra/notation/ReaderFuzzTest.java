package rootwright.algebra.notation;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Set;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Whatever is typed, it is read or refused; nothing else comes out. */
class ReaderFuzzTest {

  private static final String[] VALID = {
    "3x^3 - 5x + 7",
    "\\frac{1}{r-3}+\\sqrt[3]{s}",
    "Σ r^2 s mod 7",
    "(x−1)²(x+4)",
    "polynomial with roots (r+s)",
    "S_(10^18) mod 10^9+7",
    "6 3/4 + x_{12}",
    "1 0 -4 1",
    "P'(3)/P(3)",
    "|r-s| <= 2√3",
    "$x^{10}$, r_1",
    "resolvent(rs+tu)",
    "sum of the squares",
    "\\sum_{i=1}^{n} r^2",
    "2.5x^2 - ½x"
  };
  private static final String PIECES =
      "0123456789xyzrstαβ+-*/^_=<>()[]{}|,. '\\$√Σ²₁⁻½±≤\u2062\u0000\n\uD83D\uDE00\u0301#%&;:!?\"";

  @Test
  void randomCharactersAreReadOrRefused() {
    long seed = RandomFormulas.seed(71);
    SplittableRandom random = new SplittableRandom(seed);
    for (int sample = 0; sample < 2_500; sample++) {
      StringBuilder text = new StringBuilder();
      int length = random.nextInt(30);
      for (int k = 0; k < length; k++) {
        text.append(
            random.nextInt(20) == 0
                ? (char) random.nextInt(0x10000)
                : PIECES.charAt(random.nextInt(PIECES.length())));
      }
      readOrRefuse(text.toString(), seed);
    }
  }

  @Test
  void mutatedFormulasAreReadOrRefused() {
    long seed = RandomFormulas.seed(72);
    SplittableRandom random = new SplittableRandom(seed);
    for (int sample = 0; sample < 2_500; sample++) {
      StringBuilder text = new StringBuilder(VALID[random.nextInt(VALID.length)]);
      int changes = 1 + random.nextInt(4);
      for (int k = 0; k < changes && !text.isEmpty(); k++) {
        int at = random.nextInt(text.length());
        switch (random.nextInt(4)) {
          case 0 -> text.deleteCharAt(at);
          case 1 -> text.insert(at, PIECES.charAt(random.nextInt(PIECES.length())));
          case 2 -> text.insert(at, VALID[random.nextInt(VALID.length)]);
          default -> text.setCharAt(at, PIECES.charAt(random.nextInt(PIECES.length())));
        }
      }
      readOrRefuse(text.toString(), seed);
    }
  }

  private static void readOrRefuse(String text, long seed) {
    String shown = "seed %d, text “%s”".formatted(seed, text);
    try {
      Formula formula = FormulaReader.formula(text);
      assertThat(NormalForm.of(formula)).as(shown).isEqualTo(formula);
      PlainWriter.write(formula);
    } catch (UnreadableException unreadable) {
      check(unreadable.refusal(), text, shown);
    } catch (RuntimeException | StackOverflowError error) {
      throw new AssertionError(shown, error);
    }
    try {
      StatedPolynomial stated = PolynomialReader.read(text);
      assertThat(stated.polynomial().degree()).as(shown).isLessThanOrEqualTo(Limits.DEGREE);
    } catch (UnreadableException unreadable) {
      check(unreadable.refusal(), text, shown);
    } catch (RuntimeException | StackOverflowError error) {
      throw new AssertionError(shown, error);
    }
    try {
      AskReader.read(text, 3, Set.of("x"));
    } catch (UnreadableException unreadable) {
      check(unreadable.refusal(), text, shown);
    } catch (RuntimeException | StackOverflowError error) {
      throw new AssertionError(shown, error);
    }
  }

  private static void check(Refusal refusal, String text, String shown) {
    assertThat(refusal.text()).as(shown).isNotBlank();
    assertThat(refusal.at()).as(shown).isBetween(0, text.codePointCount(0, text.length()));
    assertThat(ErrorCaret.write(refusal)).as(shown).startsWith("error: ");
    assertThat(ErrorCaret.write(refusal).chars().filter(c -> c < ' ' && c != '\n' && c != '\r'))
        .as(shown)
        .isEmpty();
  }
}
