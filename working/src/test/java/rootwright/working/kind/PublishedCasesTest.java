package rootwright.working.kind;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import rootwright.working.gate.Warning;
import rootwright.working.gate.WarningCode;
import rootwright.working.solve.Solution;

/** Problems whose answer is printed somewhere, typed in and worked from end to end. */
class PublishedCasesTest {

  @ParameterizedTest(name = "{0}: {3} of {2}")
  @CsvFileSource(resources = "published-cases.csv", delimiter = ';')
  void thePrintedAnswerComesOut(
      String source, String basis, String polynomial, String ask, String kind, String text) {
    Solution solution = Worked.solution(polynomial, ask);
    assertThat(solution.answer().kind()).as(source).isEqualTo(kind);
    assertThat(Worked.text(solution.answer())).as("%s (%s)", source, basis).isEqualTo(text);
    assertThat(solution.second().agrees()).isTrue();
  }

  /**
   * Multiplicities printed by Dickson, First Course in the Theory of Equations, 1922, sec 58 and
   * 72, and by Hardy, A Course of Pure Mathematics, 1921, Examples XLI; the others after Hall and
   * Knight, Higher Algebra, 1887, from memory.
   */
  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = ';',
      value = {
        "x^3-7x^2+15x-9; 3 is a root twice",
        "x^4-8x^3+22x^2-24x+9; 1 is a root twice, 3 is a root twice",
        "x^4+2x^3-3x^2-4x+4; −2 is a root twice, 1 is a root twice",
        "x^4-x^2-2x+2; 1 is a root twice",
        "x^5-13x^4+67x^3-171x^2+216x-108; 2 is a root twice, 3 is a root 3 times",
        "x^6-3x^5+6x^3-3x^2-3x+2; −1 is a root twice, 1 is a root 3 times",
        "x^5-x^3+4x^2-3x+2; The roots of x² − x + 1 are roots twice each",
        "x^4+3x^3-3x^2-11x-6; −1 is a root twice",
        "(x-1)^3 (x^5-x-7)^2; 1 is a root 3 times, the roots of x⁵ − x − 7 are roots twice each",
      })
  void repeatedRootsAreNamedWithTheirMultiplicity(String polynomial, String sentence) {
    assertThat(Worked.solution(polynomial, "roots").warnings())
        .filteredOn(warning -> warning.code() == WarningCode.REPEATED_ROOT)
        .extracting(Warning::text)
        .containsExactly(sentence + "; roots are counted as often as they occur.");
  }
}
