package rootwright.algebra.symmetric;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.algebra.polynomial.Polynomial;

/** Printed exercises; each row ends with an instance worked out by another program. */
class PublishedSymmetricFunctionsTest {

  /** Dickson, First Course in the Theory of Equations, 1922; c_k = (−1)^k e_k for n = degree. */
  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          sec 108 ex 1 (p 141)      | 4 | 2.2       | 1*c2^2 -2*c1*c3 2*c4       | 1 3 2 -5 4        | 42
          sec 108 ex 3 (p 141)      | 4 | 2.1.1     | 1*c1*c3 -4*c4              | 1 -4 3 7 -2       | -20
          sec 108 ex 4 (p 141)      | 4 | 2.2.2     | 1*c3^2 -2*c2*c4            | 1 2 -3 5 7        | 67
          ch IX misc ex 3 (p 142)   | 6 | 2.2.1.1   | 1*c2*c4 -4*c1*c5 9*c6      | 1 3 2 -5 4 -7 2   | 110
          sec 104 example 1 (p 132) | 5 | 2.2.1     | 1*e2*e3 -3*e1*e4 5*e5      | 1 -4 3 7 -2 5     | -22
          sec 104 ex 2-3 (p 132)    | 5 | 3.1.1     | 1*e1^2*e3 -1*e1*e4 -2*e2*e3 5*e5 | 1 2 -3 5 7 -4 | -16
          sec 103 ex 1 (p 129)      | 3 | 2         | 1*c1^2 -2*c2               | 1 -4 3 7          | 10
          sec 103 ex 3 (p 129)      | 3 | 2.1.1     | 1*c1*c3                    | 1 2 -3 5          | 10
          sec 106 ex 1 (p 136)      | 3 | 4         | 1*c1^4 -4*c1^2*c2 4*c1*c3 2*c2^2 | 1 -4 3 7    | -30
          """)
  void dicksonsSigmaFunctionsAreReproduced(
      String place, int n, String partition, String printed, String coefficients, String value) {
    ElementaryForm form =
        SymmetricPolynomial.monomial(n, Partition.parse(partition)).toElementary();
    assertThat(form.polynomial()).as(place).isEqualTo(read(printed));
    assertThat(form.at(polynomial(coefficients))).isEqualTo(Rational.parse(value));
  }

  /** Dickson, sec 106 ex 3 (p 136): power sums of the roots of x² − px + q. */
  @ParameterizedTest
  @CsvSource({
    "2, 1*e1^2 -2*e2, 1 -2 -3, 10",
    "4, 1*e1^4 -4*e1^2*e2 2*e2^2, 1 -3 2, 17",
    "5, 1*e1^5 -5*e1^3*e2 5*e1*e2^2, 1 4 3, -244"
  })
  void dicksonsPowerSumsOfTwoRootsAreReproduced(
      int k, String printed, String coefficients, String value) {
    ElementaryForm form = GirardWaring.powerSum(k, 2);
    assertThat(form.polynomial()).isEqualTo(read(printed));
    assertThat(form.at(polynomial(coefficients))).isEqualTo(Rational.parse(value));
  }

  private static Polynomial polynomial(String coefficients) {
    return Polynomial.ofDescending(
        Arrays.stream(coefficients.split(" ")).mapToLong(Long::parseLong).toArray());
  }

  private static MultivariatePolynomial read(String printed) {
    return Arrays.stream(printed.split(" "))
        .map(PublishedSymmetricFunctionsTest::term)
        .reduce(MultivariatePolynomial.ZERO, MultivariatePolynomial::plus);
  }

  private static MultivariatePolynomial term(String printed) {
    List<String> factors = List.of(printed.split("\\*"));
    return factors.stream()
        .skip(1)
        .flatMap(PublishedSymmetricFunctionsTest::letters)
        .reduce(MultivariatePolynomial.ONE, MultivariatePolynomial::times)
        .times(Rational.parse(factors.get(0)));
  }

  /** One factor for each power; c_k carries its sign. */
  private static Stream<MultivariatePolynomial> letters(String factor) {
    String[] parts = factor.split("\\^");
    int k = Integer.parseInt(parts[0].substring(1));
    boolean negative = parts[0].startsWith("c") && k % 2 == 1;
    MultivariatePolynomial letter =
        MultivariatePolynomial.unknown(k - 1).times(negative ? Rational.MINUS_ONE : Rational.ONE);
    return Stream.generate(() -> letter).limit(parts.length == 1 ? 1 : Long.parseLong(parts[1]));
  }
}
