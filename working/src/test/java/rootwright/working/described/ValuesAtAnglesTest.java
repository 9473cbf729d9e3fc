package rootwright.working.described;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.SplittableRandom;
import org.apfloat.Apfloat;
import org.apfloat.ApfloatMath;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rootwright.working.Stated;
import rootwright.working.answer.Answer;
import rootwright.working.solve.Solution;

class ValuesAtAnglesTest {

  private static final long SEED = Long.getLong("rootwright.seed", 20_261_202L);

  /** Old exercises of plane trigonometry, from memory of Hobson 1891 and Todhunter 1859. */
  @ParameterizedTest(name = "{0} = {1}")
  @CsvSource(
      delimiter = ';',
      value = {
        "cos(π/7)cos(2π/7)cos(3π/7); 1/8",
        "cos(π/7) - cos(2π/7) + cos(3π/7); 1/2",
        "cos(π/5) - cos(2π/5); 1/2",
        "cos(2π/5); (-1 + sqrt(5))/4",
        "sin(π/9)sin(2π/9)sin(3π/9)sin(4π/9); 3/16",
        "tan^2(π/7)+tan^2(2π/7)+tan^2(3π/7); 21",
        "tan(3π/11)+4sin(2π/11); sqrt(11)",
        "sin(2π/7)+sin(4π/7)+sin(8π/7); sqrt(7)/2",
      })
  void exactValuesComeOut(String ask, String value) {
    assertThat(Stated.text("", ask)).isEqualTo(value);
  }

  @Test
  void aSymmetricExpressionIsWorkedByThePolynomialToo() {
    Solution solution = Stated.solution("", "tan^2(π/7)+tan^2(2π/7)+tan^2(3π/7)");
    assertThat(Stated.routes(solution)).contains("unity", "read-off");
    assertThat(Stated.lines(solution, "read-off"))
        .contains(
            "x^3 - 21*x^2 + 35*x - 7"
                + " = (x - tan(pi/7)^2)*(x - tan(2*pi/7)^2)*(x - tan(3*pi/7)^2)");
  }

  @Test
  void valuesAgreeWithAnotherLibrary() {
    SplittableRandom random = new SplittableRandom(SEED);
    for (int trial = 0; trial < 6; trial++) {
      int n = 5 + random.nextInt(8);
      int a = 1 + random.nextInt(n - 1);
      int b = 1 + random.nextInt(n - 1);
      String ask = "cos(%dπ/%d)sin(%dπ/%d) + 2cos(%dπ/%d)".formatted(a, n, b, n, b, n);
      Apfloat step = ApfloatMath.pi(60).divide(new Apfloat(n));
      Apfloat x = step.multiply(new Apfloat(a));
      Apfloat y = step.multiply(new Apfloat(b));
      Apfloat value =
          ApfloatMath.cos(x)
              .multiply(ApfloatMath.sin(y))
              .add(ApfloatMath.cos(y).multiply(new Apfloat(2)));
      Answer.Exact answer = (Answer.Exact) Stated.solution("", ask).answer();
      Apfloat ours =
          new Apfloat(answer.value().enclosure(40).realCentre().toRational().numerator(), 60)
              .divide(
                  new Apfloat(
                      answer.value().enclosure(40).realCentre().toRational().denominator(), 60));
      assertThat(ApfloatMath.abs(ours.subtract(value)).compareTo(new Apfloat("1e-30")))
          .as("seed %d: %s", SEED, ask)
          .isNegative();
    }
  }
}
