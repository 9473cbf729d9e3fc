package rootwright.algebra.factor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import org.junit.jupiter.api.Test;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;

/**
 * The polynomial whose roots are all sums ±√2 ± √3 ± √5 … is irreducible and splits into factors of
 * degree 1 or 2 modulo every prime (Swinnerton-Dyer; the argument is in Kaltofen, Musser, Saunders
 * 1983).
 */
class HardToFactorTest {

  /** P(x + √p)·P(x − √p), by taking even and odd powers of √p apart. */
  private static Polynomial adjoined(Polynomial polynomial, int p) {
    Polynomial even = Polynomial.ZERO;
    Polynomial odd = Polynomial.ZERO;
    Polynomial derivative = polynomial;
    Rational factor = Rational.ONE;
    for (int k = 0; k <= polynomial.degree(); k++) {
      Polynomial term = derivative.times(factor);
      if (k % 2 == 0) {
        even = even.plus(term);
        factor = factor.over(Rational.of(k + 1L));
      } else {
        odd = odd.plus(term);
        factor = factor.times(p).over(Rational.of(k + 1L));
      }
      derivative = derivative.derivative();
    }
    return even.times(even).minus(odd.times(odd).times(Rational.of(p)));
  }

  private static Polynomial sumsOfRoots(int... primes) {
    Polynomial polynomial = Polynomial.X;
    for (int p : primes) {
      polynomial = adjoined(polynomial, p);
    }
    return polynomial;
  }

  @Test
  void fourSquareRootsAreStillFactored() {
    assertThat(Factorisation.of(sumsOfRoots(2, 3, 5, 7)).isIrreducible()).isTrue();
  }

  @Test
  void fiveAndSixSquareRootsAreRefusedAtOnce() {
    for (Polynomial hard :
        new Polynomial[] {sumsOfRoots(2, 3, 5, 7, 11), sumsOfRoots(2, 3, 5, 7, 11, 13)}) {
      assertThat(Factorisation.tried(hard)).isEmpty();
      assertThatExceptionOfType(OutOfReachException.class).isThrownBy(() -> Factorisation.of(hard));
    }
  }

  @Test
  void aLongPolynomialThatSplitsLittleIsFactored() {
    Polynomial first =
        Polynomial.monomial(Rational.ONE, 16).plus(Polynomial.X).plus(Polynomial.ONE);
    Polynomial second =
        Polynomial.monomial(Rational.ONE, 15)
            .minus(Polynomial.X)
            .plus(Polynomial.ONE.times(Rational.of(3)));
    assertThat(Factorisation.of(first.times(second)).product()).isEqualTo(first.times(second));
  }
}
