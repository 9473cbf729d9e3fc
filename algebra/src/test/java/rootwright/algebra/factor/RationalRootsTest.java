package rootwright.algebra.factor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;

class RationalRootsTest {

  private static final long SEED = Long.getLong("rootwright.seed", 7L);

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          # Dickson, First Course in the Theory of Equations, 1922: sec 24 ex 3, p 25
          1 -10 27 -18          | 1 3 6
          # sec 26 ex 2, p 27
          1 -9 -24 216          | 9
          # sec 26 ex 5
          1 0 -34 29 212 -300   | -3 2 2
          # sec 27 ex 1, p 28
          3 -40 130 -120 27     | 1/3 1 3 9
          # sec 27 ex 4
          32 0 -6 -1            | -1/4 -1/4 1/2
          # sec 27 ex 6
          24 -2 -5 1            | -1/2 1/4 1/3
          # sec 58 ex 1, p 62
          1 -7 15 -9            | 1 3 3
          # sec 58 ex 4
          1 -8 22 -24 9         | 1 1 3 3
          # sec 72 ex 3, p 83
          1 2 -3 -4 4           | -2 -2 1 1
          # sec 72 ex 4
          1 0 -1 -2 2           | 1 1
          # Hall & Knight, Higher Algebra, 1887, Examples XXXV.c 13 (from memory)
          1 -13 67 -171 216 -108 | 2 2 3 3 3
          # Hall & Knight XXXV.c 16 (from memory)
          1 -3 0 6 -3 -3 2      | -1 -1 1 1 1 2
          # Hall & Knight XXXV.c 14 (from memory)
          1 0 -1 4 -3 2         | -2
          # Hardy, A Course of Pure Mathematics, 1921, Examples XLI ex 5, p 208
          1 3 -3 -11 -6         | -3 -1 -1 2
          # Dickson sec 48 ex 2, p 51
          1 -2 -7 8 12          | -2 -1 2 3
          """)
  void rationalRootsAgreeWithTheBooks(String coefficients, String expected) {
    long[] descending =
        Arrays.stream(coefficients.trim().split(" ")).mapToLong(Long::parseLong).toArray();
    assertThat(listed(RationalRoots.of(Polynomial.ofDescending(descending))))
        .containsExactlyElementsOf(
            Arrays.stream(expected.split(" ")).map(Rational::parse).toList());
  }

  @Test
  void chosenRootsAreFoundBesideFactorsWithoutOne() {
    SplittableRandom random = new SplittableRandom(SEED);
    for (int round = 0; round < 300; round++) {
      List<Rational> chosen = new ArrayList<>();
      int count = random.nextInt(0, 6);
      for (int k = 0; k < count; k++) {
        chosen.add(Rational.of(random.nextInt(-40, 41), random.nextInt(1, 13)));
      }
      chosen.sort(null);
      // x^2 + x + 1 and x^3 - 2 have no rational root.
      Polynomial rest =
          switch (random.nextInt(3)) {
            case 0 -> Polynomial.ofDescending(1, 1, 1);
            case 1 -> Polynomial.ofDescending(1, 0, 0, -2);
            default -> Polynomial.ofDescending(random.nextInt(1, 99));
          };
      assertThat(listed(RationalRoots.of(Polynomial.withRoots(chosen).times(rest))))
          .as("seed %d", SEED)
          .isEqualTo(chosen);
    }
  }

  @Test
  void rootsWithHundredsOfDigitsAreFoundWithoutPrimeFactors() {
    BigInteger large = BigInteger.TEN.pow(400).add(BigInteger.valueOf(267));
    Rational one = new Rational(large, BigInteger.valueOf(3));
    Rational other = new Rational(BigInteger.valueOf(-7), large.add(BigInteger.TWO));
    assertThat(
            listed(
                RationalRoots.of(
                    Polynomial.withRoots(List.of(one, other))
                        .times(Polynomial.ofDescending(1, 0, 0, 0, 1)))))
        .containsExactly(other, one);
  }

  @Test
  void everyCubicWithSmallCoefficientsHasTheRootsThatTrialFinds() {
    for (int a = 1; a <= 4; a++) {
      for (int b = -4; b <= 4; b++) {
        for (int c = -4; c <= 4; c++) {
          for (int d = -4; d <= 4; d++) {
            Polynomial polynomial = Polynomial.ofDescending(a, b, c, d);
            List<Rational> tried = new ArrayList<>();
            for (int under = 1; under <= 4; under++) {
              for (int over = -8; over <= 8; over++) {
                Rational candidate = Rational.of(over, under);
                if (!tried.contains(candidate) && polynomial.at(candidate).isZero()) {
                  tried.add(candidate);
                }
              }
            }
            tried.sort(null);
            assertThat(RationalRoots.of(polynomial).stream().map(RationalRoot::value))
                .as(polynomial.toString())
                .isEqualTo(tried);
          }
        }
      }
    }
  }

  @Test
  void aNumberHasNoRootsAndZeroIsRefused() {
    assertThat(RationalRoots.of(Polynomial.constant(Rational.of(5)))).isEmpty();
    assertThatThrownBy(() -> RationalRoots.of(Polynomial.ZERO))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("zero polynomial");
  }

  private static List<Rational> listed(List<RationalRoot> roots) {
    List<Rational> all = new ArrayList<>();
    for (RationalRoot root : roots) {
      for (int k = 0; k < root.multiplicity(); k++) {
        all.add(root.value());
      }
    }
    return all;
  }
}
