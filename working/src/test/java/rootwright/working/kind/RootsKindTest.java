package rootwright.working.kind;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import rootwright.algebra.notation.PlainWriter;
import rootwright.working.solve.Solution;

class RootsKindTest {

  @ParameterizedTest(name = "{0}")
  @CsvFileSource(resources = "roots.csv", delimiter = ';', numLinesToSkip = 1)
  void publishedRootsComeOutByTheRoutesThatAreMadeForThem(
      String source, String coefficients, String roots, String routes) {
    Solution solution = Solved.of(coefficients, "roots");
    assertThat(
            solution.answer().alternatives().stream()
                .map(PlainWriter::write)
                .collect(Collectors.joining(" or ")))
        .as(source)
        .isEqualTo(roots);
    assertThat(Solved.routes(solution)).containsExactlyInAnyOrder(routes.split(" "));
  }

  @Test
  void whatIsLeftAfterTheRationalRootsIsSolvedByTheFormula() {
    assertThat(Solved.lines(Solved.of("1 -3 -6 -20", "roots"), "rational-root"))
        .containsExactly(
            "P(5) = 5^3 - 3*5^2 - 6*5 - 20 = 0",
            "P(x) = (x - 5)*(x^2 + 2*x + 4)",
            "2^2 - 4*4 = -12",
            "x^2 + 2*x + 4 = (x - (-1 - sqrt(3)*i))*(x - (-1 + sqrt(3)*i))");
  }

  @Test
  void aPolynomialThatReadsTheSameBackwardsIsSolvedByPairs() {
    assertThat(Solved.lines(Solved.of("2 1 -11 1 2", "roots"), "substitute"))
        .contains("2*y^2 + y - 15 = 2*(y + 3)*(y - 5/2)");
  }

  @Test
  void anIrreducibleCubicHasNoRoute() {
    Solution solution = Solved.of("1 -3 0 1", "roots");
    assertThat(solution.routes()).isEmpty();
    assertThat(solution.declined())
        .anySatisfy(route -> assertThat(route.why()).contains("no rational root"));
  }
}
