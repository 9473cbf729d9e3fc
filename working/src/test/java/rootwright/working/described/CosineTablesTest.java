package rootwright.working.described;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigInteger;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.apfloat.Apfloat;
import org.apfloat.ApfloatMath;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.working.Stated;
import rootwright.working.answer.Answer;

class CosineTablesTest {

  private static final long SEED = Long.getLong("rootwright.seed", 20_261_201L);

  /**
   * Minimal polynomials of 2cos(2π/n): Watkins and Zeitlin, American Mathematical Monthly 100
   * (1993) 471-474 (from memory); those of even n agree with the sequence A187360 of the OEIS.
   */
  @ParameterizedTest(name = "2cos(2π/{0})")
  @CsvSource(
      delimiter = ';',
      value = {
        "7; x^3 + x^2 - 2*x - 1",
        "9; x^3 - 3*x + 1",
        "11; x^5 + x^4 - 4*x^3 - 3*x^2 + 3*x + 1",
        "13; x^6 + x^5 - 5*x^4 - 4*x^3 + 6*x^2 + 3*x - 1",
        "15; x^4 - x^3 - 4*x^2 + 4*x + 1",
        "16; x^4 - 4*x^2 + 2",
        "17; x^8 + x^7 - 7*x^6 - 6*x^5 + 15*x^4 + 10*x^3 - 10*x^2 - 4*x + 1",
        "19; x^9 + x^8 - 8*x^7 - 7*x^6 + 21*x^5 + 15*x^4 - 20*x^3 - 10*x^2 + 5*x + 1",
        "20; x^4 - 5*x^2 + 5",
      })
  void theMinimalPolynomialsOfTwiceTheCosineAreFound(int n, String polynomial) {
    String list =
        IntStream.rangeClosed(1, n / 2)
            .filter(k -> BigInteger.valueOf(k).gcd(BigInteger.valueOf(n)).intValue() == 1)
            .mapToObj(k -> "2cos(%dπ/%d)".formatted(2 * k, n))
            .collect(Collectors.joining(", "));
    assertThat(Stated.text(list, "polynomial")).isEqualTo(polynomial);
  }

  @Test
  void thePolynomialOfEveryListVanishesAtItsNumbersReckonedByAnotherLibrary() {
    SplittableRandom random = new SplittableRandom(SEED);
    String[] functions = {"cos", "sin", "tan", "cot", "sec", "csc"};
    for (int trial = 0; trial < 16; trial++) {
      int n = 5 + 2 * random.nextInt(5);
      String function = functions[random.nextInt(functions.length)];
      boolean reciprocalOfZero = function.equals("cot") || function.equals("csc");
      String numbers = "%s^2(kπ/%d), k = 1..%d".formatted(function, n, (n - 1) / 2);
      Answer answer = Stated.solution(numbers, "polynomial").answer();
      Polynomial polynomial = ((Answer.PolynomialIn) answer).polynomial();
      Apfloat angle = ApfloatMath.pi(60).divide(new Apfloat(n));
      Apfloat value = value(function, angle);
      Apfloat square = value.multiply(value);
      Apfloat sum = Apfloat.ZERO;
      for (int k = polynomial.degree(); k >= 0; k--) {
        sum = sum.multiply(square).add(new Apfloat(polynomial.coefficient(k).numerator(), 60));
      }
      assertThat(ApfloatMath.abs(sum).compareTo(new Apfloat("1e-35")))
          .as("seed %d: %s, %s (%s)", SEED, numbers, polynomial, reciprocalOfZero)
          .isNegative();
    }
  }

  private static Apfloat value(String function, Apfloat angle) {
    Apfloat cos = ApfloatMath.cos(angle);
    Apfloat sin = ApfloatMath.sin(angle);
    return switch (function) {
      case "cos" -> cos;
      case "sin" -> sin;
      case "tan" -> sin.divide(cos);
      case "cot" -> cos.divide(sin);
      case "sec" -> Apfloat.ONE.divide(cos);
      default -> Apfloat.ONE.divide(sin);
    };
  }
}
