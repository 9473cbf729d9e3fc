package rootwright.algebra.roots;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigInteger;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;

class PowerSumsTest {

  @ParameterizedTest
  @CsvFileSource(resources = "/rootwright/algebra/roots/power-sum-sequences.csv", delimiter = ';')
  void publishedSequencesArePowerSums(String entry, String name, String row, String terms) {
    PowerSums sums = PowerSums.of(Coefficients.read(row));
    List<Rational> expected = Arrays.stream(terms.split(" ")).map(Rational::parse).toList();
    assertThat(sums.upTo(29)).as("%s %s", entry, name).isEqualTo(expected);
    for (int k = 0; k < expected.size(); k++) {
      assertThat(sums.value(k)).as("%s %s, exponent %d", entry, name, k).isEqualTo(expected.get(k));
    }
  }

  /**
   * Dickson, First Course in the Theory of Equations (1922), sec 106, p. 136 (ex 1, 3, 3, 3); Hall
   * and Knight, Higher Algebra (1887), XXXV.a 21 (from memory); Burnside and Panton, The Theory of
   * Equations, art 134 type (from memory); Cajori, Modern Theory of Equations (1904), sec 69 ex 2,
   * p. 86.
   */
  @ParameterizedTest
  @CsvSource({
    "1 -4 3 7, 4, -30",
    "1 -2 -3, 2, 10",
    "1 -3 2, 4, 17",
    "1 4 3, 5, -244",
    "1 0 -4 3, 4, 32",
    "1 0 0 0 2 -3, 5, 15",
    "1 -2 5 -4, 1, 2",
    "1 -2 5 -4, 2, -6",
    "1 -2 5 -4, 3, -10",
    "1 -2 5 -4, 4, 18",
    "1 -2 5 -4, -1, 5/4",
    "1 -2 5 -4, -2, 9/16",
    "1 -2 5 -4, -3, 53/64"
  })
  void printedPowerSumsAgree(String row, long exponent, String value) {
    assertThat(PowerSums.of(Coefficients.read(row)).value(exponent))
        .isEqualTo(Rational.parse(value));
  }

  /** Dickson 1922, sec 106 ex 5, p. 136: the roots of x⁵ − px + q. */
  @Test
  void powerSumsOfABringQuinticVanishAtTwoThreeSixSeven() {
    PowerSums sums = PowerSums.of(Polynomial.ofDescending(1, 0, 0, 0, -7, 3));
    for (int exponent : new int[] {2, 3, 6, 7}) {
      assertThat(sums.value(exponent)).as("S_%d", exponent).isEqualTo(Rational.ZERO);
    }
  }

  @Test
  void powerSumsOfOneToTwentyAreTheSumsOfPowers() {
    List<Rational> roots = LongStream.rangeClosed(1, 20).mapToObj(Rational::of).toList();
    assertThat(PowerSums.of(Polynomial.withRoots(roots)).upTo(4))
        .containsExactly(
            Rational.of(20),
            Rational.of(210),
            Rational.of(2870),
            Rational.of(44100),
            Rational.of(722666));
  }

  @Test
  void powerSumsFromCoefficientsEqualPowerSumsFromRoots() {
    for (ChosenRoots chosen : ChosenRoots.all(4)) {
      PowerSums sums = PowerSums.of(chosen.polynomial());
      boolean hasZero = chosen.roots().contains(Rational.ZERO);
      List<Rational> list = sums.upTo(20);
      for (int k = hasZero ? 0 : -9; k <= 20; k++) {
        int exponent = k;
        Rational expected = chosen.sum(r -> r.power(exponent));
        assertThat(sums.value(k)).as("S_%d of %s", k, chosen).isEqualTo(expected);
        if (k >= 0) {
          assertThat(list.get(k)).as("S_%d of %s", k, chosen).isEqualTo(expected);
        }
      }
    }
  }

  @Test
  void negativeExponentsDoNotExistWhenARootIsZero() {
    PowerSums sums = PowerSums.of(Polynomial.ofDescending(1, -3, 0));
    BigInteger minusTwo = BigInteger.valueOf(-2);
    assertThat(sums.exact(minusTwo)).isEqualTo(new PowerSum.ZeroRoot(minusTwo));
    assertThat(sums.modulo(minusTwo, BigInteger.TEN))
        .isEqualTo(new PowerSumResidue.ZeroRoot(minusTwo));
    assertThatThrownBy(() -> sums.value(-2))
        .isInstanceOf(ArithmeticException.class)
        .hasMessageContaining("S_-2");
  }

  @Test
  void farSumsObeyTheDoublingRules() {
    SplittableRandom random = Seed.random();
    for (int round = 0; round < 20; round++) {
      Polynomial polynomial = Seed.polynomial(random, random.nextInt(1, 6));
      PowerSums sums = PowerSums.of(polynomial);
      long k = random.nextLong(500, 1500);
      ResidueAlgebra algebra = ResidueAlgebra.of(polynomial);
      assertThat(sums.value(k))
          .as("seed %d, S_%d of %s", Seed.VALUE, k, polynomial)
          .isEqualTo(algebra.trace(algebra.power(Polynomial.X, k)));
    }
  }

  @Test
  void residuesAgreeWithExactSums() {
    SplittableRandom random = Seed.random();
    for (int round = 0; round < 400; round++) {
      Polynomial polynomial = Seed.polynomial(random, random.nextInt(1, 13)).primitive();
      PowerSums sums = PowerSums.of(polynomial);
      long k = random.nextLong(0, 200);
      BigInteger m = new BigInteger(1 + random.nextInt(90), new Random(round)).add(BigInteger.ONE);
      String context = "seed " + Seed.VALUE + ": S_" + k + " mod " + m + " of " + polynomial;
      PowerSumResidue residue = sums.modulo(BigInteger.valueOf(k), m);
      BigInteger lead = polynomial.numerator(polynomial.degree());
      if (lead.gcd(m).equals(BigInteger.ONE)) {
        Rational exact = sums.value(k);
        BigInteger expected = exact.numerator().multiply(exact.denominator().modInverse(m)).mod(m);
        assertThat(residue).as(context).isEqualTo(new PowerSumResidue.Residue(expected));
      } else {
        assertThat(residue).as(context).isEqualTo(new PowerSumResidue.NoResidue(lead, lead.gcd(m)));
      }
    }
  }

  /** Fermat: r^p summed over the roots is the sum of the roots modulo a prime p. */
  @Test
  void powerSumAtAPrimeIsTheSumOfTheRootsModuloThatPrime() {
    for (long p : new long[] {1_000_000_007L, 2_147_483_647L, (1L << 61) - 1}) {
      BigInteger prime = BigInteger.valueOf(p);
      for (Polynomial polynomial :
          List.of(
              Polynomial.ofDescending(1, -1, -1),
              Polynomial.ofDescending(1, -4, 3, 7),
              Polynomial.ofDescending(1, 8, 0, -1, 0, 0, 2, 5, -3, 1, 1, 7, -9))) {
        PowerSums sums = PowerSums.of(polynomial);
        assertThat(sums.modulo(prime, prime)).isEqualTo(sums.modulo(BigInteger.ONE, prime));
        assertThat(sums.modulo(prime.pow(3), prime)).isEqualTo(sums.modulo(BigInteger.ONE, prime));
      }
    }
  }

  @Test
  void rootsOfUnityHaveShortPowerSumsHoweverFar() {
    PowerSums sums = PowerSums.of(Polynomial.ofDescending(1, -1, 1));
    assertThat(sums.value(6_000_000_000_000_000_000L)).isEqualTo(Rational.TWO);
  }

  @Test
  void tooLongSumsAreRefusedAtOnce() {
    BigInteger far = BigInteger.TEN.pow(18);
    assertThat(PowerSums.of(Polynomial.ofDescending(1, -1, -1)).exact(far))
        .isEqualTo(new PowerSum.TooLong(far, PowerSums.LONGEST_EXACT));
    assertThat(PowerSums.of(Polynomial.ofDescending(3, -1)).exact(far))
        .isEqualTo(new PowerSum.TooLong(far, PowerSums.LONGEST_EXACT));
  }
}
