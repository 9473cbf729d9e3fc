package rootwright.algebra.companion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;

class CompanionMatrixTest {

  private static final long SEED = Long.getLong("rootwright.seed", 20240612L);

  /** Roots are chosen first, so that every sum is known. */
  private static List<Rational> roots(SplittableRandom random) {
    List<Rational> roots = new ArrayList<>();
    int count = random.nextInt(1, 6);
    for (int k = 0; k < count; k++) {
      roots.add(Rational.of(random.nextInt(-4, 5), random.nextInt(1, 4)));
    }
    return roots;
  }

  @Test
  void tracesAndDeterminantsAreSumsAndProductsOverTheRoots() {
    SplittableRandom random = new SplittableRandom(SEED);
    Polynomial over = Polynomial.ofDescending(3, 0, -1, 2).times(Rational.of(1, 5));
    Polynomial under = Polynomial.ofDescending(2, 1);
    for (int round = 0; round < 300; round++) {
      List<Rational> roots = roots(random);
      CompanionMatrix matrix =
          CompanionMatrix.of(Polynomial.withRoots(roots).times(Rational.of(-6)));
      String context = "seed " + SEED + ": " + roots;
      assertThat(matrix.trace(over))
          .as(context)
          .isEqualTo(roots.stream().map(over::at).reduce(Rational.ZERO, Rational::plus));
      assertThat(matrix.determinant(over))
          .as(context)
          .isEqualTo(roots.stream().map(over::at).reduce(Rational.ONE, Rational::times));
      assertThat(matrix.tracePower(7))
          .as(context)
          .isEqualTo(roots.stream().map(r -> r.power(7)).reduce(Rational.ZERO, Rational::plus));
      boolean undefined = roots.stream().anyMatch(r -> under.at(r).isZero());
      assertThat(matrix.trace(over, under))
          .as(context)
          .isEqualTo(
              undefined
                  ? Optional.empty()
                  : Optional.of(
                      roots.stream()
                          .map(r -> over.at(r).over(under.at(r)))
                          .reduce(Rational.ZERO, Rational::plus)));
    }
  }

  @Test
  void residuesAreThoseOfTheExactTrace() {
    SplittableRandom random = new SplittableRandom(SEED);
    for (int round = 0; round < 200; round++) {
      List<Rational> roots = roots(random);
      int exponent = random.nextInt(-8, 30);
      BigInteger modulus = BigInteger.valueOf(random.nextInt(1, 200));
      Polynomial polynomial = Polynomial.withRoots(roots).primitive();
      BigInteger divisor = polynomial.numerator(exponent < 0 ? 0 : polynomial.degree());
      TraceResidue residue =
          CompanionMatrix.of(polynomial).tracePower(BigInteger.valueOf(exponent), modulus);
      String context = "seed " + SEED + ": " + roots + "^" + exponent + " mod " + modulus;
      if (divisor.signum() != 0 && divisor.gcd(modulus).equals(BigInteger.ONE)) {
        Rational sum =
            roots.stream().map(r -> r.power(exponent)).reduce(Rational.ZERO, Rational::plus);
        BigInteger expected =
            sum.numerator().multiply(sum.denominator().modInverse(modulus)).mod(modulus);
        assertThat(residue).as(context).isEqualTo(new TraceResidue.Known(expected));
      } else {
        assertThat(residue).as(context).isInstanceOf(TraceResidue.NotInvertible.class);
      }
    }
  }

  /** The Perrin numbers, The On-Line Encyclopedia of Integer Sequences, A001608. */
  @Test
  void tracesOfThePerrinMatrixAreThePerrinNumbers() {
    CompanionMatrix matrix = CompanionMatrix.of(Polynomial.ofDescending(1, 0, -1, -1));
    long[] perrin = {3, 0, 2, 3, 2, 5, 5, 7, 10, 12, 17, 22, 29, 39, 51, 68, 90, 119};
    for (int k = 0; k < perrin.length; k++) {
      assertThat(matrix.tracePower(k)).as("exponent %d", k).isEqualTo(Rational.of(perrin[k]));
    }
  }

  @Test
  void constantsAndPowersOfAZeroRootAreRefused() {
    assertThatThrownBy(() -> CompanionMatrix.of(Polynomial.ONE))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("constant");
    assertThatThrownBy(() -> CompanionMatrix.of(Polynomial.ofDescending(1, 0)).tracePower(-1))
        .isInstanceOf(ArithmeticException.class)
        .hasMessageContaining("zero");
  }
}
