package rootwright.working.agreement;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import rootwright.algebra.factor.RationalRoots;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.working.Stated;

/**
 * Partial fractions over the roots, against matrices in Hipparchus: the numerators are the
 * eigenvalues of F(C)·P′(C)⁻¹, where C is the companion matrix of P.
 */
class FractionsAgreeWithMatricesTest {

  private static final long SEED = Long.getLong("rootwright.seed", 5_126L);
  private static final String FRACTIONS = " if (x + 2)/P(x) = A/(x-r) + B/(x-s) + C/(x-t)";
  private final SplittableRandom random = new SplittableRandom(SEED);

  /** A cubic without a root at −2 and without a rational root, so that no sum is undefined. */
  private long[] cubic() {
    while (true) {
      long[] p = {
        random.nextLong(1, 3),
        random.nextLong(-4, 5),
        random.nextLong(-4, 5),
        5 - 10 * random.nextLong(0, 2)
      };
      Polynomial polynomial = Polynomial.ofDescending(p);
      boolean rational = RationalRoots.of(polynomial).stream().findAny().isPresent();
      if (!rational && polynomial.isSquarefree()) {
        return p;
      }
    }
  }

  private static Companion numerators(long... p) {
    Companion c = Companion.of(p);
    return c.image(1, 2).times(c.image(3 * p[0], 2 * p[1], p[2]).inverse());
  }

  @Test
  void symmetricExpressionsInTheNumeratorsAreTracesAndDeterminants() {
    for (int sample = 0; sample < 8; sample++) {
      long[] p = cubic();
      Companion numerators = numerators(p);
      String polynomial = Polynomial.ofDescending(p).toString();
      String message = polynomial + ", seed " + SEED;
      assertThat(Stated.text(polynomial, "A + B + C" + FRACTIONS))
          .as(message)
          .isEqualTo(numerators.trace().toString());
      assertThat(Stated.text(polynomial, "A B C" + FRACTIONS))
          .as(message)
          .isEqualTo(numerators.determinant().toString());
      assertThat(Stated.text(polynomial, "1/A + 1/B + 1/C" + FRACTIONS))
          .as(message)
          .isEqualTo(numerators.inverse().trace().toString());
      assertThat(Stated.text(polynomial, "A^2 + B^2 + C^2" + FRACTIONS))
          .as(message)
          .isEqualTo(numerators.power(2).trace().toString());
    }
  }

  @Test
  void sumsOverTheDerivativeAreTraces() {
    for (int sample = 0; sample < 12; sample++) {
      long[] p = cubic();
      Companion c = Companion.of(p);
      Companion derivative = c.image(3 * p[0], 2 * p[1], p[2]);
      int k = random.nextInt(0, 7);
      assertThat(Stated.text(Polynomial.ofDescending(p).toString(), "Σ r^%d/P'(r)".formatted(k)))
          .as("%s, k = %d, seed %d", Polynomial.ofDescending(p), k, SEED)
          .isEqualTo(c.power(k).times(derivative.inverse()).trace().toString());
    }
  }

  /** Where P′ has rational zeros, r²/P′(r) has the whole part 1/6, which is met three times. */
  @Test
  void aWholePartThatIsANumberIsCountedOnceForEveryRoot() {
    Companion c = Companion.of(2, 1, -4, 5);
    assertThat(Stated.text("2x^3 + x^2 - 4x + 5", "Σ r^2/P'(r)"))
        .isEqualTo("1/2")
        .isEqualTo(c.power(2).times(c.image(6, 2, -4).inverse()).trace().toString());
  }

  @Test
  void sumsOfFractionsInOneRootAreTraces() {
    for (int sample = 0; sample < 12; sample++) {
      long[] p = cubic();
      Companion c = Companion.of(p);
      assertThat(Stated.text(Polynomial.ofDescending(p).toString(), "Σ (r^2 - r)/(r^2 + 2r + 2)"))
          .as("%s, seed %d", Polynomial.ofDescending(p), SEED)
          .isEqualTo(c.image(1, -1, 0).times(c.image(1, 2, 2).inverse()).trace().toString());
    }
  }
}
