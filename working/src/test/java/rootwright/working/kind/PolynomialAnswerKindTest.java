package rootwright.working.kind;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import rootwright.algebra.notation.PlainWriter;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.working.answer.Answer;
import rootwright.working.solve.Solution;

class PolynomialAnswerKindTest {

  private static final long SEED = Long.getLong("rootwright.seed", 20_261_125L);

  private static Solution images(String coefficients, String map) {
    return Solved.of(coefficients, "polynomial with roots (" + map + ")");
  }

  @ParameterizedTest(name = "{0}: {2}")
  @CsvFileSource(resources = "images.csv", delimiter = ';', numLinesToSkip = 1)
  void publishedImagesComeOutByTheRoutesThatAreMadeForThem(
      String source, String coefficients, String map, String image, String routes) {
    Solution solution = images(coefficients, map);
    Polynomial expected = Solved.polynomial(image).primitive();
    assertThat(solution.answer()).as(source).isEqualTo(new Answer.PolynomialIn(expected, "x"));
    assertThat(Solved.routes(solution))
        .contains(routes == null ? new String[0] : routes.split(" "));
  }

  @Test
  void theOldRootIsWrittenByTheNewOneAndPutIntoP() {
    assertThat(Solved.lines(images("1 -2 -3 5", "2r-1"), "invert-map"))
        .containsExactly(
            "y = 2*r - 1",
            "r = (y + 1)/2",
            "8*P((y + 1)/2) = (y + 1)^3 - 4*(y + 1)^2 - 12*(y + 1) + 40 = y^3 - y^2 - 17*y + 25",
            "x^3 - x^2 - 17*x + 25 = 0");
  }

  @Test
  void twoRootsOfThreeAreReplacedByTheThird() {
    assertThat(Solved.lines(images("1 -2 -3 5", "r+s"), "invert-map"))
        .contains("r + s = -t + 2", "y = -t + 2", "t = -y + 2");
  }

  @Test
  void theMapPutInInsteadOfItsInverseIsShownAsASlip() {
    assertThat(images("1 -2 -3 5", "2r-1").slips())
        .anySatisfy(
            slip -> {
              assertThat(slip.name()).isEqualTo("transform-backwards");
              assertThat(PlainWriter.write(slip.value().formula()))
                  .isEqualTo("8*x^3 - 20*x^2 + 8*x + 5");
            });
  }

  @Test
  void squaredCoefficientsAreShownAsASlip() {
    assertThat(images("1 -2 -3 5", "r^2").slips())
        .anySatisfy(
            slip -> {
              assertThat(slip.name()).isEqualTo("coefficients-squared");
              assertThat(PlainWriter.write(slip.value().formula()))
                  .isEqualTo("x^3 + 4*x^2 + 9*x + 25");
            });
  }

  /** −r put into P gives the same polynomial as the right inverse, −y. */
  @Test
  void aMapThatIsItsOwnInverseHidesTheSlip() {
    Solution solution = images("1 -2 -3 5", "-r");
    assertThat(solution.slips()).noneMatch(slip -> slip.name().equals("transform-backwards"));
    assertThat(solution.silent()).anyMatch(slip -> slip.name().equals("transform-backwards"));
  }

  @Test
  void aRootInADenominatorGivesNoPolynomial() {
    Solution solution = images("1 -4 1 6", "1/(r-2)");
    assertThat(solution.answer()).isInstanceOf(Answer.None.class);
    assertThat(solution.routes()).isEmpty();
  }

  @Test
  void theResolventKeepsItsOwnLetter() {
    Solution solution = Solved.of("1 -2 -3 5", "resolvent(r+s)");
    assertThat(solution.answer())
        .isEqualTo(new Answer.PolynomialIn(Solved.polynomial("1 -4 1 1"), "T"));
    assertThat(Solved.routes(solution)).contains("invert-map", "sums-of-new-roots");
  }

  /** Kinds throws when a line is refuted or a route ends elsewhere; so working them is the test. */
  @Test
  void fractionsOfLinearExpressionsAreInvertedOnAnyPolynomial() {
    SplittableRandom random = new SplittableRandom(SEED);
    int worked = 0;
    for (int k = 0; k < 25; k++) {
      int degree = random.nextInt(2, 5);
      long[] c = new long[degree + 1];
      Arrays.setAll(c, i -> random.nextInt(-4, 5));
      c[0] = random.nextInt(1, 4);
      String coefficients = String.join(" ", Arrays.stream(c).mapToObj(Long::toString).toList());
      String map =
          "(%d*r + %d)/(%d*r + %d)"
              .formatted(
                  random.nextInt(-3, 4),
                  random.nextInt(-3, 4),
                  random.nextInt(0, 3),
                  random.nextInt(1, 4));
      Solution solution = images(coefficients, map);
      boolean constant =
          solution.answer() instanceof Answer.PolynomialIn in && in.polynomial().degree() < degree;
      if (solution.answer() instanceof Answer.PolynomialIn && !constant) {
        if (Solved.routes(solution).contains("invert-map")) {
          worked++;
        } else {
          assertThat(solution.declined())
              .as("seed %d: %s of %s", SEED, map, coefficients)
              .anyMatch(route -> route.name().equals("invert-map"));
        }
      }
    }
    assertThat(worked).as("seed %d: workings", SEED).isGreaterThan(10);
  }

  /** The resolvent cubic of a quartic: Lagrange 1771, Réflexions; its coefficients from memory. */
  @Test
  void theValuesOfAnExpressionAreBuiltTogetherFromTheCoefficients() {
    Solution quartic = Solved.of("1 -1 0 2 -5", "resolvent(r s + t u)");
    assertThat(Solved.lines(quartic, "values-together"))
        .contains(
            "y_1 + y_2 + y_3 = e_2 = 0",
            "y_1*y_2 + y_1*y_3 + y_2*y_3 = e_1*e_3 - 4*e_4 = -2 - 4*(-5) = 18",
            "T^3 + 18*T + 1 = 0");
    Solution cyclic = Solved.of("1 0 -7 7", "resolvent(r^2 s + s^2 t + t^2 r)");
    assertThat(Solved.lines(cyclic, "values-together"))
        .contains("y_1 + y_2 = e_1*e_2 - 3*e_3 = -3*(-7) = 21")
        .endsWith("T^2 - 21*T + 98 = 0");
  }

  /** Their squares have fewer values than they, and Σ over the values of a square says so. */
  @Test
  void valuesInOppositePairsAreNotAddedUpByPowers() {
    for (String[] each :
        new String[][] {{"1 0 -7 6", "r - s"}, {"1 -5 3", "r^3 - s^3"}, {"1 -5 3", "1/r - 1/s"}}) {
      Solution solution = Solved.of(each[0], "resolvent(" + each[1] + ")");
      assertThat(solution.answer()).isInstanceOf(Answer.PolynomialIn.class);
      assertThat(Solved.routes(solution)).doesNotContain("sums-over-pairs", "sums-of-new-roots");
    }
  }
}
