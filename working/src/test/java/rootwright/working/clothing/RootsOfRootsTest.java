package rootwright.working.clothing;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rootwright.working.Stated;

class RootsOfRootsTest {

  /** Common practice; squared by hand. */
  @ParameterizedTest(name = "{1} for {0}")
  @CsvSource(
      delimiter = ';',
      value = {
        "x^2-12x+4; √r+√s; 4",
        "x^2-34x+1; r^(1/4)+s^(1/4); 2*sqrt(2)",
        "x^2-14x+9; √r+√s; 2*sqrt(5)",
        "(x-4)(x-9); sqrt(r)+sqrt(s); 5",
      })
  void rootsOfRootsAreSquared(String quadratic, String ask, String value) {
    assertThat(Stated.text(quadratic, ask)).isEqualTo(value);
  }

  @Test
  void rootsThatAreNotPositiveLeaveTheBranchOpen() {
    assertThat(Stated.warnings(Stated.solution("x^2+5x+4", "√r+√s")))
        .singleElement()
        .asString()
        .startsWith("not-real: There is no answer in this form");
    assertThat(Stated.solution("x^2-5x+2", "√r+√s").answer().kind()).isEqualTo("none");
  }
}
