package rootwright.working.kind;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.assertj.core.data.Offset;
import org.hipparchus.analysis.solvers.LaguerreSolver;
import org.hipparchus.complex.Complex;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import rootwright.algebra.enclosure.RealBall;
import rootwright.algebra.notation.PlainWriter;
import rootwright.working.answer.Answer;
import rootwright.working.solve.Solution;

class RealRootAsksTest {

  private static final long SEED = Long.getLong("rootwright.seed", 20_261_130L);

  private static String text(Solution solution) {
    return PlainWriter.write(solution.answer().formula());
  }

  @ParameterizedTest(name = "{0}, {2}")
  @CsvFileSource(resources = "real-root-asks.csv", delimiter = ';', numLinesToSkip = 1)
  void publishedRootsGiveTheAnswer(String source, String coefficients, String ask, String answer) {
    assertThat(text(Solved.of(coefficients, ask))).as(source).isEqualTo(answer);
  }

  @Test
  void onlyThePairWhoseSumIsAtLeastTwoIsReal() {
    Solution solution = Solved.of("1 -6 7 -6 1", "sum of the real roots");
    assertThat(text(solution)).isEqualTo("5");
    assertThat(Solved.lines(solution, "real-pairs"))
        .contains("5^2 - 4 = 21", "1^2 - 4 = -3", "this pair is left out");
    assertThat(solution.slips())
        .anySatisfy(
            slip -> {
              assertThat(slip.name()).isEqualTo("all-roots");
              assertThat(PlainWriter.write(slip.value().formula())).isEqualTo("6");
            });
    assertThat(text(Solved.of("2 -5 1 -5 2", "sum of the real roots"))).isEqualTo("3");
  }

  /** u² − 5u + 3 = 0, and only the larger u is at least 2 in absolute value. */
  @Test
  void aPairMayAddAnIrrationalNumber() {
    Solution solution = Solved.of("1 -5 5 -5 1", "sum of the real roots");
    assertThat(text(solution)).isEqualTo("(5 + sqrt(13))/2");
    assertThat(Solved.routes(solution)).containsExactly("real-pairs");
  }

  @Test
  void aFailedInequalityOfNewtonShowsRootsThatAreNotReal() {
    Solution solution = Solved.of("1 -4 7 1 -3", "are all roots real?");
    assertThat(solution.answer()).isEqualTo(new Answer.Truth(false));
    assertThat(Solved.lines(solution, "newton-inequality"))
        .containsExactly(
            "e_1 = r + s + t + u = -(-4) = 4",
            "e_2 = r*s + r*t + r*u + s*t + s*u + t*u = 7",
            "e_1^2 = 4^2 = 16",
            "8/3*e_2 = 56/3",
            "16 < 56/3");
    assertThat(solution.slips())
        .extracting(Solution.WrongTurning::name)
        .contains("squares-positive");
  }

  @Test
  void theRuleOfSignsIsABoundAndTakingItForACountIsASlip() {
    Solution solution = Solved.of("1 -2 3 -2 2", "positive roots");
    assertThat(text(solution)).isEqualTo("0");
    assertThat(solution.slips())
        .extracting(slip -> PlainWriter.write(slip.value().formula()))
        .contains("4");
  }

  @Test
  void zeroIsNeitherPositiveNorNegative() {
    assertThat(text(Solved.of("1 0 -4 0", "positive roots"))).isEqualTo("1");
    assertThat(text(Solved.of("1 0 -4 0", "negative roots"))).isEqualTo("1");
    assertThat(text(Solved.of("1 0 0", "positive roots"))).isEqualTo("0");
  }

  @Test
  void theNumericalRootsOfAnotherLibraryAddUpToTheSame() {
    SplittableRandom random = new SplittableRandom(SEED);
    for (int k = 0; k < 25; k++) {
      int n = random.nextInt(2, 6);
      double[] ascending = new double[n + 1];
      Arrays.setAll(ascending, i -> random.nextInt(-6, 7));
      ascending[n] = random.nextInt(1, 3);
      StringBuilder text = new StringBuilder();
      for (int i = n; i >= 0; i--) {
        text.append((int) ascending[i]).append(' ');
      }
      Solution solution = Solved.of(text.toString(), "sum of the real roots");
      if (!(solution.answer() instanceof Answer.Exact exact)
          || !Solved.polynomial(text.toString()).isSquarefree()) {
        continue;
      }
      double sum = 0;
      for (Complex root : new LaguerreSolver(1e-9).solveAllComplex(ascending, 0.3)) {
        sum += Math.abs(root.getImaginary()) < 1e-4 ? root.getReal() : 0;
      }
      RealBall ball = exact.value().enclosure(20).real();
      assertThat(
              ball.centre().toRational().numerator().doubleValue()
                  / ball.centre().toRational().denominator().doubleValue())
          .as("seed %d: %s", SEED, text)
          .isCloseTo(sum, Offset.offset(1e-3));
    }
  }
}
