package rootwright.working.kind;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigInteger;
import java.util.Arrays;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.real.RealRootIsolation;
import rootwright.working.answer.Answer;
import rootwright.working.solve.Solution;

class RealRootsKindTest {

  private static final long SEED = Long.getLong("rootwright.seed", 20_261_127L);

  @ParameterizedTest(name = "{0}")
  @CsvFileSource(resources = "real-roots.csv", delimiter = ';', numLinesToSkip = 1)
  void publishedCountsComeOutByTheRoutesThatAreMadeForThem(
      String source, String coefficients, int count, String routes) {
    Solution solution = Solved.of(coefficients, "real roots");
    assertThat(solution.answer()).as(source).isEqualTo(new Answer.Count(BigInteger.valueOf(count)));
    assertThat(Solved.routes(solution)).containsExactlyInAnyOrder(routes.split(" "));
  }

  @Test
  void theRuleBoundsFromAboveAndTheValuesFromBelow() {
    assertThat(Solved.lines(Solved.of("1 -1 -2 1", "real roots"), "sign-rule"))
        .containsExactly(
            "P(x) = x^3 - x^2 - 2*x + 1",
            "+ - - +",
            "P(0) = 1",
            "P(1) = 1 - 1 - 2 + 1 = -1",
            "P(2) = 8 - 4 - 4 + 1 = 1",
            "a root in each of (0, 1), (1, 2)",
            "P(-x) = -x^3 - x^2 + 2*x + 1",
            "- - + +",
            "2 + 1 = 3");
  }

  @Test
  void sturmLosesAsManyChangesAsThereAreRoots() {
    assertThat(Solved.lines(Solved.of("1 0 -3 1", "real roots"), "sturm"))
        .containsExactly(
            "P'(x) = 3*(x^2 - 1)",
            "x^3 - 3*x + 1 = x*(x^2 - 1) - (2*x - 1)",
            "x^2 - 1 = (1/2*x + 1/4)*(2*x - 1) - 3/4",
            "- + - +",
            "+ + + +",
            "3 distinct real roots");
  }

  /** x⁴ − 2x³ + 3x² − 2x + 2 = (x² + 1)(x² − 2x + 2): four changes of sign and no real root. */
  @Test
  void whereTheRuleLeavesTheNumberOpenItSaysSo() {
    Solution solution = Solved.of("1 -2 3 -2 2", "real roots");
    assertThat(Solved.routes(solution)).containsExactly("sturm");
    assertThat(solution.declined())
        .anySatisfy(route -> assertThat(route.why()).contains("4 or 2 or 0 positive roots"));
  }

  /** Bisection is another way; Kinds throws when a route ends elsewhere. */
  @Test
  void bisectionCountsTheSameOnAnyPolynomial() {
    SplittableRandom random = new SplittableRandom(SEED);
    for (int k = 0; k < 40; k++) {
      int n = random.nextInt(1, 7);
      long[] c = new long[n + 1];
      Arrays.setAll(c, i -> random.nextInt(-6, 7));
      c[0] = random.nextBoolean() ? 1 : -2;
      Polynomial p = Polynomial.ofDescending(c);
      if (random.nextInt(4) == 0) {
        p = p.times(p);
      }
      var ascending = p.ascending();
      StringBuilder text = new StringBuilder();
      for (int i = ascending.size() - 1; i >= 0; i--) {
        text.append(ascending.get(i)).append(' ');
      }
      String typed = ascending.size() == 2 ? "0 " + text : text.toString();
      assertThat(Solved.of(typed.trim(), "real roots").answer())
          .as("seed %d: %s", SEED, typed)
          .isEqualTo(new Answer.Count(BigInteger.valueOf(RealRootIsolation.of(p).size())));
    }
  }
}
