package rootwright.working.route;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;

/**
 * Printed formulas at one polynomial each. Dickson: First Course in the Theory of Equations, 1922;
 * Burnside and Panton: The Theory of Equations, 1881 and later editions, and Hall and Knight:
 * Higher Algebra, 1887 (both from memory, recomputed with an independent computer algebra system);
 * Cajori: An Introduction to the Modern Theory of Equations, 1904.
 */
class PublishedSymmetricFunctionsTest {

  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "Dickson sec 103 ex 1 p 129, 1 -4 3 7, sum r^2, 10",
    "Dickson sec 103 ex 3 p 129, 1 2 -3 5, r^2 s t + s^2 r t + t^2 r s, 10",
    "Dickson sec 105 ex 5 p 133, 1 3 2 -5, (s+t)^2 + (t+r)^2 + (r+s)^2, 14",
    "Dickson sec 105 ex 6 p 133, 1 -4 3 7, (r+s-t)^3 + (s+t-r)^3 + (t+r-s)^3, 232",
    "Burnside and Panton art 27, 1 2 -3 5, sum r^3, -41",
    "Dickson sec 103 ex 5 p 129, 1 -4 3 7 -2, sum 1/r, 7/2",
    "Dickson sec 103 ex 5 p 129, 1 2 -3 5 7, sum 1/r^2, 67/49",
    "Dickson sec 105 ex 17 p 134, 1 3 2 -5 4, sum 1/(r-2), -71/42",
    "Hall and Knight XXXV.a 18, 1 -4 3 7, sum 1/r^2, 65/49",
    "Hall and Knight XXXV.a 19, 1 0 2 -3, sum 1/(r+s), -2/3",
    "Dickson sec 103 ex 8 p 129, 1 3 2 -5 4, sum s t/r^2, 71/8",
    "Dickson sec 103 ex 9 p 129, 1 -4 3 7 -2, sum t/(r s), -33/2",
    "Dickson sec 105 ex 1 p 133, 1 2 -3 5, (s t+r^2)/(s+t)+(t r+s^2)/(t+r)+(r s+t^2)/(r+s), 111/11",
    "Dickson sec 105 ex 7 p 133, 1 3 2 -5, ((s-t)/(s+t))^2+((t-r)/(t+r))^2+((r-s)/(r+s))^2, 41/11",
    "Burnside and Panton art 27, 1 2 -3 5, 1/(s+t) + 1/(t+r) + 1/(r+s), 1/11",
    "Burnside and Panton art 27, 1 3 2 -5, sum r/s, -21/5",
    "Dickson sec 106 ex 1 p 136, 1 -4 3 7, sum r^4, -30",
    "Dickson sec 106 ex 3 p 136, 1 -2 -3, sum r^2, 10",
    "Dickson sec 106 ex 3 p 136, 1 -3 2, sum r^4, 17",
    "Dickson sec 106 ex 3 p 136, 1 4 3, sum r^5, -244",
    "Dickson sec 106 ex 5 p 136, 1 0 0 0 -3 2, S_2, 0",
    "Dickson sec 106 ex 5 p 136, 1 0 0 0 -3 2, S_3, 0",
    "Dickson sec 106 ex 5 p 136, 1 0 0 0 -3 2, S_6, 0",
    "Dickson sec 106 ex 5 p 136, 1 0 0 0 -3 2, S_7, 0",
    "Hall and Knight XXXV.a 20, 1 0 3 -2 5, sum r^2, -6",
    "Hall and Knight XXXV.a 20, 1 0 3 -2 5, sum r^3, 6",
    "Hall and Knight XXXV.a 21, 1 0 -4 3, sum r^4, 32",
    "Burnside and Panton art 134, 1 0 0 0 2 -3, sum r^5, 15",
    "Cajori sec 69 ex 2 p 86, 1 -2 5 -4, S_1, 2",
    "Cajori sec 69 ex 2 p 86, 1 -2 5 -4, S_2, -6",
    "Cajori sec 69 ex 2 p 86, 1 -2 5 -4, S_3, -10",
    "Cajori sec 69 ex 2 p 86, 1 -2 5 -4, S_4, 18",
    "Cajori sec 69 ex 2 p 86, 1 -2 5 -4, sum 1/r, 5/4",
    "Cajori sec 69 ex 2 p 86, 1 -2 5 -4, sum 1/r^2, 9/16",
    "Dickson sec 108 ex 1 p 141, 1 3 2 -5 4, sum r^2 s^2, 42",
    "Dickson sec 108 ex 3 p 141, 1 -4 3 7 -2, sum r^2 s t, -20",
    "Dickson sec 108 ex 4 p 141, 1 2 -3 5 7, sum r^2 s^2 t^2, 67",
    "Dickson ch IX misc ex 3 p 142, 1 3 2 -5 4 -7 2, sum r^2 s^2 t u, 110",
    "Dickson sec 104 example 1 p 132, 1 -4 3 7 -2 5, sum r^2 s^2 t, -22",
    "Dickson sec 104 examples 2 and 3 p 132, 1 2 -3 5 7 -4, sum r^3 s t, -16",
    "Burnside and Panton art 27, 1 2 -3 5, (s+t)(t+r)(r+s), 11",
    "Burnside and Panton art 27, 1 3 2 -5, (1+r^2)(1+s^2)(1+t^2), 65",
    "Burnside and Panton art 27, 1 -4 3 7, (1-r)(1-s)(1-t), 7",
    "Burnside and Panton art 27, 1 2 -3 5, (r^2+r s+s^2)(s^2+s t+t^2)(t^2+t r+r^2), 23",
    "Burnside and Panton ch III, 1 3 2 -5 4 -7, product(1+r^2), 10",
  })
  void everyRouteThatGoesThroughEndsInThePrintedValue(
      String source, String coefficients, String ask, String value) {
    Exercise exercise = Exercise.of(coefficients, ask);
    List<Rational> found =
        Routes.ALL.stream()
            .filter(route -> route.attempt(exercise.asked()) instanceof Attempt.Worked)
            .map(exercise::valueBy)
            .toList();
    assertThat(found)
        .as(source)
        .isNotEmpty()
        .allSatisfy(answer -> assertThat(answer).hasToString(value));
  }

  /** Sums of the squares and fourth powers of the numbers 1 to 8, added up directly. */
  @Test
  void theRootsOneToEightAddUpAsTheyShould() {
    List<Rational> roots = LongStream.rangeClosed(1, 8).mapToObj(Rational::of).toList();
    Polynomial polynomial = Polynomial.withRoots(roots);
    assertThat(Exercise.of(polynomial, "S_2").valueBy(new NewtonSums())).hasToString("204");
    assertThat(Exercise.of(polynomial, "S_4").valueBy(new NewtonSums())).hasToString("8772");
  }
}
