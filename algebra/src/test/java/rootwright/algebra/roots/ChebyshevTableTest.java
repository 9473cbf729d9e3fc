package rootwright.algebra.roots;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import rootwright.algebra.factor.Factorisation;
import rootwright.algebra.factor.IrreducibleFactor;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;

/**
 * The coefficients of Chebyshev's polynomials T_n and U_n as tabulated by Abramowitz and Stegun,
 * Handbook of Mathematical Functions (1964), 22.3 (from memory, recomputed). The roots of T_n are
 * cos((2k − 1)π/2n), those of U_n are cos(kπ/(n + 1)).
 */
class ChebyshevTableTest {

  private static final List<Polynomial> T =
      table(
          "1",
          "1 0",
          "2 0 -1",
          "4 0 -3 0",
          "8 0 -8 0 1",
          "16 0 -20 0 5 0",
          "32 0 -48 0 18 0 -1",
          "64 0 -112 0 56 0 -7 0",
          "128 0 -256 0 160 0 -32 0 1",
          "256 0 -576 0 432 0 -120 0 9 0",
          "512 0 -1280 0 1120 0 -400 0 50 0 -1");

  private static final List<Polynomial> U =
      table(
          "1",
          "2 0",
          "4 0 -1",
          "8 0 -4 0",
          "16 0 -12 0 1",
          "32 0 -32 0 6 0",
          "64 0 -80 0 24 0 -1",
          "128 0 -192 0 80 0 -8 0",
          "256 0 -448 0 240 0 -40 0 1",
          "512 0 -1024 0 672 0 -160 0 10 0",
          "1024 0 -2304 0 1792 0 -560 0 60 0 -1");

  private static List<Polynomial> table(String... rows) {
    return Arrays.stream(rows).map(Coefficients::read).toList();
  }

  /** cos 2θ = 2·cos²θ − 1 takes the roots of T_2n to those of T_n, each twice. */
  @Test
  void doublingTheAngleTakesTheRootsOfOneTableRowToThoseOfAnother() {
    Polynomial doubled = Polynomial.ofDescending(2, 0, -1);
    for (int n = 1; n <= 5; n++) {
      assertThat(TransformedPolynomial.of(T.get(2 * n), doubled).primitive())
          .isEqualTo(T.get(n).power(2).primitive());
    }
  }

  /** The angles are evenly spread: the squares of n cosines have the mean 1/2, fourths 3/8. */
  @Test
  void powerSumsOfTheRootsAreThoseOfEvenlySpreadAngles() {
    for (int n = 3; n <= 10; n++) {
      PowerSums sums = PowerSums.of(T.get(n));
      assertThat(sums.value(2)).isEqualTo(Rational.of(n, 2));
      assertThat(sums.value(3)).isEqualTo(Rational.ZERO);
      assertThat(sums.value(4)).isEqualTo(Rational.of(3L * n, 8));
    }
  }

  /** sin 2(n + 1)θ = 2·sin (n + 1)θ·cos (n + 1)θ: U_(2n+1) = 2·T_(n+1)·U_n. */
  @Test
  void factorsOfOneKindAreTheFactorsOfBothKinds() {
    for (int n = 1; n <= 4; n++) {
      List<IrreducibleFactor> both = new ArrayList<>(Factorisation.of(T.get(n + 1)).factors());
      both.addAll(Factorisation.of(U.get(n)).factors());
      assertThat(Factorisation.of(U.get(2 * n + 1)).factors())
          .containsExactlyInAnyOrderElementsOf(both);
    }
  }

  /** T_n² − (x² − 1)·U_(n−1)² = 1, so the product of T_n over the roots of U_(n−1) is ±1. */
  @Test
  void theFirstKindIsPlusOrMinusOneAtTheRootsOfTheSecond() {
    for (int n = 2; n <= 10; n++) {
      Polynomial second = U.get(n - 1);
      ResidueAlgebra roots = ResidueAlgebra.of(second);
      assertThat(roots.power(T.get(n), 2)).isEqualTo(Polynomial.ONE);
      assertThat(roots.norm(T.get(n)).absolute()).isEqualTo(Rational.ONE);
    }
  }
}
