package rootwright.algebra.roots;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;

class TransformedPolynomialTest {

  /**
   * Dickson, First Course in the Theory of Equations (1922): sec 27 ex 11, sec 20 ex 12, sec 67 ex
   * 14, sec 59 ex 6; Hall and Knight, Higher Algebra (1887), XXXV.d 24 and 30 (numbering from
   * memory); Burnside and Panton, The Theory of Equations, art 41 (from memory).
   */
  @ParameterizedTest
  @CsvSource({
    "1 -1/2 -1/3 1/4, 6 0, 1 -3 -12 54",
    "1 -3 2, 1 0 0 0, 1 -9 8",
    "1 1 8 6, 1 0 0, 1 15 52 -36",
    "1 6 -3 1, 1 2, 1 0 -15 23",
    "1 3 0 2, 1 0 0 0, 1 33 12 8",
    "1 0 2 -3, 1 0 0 0, 1 -9 35 -27",
    "1 3 2 -5 4, 1 3/4, 1 0 -11/8 -37/8 2029/256"
  })
  void printedTransformsAgree(String row, String map, String expected) {
    assertThat(TransformedPolynomial.of(Coefficients.read(row), Coefficients.read(map)))
        .isEqualTo(Coefficients.read(expected).primitive());
  }

  /**
   * Dickson 1922, ch IX misc ex 7, p. 142: the roots 2/r; NIST DLMF sec 1.11(ii): the roots 1/r.
   */
  @Test
  void printedReciprocalsAgree() {
    assertThat(
            TransformedPolynomial.of(
                Polynomial.ofDescending(1, -4, 3, 7), Polynomial.ofDescending(2), Polynomial.X))
        .isEqualTo(new Transformed.Exact(Polynomial.ofDescending(7, 6, -16, 8)));
    assertThat(TransformedPolynomial.reciprocals(Polynomial.ofDescending(3, 2, -5, 4, -7)))
        .isEqualTo(new Transformed.Exact(Polynomial.ofDescending(7, -4, 5, -2, -3)));
  }

  @ParameterizedTest
  @CsvFileSource(
      resources = "/rootwright/algebra/roots/cosine-minimal-polynomials.csv",
      delimiter = ';')
  void sumsWithTheReciprocalOfRootsOfUnityAreTwiceCosines(int n, String cyclotomic, String row) {
    Polynomial roots = Coefficients.read(cyclotomic);
    assertThat(TransformedPolynomial.of(roots, Polynomial.ofDescending(1, 0, 1), Polynomial.X))
        .as("n = %d", n)
        .isEqualTo(new Transformed.Exact(Coefficients.read(row).power(2)));
  }

  @Test
  void imagesOfChosenRootsAreTheRoots() {
    Polynomial square = Polynomial.ofDescending(1, 0, 0);
    for (ChosenRoots chosen : ChosenRoots.all(4)) {
      Polynomial polynomial = chosen.polynomial();
      assertThat(TransformedPolynomial.squares(polynomial))
          .as("%s", chosen)
          .isEqualTo(withRoots(chosen, r -> r.times(r)));
      assertThat(TransformedPolynomial.of(polynomial, square))
          .isEqualTo(TransformedPolynomial.squares(polynomial));
      assertThat(TransformedPolynomial.powers(polynomial, 3))
          .as("%s", chosen)
          .isEqualTo(withRoots(chosen, r -> r.power(3)));
      for (List<String> map :
          List.of(
              List.of("2 -1", "1 1"),
              List.of("1 0 2", "1 0"),
              List.of("2 2", "1 1"),
              List.of("5", "1 -1"),
              List.of("0", "1 -1"),
              List.of("1 0 0 1", "1 1 3"))) {
        compare(chosen, Coefficients.read(map.get(0)), Coefficients.read(map.get(1)));
      }
    }
  }

  private static void compare(ChosenRoots chosen, Polynomial over, Polynomial under) {
    Transformed transformed = TransformedPolynomial.of(chosen.polynomial(), over, under);
    if (chosen.roots().stream().anyMatch(r -> under.at(r).isZero())) {
      assertThat(transformed)
          .as("%s/%s at %s", over, under, chosen)
          .isInstanceOf(Transformed.ZeroDenominator.class);
    } else {
      assertThat(transformed)
          .as("%s/%s at %s", over, under, chosen)
          .isEqualTo(new Transformed.Exact(withRoots(chosen, r -> over.at(r).over(under.at(r)))));
    }
  }

  private static Polynomial withRoots(ChosenRoots chosen, Function<Rational, Rational> map) {
    return Polynomial.withRoots(chosen.roots().stream().map(map).toList()).primitive();
  }

  @Test
  void constantsHaveNoRootsToTransform() {
    assertThatThrownBy(() -> TransformedPolynomial.squares(Polynomial.ONE))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("no roots");
  }
}
