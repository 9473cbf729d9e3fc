package rootwright.algebra.stop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.math.BigInteger;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rootwright.algebra.enclosure.RootEnclosures;
import rootwright.algebra.number.Rational;
import rootwright.algebra.number.RepeatedSquaring;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.polynomial.RationalFunction;
import rootwright.algebra.roots.OrbitPolynomial;

/** What takes long notices that nobody wants it any more. */
class StopTest {

  @AfterEach
  void theNextTestIsWanted() {
    Thread.interrupted();
  }

  static List<Runnable> longComputations() {
    Polynomial quintic = Polynomial.ofDescending(1, 0, 0, 0, -1, -1);
    MultivariatePolynomial r = MultivariatePolynomial.unknown(0);
    MultivariatePolynomial s = MultivariatePolynomial.unknown(1);
    return List.of(
        () -> RepeatedSquaring.power(2, BigInteger.TEN.pow(30), 1, (left, right) -> left * right),
        () -> RootEnclosures.of(quintic, 2000),
        () -> r.plus(s).power(40),
        () -> OrbitPolynomial.of(quintic, RationalFunction.of(r.times(s).plus(s.power(2)))),
        () ->
            quintic
                .times(Polynomial.withRoots(List.of(Rational.TWO)))
                .gcd(quintic.times(quintic.derivative())));
  }

  @ParameterizedTest
  @MethodSource("longComputations")
  void anInterruptedThreadStopsComputing(Runnable computation) {
    Thread.currentThread().interrupt();
    assertThatExceptionOfType(StoppedException.class).isThrownBy(computation::run);
    assertThat(Thread.currentThread().isInterrupted()).isTrue();
  }

  @ParameterizedTest
  @MethodSource("longComputations")
  void aThreadThatIsWantedGoesOn(Runnable computation) {
    computation.run();
  }

  @Test
  void powersAreProductsOfTheBase() {
    for (int exponent = 0; exponent <= 40; exponent++) {
      BigInteger power =
          RepeatedSquaring.power(
              BigInteger.valueOf(3), exponent, BigInteger.ONE, BigInteger::multiply);
      assertThat(power).isEqualTo(BigInteger.valueOf(3).pow(exponent));
    }
    assertThatExceptionOfType(IllegalArgumentException.class)
        .isThrownBy(
            () -> RepeatedSquaring.power(BigInteger.TWO, -1, BigInteger.ONE, BigInteger::multiply));
  }
}
