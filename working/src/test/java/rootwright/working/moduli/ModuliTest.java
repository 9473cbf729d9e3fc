package rootwright.working.moduli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.hipparchus.analysis.solvers.LaguerreSolver;
import org.hipparchus.complex.Complex;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rootwright.algebra.notation.UnreadableException;
import rootwright.algebra.value.ExactValue;
import rootwright.working.answer.Answer;
import rootwright.working.letters.Lettered;
import rootwright.working.solve.Solution;

/** Absolute values of roots and of expressions in them. */
class ModuliTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        // (r − s)² = S² − 4P by hand; the discriminant 49 of x³ − 7x + 7 (Dickson 1922, section
        // 46).
        "x^2-5x+3; |r-s|; sqrt(13)",
        "x^2-8x+13; positive difference of the roots; 2*sqrt(3)",
        "x^2-5x+3; |r^2-s^2|; 5*sqrt(13)",
        "x^2-5x+3; |1/r-1/s|; sqrt(13)/3",
        "x^2-5x+3; 2|r-s|; 2*sqrt(13)",
        "x^3-7x+7; |(r-s)(s-t)(t-r)|; 7",
        // Conjugate roots: |z|² is their product.
        "x^2-2x+5; |r-s|; 4",
        "x^2-2x+5; |r|; sqrt(5)",
        "x^2-2x+5; |r+1|; 2*sqrt(2)",
        "x^4+x^3+6x^2+x+35; Σ |r|^2; 24",
        "(x-1)^2(x^2+4); Σ |r|^3; 18",
        // Hardy, A Course of Pure Mathematics, 3rd edition 1921, chapter III, miscellaneous example
        // 9: for az² + 2bz + c the sum is (|−b + √(ac)| + |−b − √(ac)|)/|a|.
        "x^2-2x+5; |r|+|s|; 2*sqrt(5)",
        "x^2-x-3; |r|+|s|; sqrt(13)",
        "x^2-5x+3; |r|+|s|; 5",
        // Signs by Sturm's theorem; numbers of their own by elimination.
        "x^3-3x+1; Σ |r|; root(x^3 - 12*x - 8, 3)",
        "x^3-3x+1; Σ |r|^2; 6",
        "x^3+6x^2+9x+1; sum of the absolute values of the roots; 6",
        "x^3-x-1; |r|^2+|s|^2+|t|^2; root(x^3 - 3*x - 25, 1)",
        "x^3-2x+5; Π |r|; 5",
      })
  void absoluteValuesAreExact(String polynomial, String find, String answer)
      throws UnreadableException {
    Solution solution = Lettered.work(polynomial, find);
    assertThat(Lettered.text(solution)).isEqualTo(answer);
    assertThat(solution.routes()).isNotEmpty();
    assertThat(solution.second().agrees()).isTrue();
  }

  @Test
  void barsForgottenIsASlipAndComplexRootsAreSaid() throws UnreadableException {
    Solution solution = Lettered.work("x^4+x^3+6x^2+x+35", "Σ |r|^2");
    assertThat(Lettered.slips(solution)).contains("bars-forgotten -11");
    assertThat(Lettered.codes(solution)).contains("not-real");
    assertThat(solution.statement()).contains("complex roots");
  }

  @Test
  void anAbsoluteValueThatHangsOnTheNamingHasNoAnswer() throws UnreadableException {
    Solution solution = Lettered.work("x^2-5x+3", "|r|");
    assertThat(solution.answer()).isInstanceOf(Answer.None.class);
    assertThat(Lettered.codes(solution)).containsExactly("order-open");
  }

  @Test
  void sumsAgreeWithHardysFormula() throws UnreadableException {
    long seed = Long.getLong("rootwright.seed", 20_268L);
    SplittableRandom random = new SplittableRandom(seed);
    for (int sample = 0; sample < 25; sample++) {
      int a = random.nextInt(1, 4);
      int b = random.nextInt(-6, 7);
      int c = random.nextInt(-9, 10);
      if (c == 0) {
        continue;
      }
      Complex root = new Complex(a * c).sqrt();
      double hardy = (new Complex(-b).add(root).norm() + new Complex(-b).subtract(root).norm()) / a;
      assertThat(value("%d x^2 + (%d)x + (%d)".formatted(a, 2 * b, c), "|r|+|s|"))
          .as("a = %d, b = %d, c = %d, seed %d", a, b, c, seed)
          .isCloseTo(hardy, within(1e-9));
    }
  }

  @Test
  void sumsOfSquaresAgreeWithHipparchus() throws UnreadableException {
    long seed = Long.getLong("rootwright.seed", 20_269L);
    SplittableRandom random = new SplittableRandom(seed);
    for (int sample = 0; sample < 15; sample++) {
      int p = random.nextInt(-3, 4);
      int q = random.nextInt(1, 8);
      int r = random.nextInt(-3, 4);
      int s = random.nextInt(-7, 8);
      double[] ascending = {
        (double) q * s, (double) p * s + (double) q * r, s + (double) p * r + q, p + (double) r, 1
      };
      double sum = 0;
      for (Complex root : new LaguerreSolver().solveAllComplex(ascending, 0.3)) {
        sum += root.norm() * root.norm();
      }
      assertThat(value("(x^2 + (%d)x + (%d))(x^2 + (%d)x + (%d))".formatted(p, q, r, s), "Σ |r|^2"))
          .as("%d %d %d %d, seed %d", p, q, r, s, seed)
          .isCloseTo(sum, within(1e-4));
    }
  }

  private static double value(String polynomial, String find) throws UnreadableException {
    ExactValue value = ((Answer.Exact) Lettered.work(polynomial, find).answer()).value();
    var centre = value.enclosure(20).real().centre().toRational();
    return centre.numerator().doubleValue() / centre.denominator().doubleValue();
  }
}
