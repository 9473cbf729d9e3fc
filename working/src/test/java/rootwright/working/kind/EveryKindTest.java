package rootwright.working.kind;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import rootwright.working.route.Working;
import rootwright.working.solve.Solution;

/**
 * Asks that begin with a word, on polynomials of every shape their routes are made for. Working one
 * throws when a check refutes a line or a route ends in another answer.
 */
class EveryKindTest {

  private static final long SEED = Long.getLong("rootwright.seed", 20_261_128L);
  private static final int PROBLEMS = 160;

  private static final List<String> ASKS =
      List.of(
          "discriminant",
          "roots",
          "real roots",
          "S_9 mod 10",
          "S_13 mod 6",
          "S_500 mod 3",
          "sum r^2 mod 5",
          "polynomial with roots (3r+2)",
          "polynomial with roots (2-r)",
          "polynomial with roots (r^2)",
          "polynomial with roots (r^2-3r)",
          "polynomial with roots (1/r)",
          "polynomial with roots (r+1/r)",
          "polynomial with roots ((2r+1)/(r-1))",
          "polynomial with roots (r+s)",
          "polynomial with roots (r s)",
          "polynomial with roots (r/s)",
          "polynomial with roots ((r-s)^2)",
          "polynomial with roots (1/(r+s))",
          "resolvent(r s + 1)");

  private static String coefficients(SplittableRandom random) {
    int n = random.nextInt(2, 5);
    long[] c = new long[n + 1];
    Arrays.setAll(c, k -> random.nextInt(-5, 6));
    c[0] = random.nextInt(3) == 0 ? random.nextInt(-3, 0) : random.nextInt(1, 3);
    switch (random.nextInt(5)) {
      case 0 -> Arrays.setAll(c, k -> k <= n / 2 ? c[k] : c[n - k]);
      case 1 -> Arrays.setAll(c, k -> k % 2 == 0 ? c[k] : 0);
      case 2 -> Arrays.setAll(c, k -> k > 0 && k < n - 1 ? 0 : c[k]);
      default -> {
        // as it is
      }
    }
    return String.join(" ", Arrays.stream(c).mapToObj(Long::toString).toList());
  }

  @Test
  void everyWorkingOnAnyPolynomialIsConfirmedAndEndsInTheAnswer() {
    SplittableRandom random = new SplittableRandom(SEED);
    Set<String> worked = new HashSet<>();
    for (int k = 0; k < PROBLEMS; k++) {
      String polynomial = coefficients(random);
      String ask = ASKS.get(k % ASKS.size());
      try {
        Solution solution = Solved.of(polynomial, ask);
        for (Working working : solution.routes()) {
          worked.add(working.route());
          assertThat(working.answer()).isEqualTo(solution.answer());
          assertThat(working.steps()).allSatisfy(step -> assertThat(step.reason()).isNotBlank());
        }
        assertThat(solution.declined()).allSatisfy(route -> assertThat(route.why()).isNotBlank());
      } catch (RuntimeException broken) {
        throw new AssertionError("seed %d: %s; %s".formatted(SEED, polynomial, ask), broken);
      }
    }
    assertThat(worked)
        .as("seed %d: routes that went through", SEED)
        .contains(
            "invert-map",
            "square-roots",
            "sums-of-new-roots",
            "discriminant-formula",
            "derivative-at-roots",
            "divide-down",
            "sign-rule",
            "sturm",
            "rational-root",
            "residue-of-value",
            "residue-period",
            "residue-squaring");
  }
}
