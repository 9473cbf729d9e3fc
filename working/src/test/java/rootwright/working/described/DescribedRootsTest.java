package rootwright.working.described;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rootwright.working.Stated;
import rootwright.working.solve.Solution;

class DescribedRootsTest {

  /** Values printed in the books named; what is from memory was worked out again. */
  @ParameterizedTest(name = "{1}: {2}")
  @CsvSource(
      delimiter = ';',
      value = {
        "Dickson, First Course in the Theory of Equations, 1922, sec 37 ex 5 (p 40);"
            + "2cos(2kπ/11), k = 1..5; polynomial; x^5 + x^4 - 4*x^3 - 3*x^2 + 3*x + 1",
        "Dickson 1922, sec 41 ex 3 (p 44), the four-term periods of the 13th roots of unity;"
            + "2cos(2π/13)+2cos(10π/13), 2cos(4π/13)+2cos(20π/13), 2cos(8π/13)+2cos(40π/13);"
            + "polynomial; x^3 + x^2 - 4*x + 1",
        "from memory, worked out again; tan^2(kπ/7), k=1..3; polynomial; x^3 - 21*x^2 + 35*x - 7",
        "from memory, worked out again; tan^2(kπ/7), k=1..3; Σ r^2; 371",
        "Cauchy, Cours d'analyse, 1821, note VIII (from memory): n(2n-1)/3;"
            + "cot^2(kπ/11), k=1,2,3,4,5; sum; 15",
        "Cauchy 1821 (from memory): 2n(n+1)/3; csc^2(kπ/11), k=1,...,5; sum; 20",
        "Viète's equation of the nonagon (from memory); 2cos(2π/9), 2cos(4π/9), 2cos(8π/9);"
            + "polynomial; x^3 - 3*x + 1",
        "Hobson, A Treatise on Plane Trigonometry, 1891, ch VII (from memory);"
            + "sin^2(kπ/7), k=1..3; product; 7/64",
        "Gauss, Disquisitiones, 1801, art 357 (from memory), the two periods of the 17th roots;"
            + "2cos(2π/17)+2cos(4π/17)+2cos(8π/17)+2cos(16π/17),"
            + " 2cos(6π/17)+2cos(10π/17)+2cos(12π/17)+2cos(14π/17); polynomial; x^2 + x - 4",
        "common practice; cos(π/9), cos(5π/9), cos(7π/9); Σ1/c; -6",
        "common practice; 2cos(2π/7), 2cos(4π/7) and 2cos(6π/7); sum of the reciprocals; -2",
        "common practice; 2cos(2πj/7), j = 1..3; Σ r^4; 13",
      })
  void valuesAtAnglesAreWorkedByTheirPolynomial(
      String source, String numbers, String ask, String answer) {
    assertThat(Stated.text(numbers, ask)).as(source).isEqualTo(answer);
  }

  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource(
      delimiter = ';',
      value = {
        "the 9th roots of unity other than 1; Π(3-ω); 9841",
        "the ninth roots of unity except 1; Σ1/(1-ω); 4",
        "12th roots of unity; Σ r^24; 12",
        "primitive 12th roots of unity; polynomial; x^4 - x^2 + 1",
        "the 5th roots of unity; Π(2-r); 31",
        "nonreal sixth roots of unity; Σ1/(1+ω); 2",
        "the 7th roots of unity other than 1; Π(1+ω); 1",
      })
  void sumsAndProductsOverRootsOfUnityAreWorked(String roots, String ask, String answer) {
    assertThat(Stated.text(roots, ask)).isEqualTo(answer);
  }

  @Test
  void thePolynomialOfTheRootsOfUnityIsTheQuotientThatAStudentKnows() {
    Solution solution = Stated.solution("the 5th roots of unity other than 1", "polynomial");
    assertThat(Stated.lines(solution, "unity"))
        .containsExactly("x^5 - 1 = (x - 1)*(x^4 + x^3 + x^2 + x + 1)");
    assertThat(solution.statement())
        .isEqualTo(
            "Find the polynomial of least degree with integer coefficients whose roots are the 5th"
                + " roots of unity other than 1.");
  }

  @Test
  void everyRouteBeginsWithTheMultipleAngle() {
    Solution solution = Stated.solution("cos(π/9), cos(5π/9), cos(7π/9)", "Σ1/r");
    assertThat(solution.routes())
        .isNotEmpty()
        .allSatisfy(
            working ->
                assertThat(Stated.lines(solution, working.route()))
                    .startsWith(
                        "cos(3*theta) = 4*c^3 - 3*c",
                        "cos(pi/3) = cos(5*pi/3) = cos(7*pi/3) = 1/2",
                        "4*c^3 - 3*c - 1/2 = 1/2*(8*c^3 - 6*c - 1)"));
  }

  @Test
  void aListThatIsNotCompleteIsRefusedWithWhatIsMissing() {
    Solution solution = Stated.solution("cos(π/9), cos(5π/9)", "Σ r");
    assertThat(solution.answer().kind()).isEqualTo("none");
    assertThat(Stated.warnings(solution))
        .singleElement()
        .asString()
        .startsWith("not-symmetric: The list is not complete")
        .contains("cos(7π/9) as well");
  }

  @Test
  void aNumberListedTwiceIsCountedTwiceAndSaid() {
    Solution solution = Stated.solution("cos(2kπ/5), k = 1..4", "Σ r");
    assertThat(Stated.text(solution.answer())).isEqualTo("-1");
    assertThat(Stated.warnings(solution))
        .anyMatch(warning -> warning.startsWith("repeated-root: Some of the listed numbers"));
  }

  @Test
  void whatHasNoValueOrIsBeyondTheLimitsIsRefused() {
    assertThat(Stated.refusal("tan(π/2), tan(π/4)", "sum")).contains("has no value");
    assertThat(Stated.refusal("the 400th roots of unity", "sum of the roots")).contains("order 64");
    assertThat(Stated.refusal("cos(π/7919), cos(2π/7919)", "sum")).contains("no common measure");
    assertThat(Stated.refusal("", "tan(π/2) + 1")).contains("denominator");
  }
}
