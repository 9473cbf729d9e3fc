package rootwright.algebra.enclosure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.hipparchus.analysis.solvers.LaguerreSolver;
import org.hipparchus.complex.Complex;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;

class RootEnclosuresTest {

  private static final long SEED = Long.getLong("rootwright.seed", 20240611L);

  /** Coefficients highest first, digits, the real roots; the source stands beside each. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          # Dickson, First Course in the Theory of Equations, 1922, sec 46 ex 3, p 49
          1 0 -7 7        | 5  | -3.0489 1.3569 1.6920
          # Dickson sec 46 ex 4; the first two are printed there cut off, not rounded
          1 3 -2 -5       | 8  | -3.1284191 -1.2016397 1.3300587
          # Dickson sec 46 ex 6
          1 4 0 -7        | 5  | -3.3914 -1.7729 1.1642
          # Dickson sec 47 ex 1; printed there with a last digit too large
          1 0 -2 -1       | 6  | -1.00000 -0.618034 1.61803
          # Dickson sec 74 ex 1, p 89
          1 0 2 20        | 6  | -2.46955
          # Dickson sec 74 ex 4
          2 8 -35 -36 117 | 8  | -6.1231056 -2.1213203 2.1213203 2.1231056
          # Dickson sec 74 ex 5; printed there cut off
          1 0 0 -11727 40385 | 9 | 3.4559261 21.4306777
          # Dickson sec 74 ex 7; the first is printed there cut off
          1 4 0 -7        | 9  | -3.39138238 -1.7728656 1.1642479
          # Dickson sec 74 ex 11
          1 3 1 -6        | 10 | 1.094551482
          # Dickson sec 74 ex 12
          1 -2 2 0 -9     | 4  | -1.228 2.059
          # Dickson sec 74 ex 15, cos 20°
          8 0 -6 -1       | 4  | -0.7660 -0.1736 0.9397
          # Dickson sec 74 ex 16
          1 24 188 -300   | 5  | 1.3500
          # Dickson sec 74 ex 17
          1 0 -28 56      | 5  | -6.0978 2.7138 3.3840
          # Dickson ch IV misc ex 5, p 54
          1 0 -144 665    | 4  | -13.86 6.856 7.000
          # Dickson sec 74 ex 18 and ex 20, p 90: interest of 5.46 and 9.70 per cent
          27 -10 -10 -10  | 5  | 1.0546
          25 -10 -10 -10  | 5  | 1.0970
          # Fibonacci, Flos, 1225 (from memory)
          1 2 10 -20      | 11 | 1.3688081078
          # Newton's example, printed by Wallis 1685 (from memory)
          1 0 -2 -5       | 32 | 2.0945514815423265914823865405793
          # Lehmer 1933 (from memory) for the larger root; the other is its reciprocal
          1 1 0 -1 -1 -1 -1 -1 0 1 1 | 30 | 0.850137130927042352491132170 1.17628081825991750654407033847
          # Cardano, Ars Magna ch 39 (from memory)
          1 0 6 -60 36    | 4  | 0.6444 3.100
          """)
  void realRootsAgreeWithPublishedDecimals(String coefficients, int digits, String expected) {
    List<String> found = new ArrayList<>();
    for (EnclosedRoot root : RootEnclosures.of(polynomial(coefficients), digits + 5)) {
      if (root.real()) {
        found.add(root.interval().significant(digits).orElse("?"));
      }
    }
    assertThat(found).hasSameSizeAs(expected.split(" "));
    for (int k = 0; k < found.size(); k++) {
      BigDecimal published = new BigDecimal(expected.split(" ")[k]);
      BigDecimal ours = new BigDecimal(found.get(k));
      assertThat(ours.setScale(published.scale(), RoundingMode.HALF_UP)).isEqualTo(published);
    }
  }

  /** Dickson sec 79 ex 1, p 99, prints the real part cut off: −1.0472757 it is. */
  @Test
  void complexRootsOfNewtonsCubicAgreeWithDickson() {
    List<EnclosedRoot> roots = RootEnclosures.of(Polynomial.ofDescending(1, 0, -2, -5), 15);
    assertThat(roots.get(1).disc().decimal(8)).contains("-1.0472757 + 1.1359399*i");
    assertThat(roots.get(2).disc()).isEqualTo(roots.get(1).disc().conjugate());
  }

  @ParameterizedTest
  @ValueSource(ints = {15, 50, 500})
  void chosenRationalRootsLieInTheirDiscsWithTheirMultiplicity(int digits) {
    SplittableRandom random = new SplittableRandom(SEED);
    for (int round = 0; round < (digits > 100 ? 8 : 60); round++) {
      Map<Rational, Integer> chosen = new TreeMap<>();
      int count = random.nextInt(1, 9);
      for (int k = 0; k < count; k++) {
        chosen.merge(Rational.of(random.nextInt(-20, 21), random.nextInt(1, 9)), 1, Integer::sum);
      }
      List<Rational> all = new ArrayList<>();
      chosen.forEach((root, times) -> all.addAll(Collections.nCopies(times, root)));
      List<EnclosedRoot> roots =
          RootEnclosures.of(
              Polynomial.withRoots(all).times(Rational.of(random.nextInt(1, 50), 7)), digits);
      assertThat(roots).as("seed %d, roots %s", SEED, all).hasSameSizeAs(chosen.keySet());
      int place = 0;
      for (Map.Entry<Rational, Integer> entry : chosen.entrySet()) {
        EnclosedRoot root = roots.get(place++);
        assertThat(root.real()).isTrue();
        assertThat(root.interval().contains(entry.getKey())).as("seed %d", SEED).isTrue();
        assertThat(root.multiplicity()).isEqualTo(entry.getValue());
        assertRadius(root, digits);
      }
    }
  }

  @Test
  void chosenGaussianRootsLieInTheirDiscs() {
    SplittableRandom random = new SplittableRandom(SEED);
    for (int round = 0; round < 60; round++) {
      Map<List<Integer>, Integer> chosen = new TreeMap<>(Comparator.comparing(List::toString));
      Polynomial product = Polynomial.ONE;
      int count = random.nextInt(1, 6);
      for (int k = 0; k < count; k++) {
        int x = random.nextInt(-6, 7);
        int y = random.nextInt(1, 7);
        chosen.merge(List.of(x, y), 1, Integer::sum);
        product = product.times(Polynomial.ofDescending(1, -2 * x, x * x + y * y));
      }
      List<EnclosedRoot> roots = RootEnclosures.of(product, 15);
      assertThat(roots).as("seed %d", SEED).hasSize(2 * chosen.size());
      chosen.forEach(
          (place, times) -> {
            List<EnclosedRoot> holding =
                roots.stream()
                    .filter(
                        r ->
                            r.disc().contains(Rational.of(place.get(0)), Rational.of(place.get(1))))
                    .toList();
            assertThat(holding).as("seed %d", SEED).hasSize(1);
            assertThat(holding.get(0).multiplicity()).isEqualTo(times);
            assertThat(holding.get(0).real()).isFalse();
          });
    }
  }

  @ParameterizedTest
  @CsvSource({"3,15", "5,15", "12,15", "30,15", "12,50", "30,50", "12,500", "30,500"})
  void sumsOverTheDiscsContainTheExactPowerSums(int degree, int digits) {
    Polynomial polynomial = random(degree, SEED + degree);
    List<EnclosedRoot> roots = RootEnclosures.of(polynomial, digits);
    List<Rational> exact = powerSumsByNewton(polynomial, 6);
    for (int k = 1; k <= 6; k++) {
      ComplexBall sum = ComplexBall.ZERO;
      for (EnclosedRoot root : roots) {
        ComplexBall power = root.disc().power(k);
        sum = sum.plus(power.times(ComplexBall.exact(root.multiplicity())));
      }
      assertThat(sum.contains(exact.get(k))).as("S_%d, seed %d", k, SEED).isTrue();
      assertThat(sum.radius().top()).isLessThan(-(digits * 3) + 6 * 5 + 20);
    }
  }

  @Test
  void discsAreDisjointAndInTheStatedOrder() {
    for (int degree = 1; degree <= 24; degree++) {
      List<EnclosedRoot> roots = RootEnclosures.of(random(degree, SEED * 31 + degree), 15);
      for (int i = 0; i < roots.size(); i++) {
        for (int j = 0; j < i; j++) {
          assertThat(roots.get(i).disc().overlaps(roots.get(j).disc())).isFalse();
        }
      }
      for (int i = 1; i < roots.size(); i++) {
        EnclosedRoot before = roots.get(i - 1);
        EnclosedRoot root = roots.get(i);
        assertThat(root.real() && !before.real()).isFalse();
        if (root.real()) {
          assertThat(before.disc().realCentre()).isLessThan(root.disc().realCentre());
        } else if (root.disc().imaginaryCentre().signum() < 0) {
          assertThat(root.disc()).isEqualTo(before.disc().conjugate());
        }
      }
    }
  }

  /** Wilkinson 1959: a change in the last bit of a coefficient moves the roots far apart. */
  @Test
  void rootsOfWilkinsonsPolynomialAreTheWholeNumbers() {
    Polynomial polynomial =
        Polynomial.withRoots(IntStream.rangeClosed(1, 20).mapToObj(Rational::of).toList());
    assertThat(polynomial.coefficient(19)).isEqualTo(Rational.of(-210));
    assertThat(polynomial.coefficient(18)).isEqualTo(Rational.of(20615));
    assertThat(polynomial.coefficient(0)).isEqualTo(Rational.of(2432902008176640000L));
    List<EnclosedRoot> roots = RootEnclosures.of(polynomial, 15);
    assertThat(roots).hasSize(20);
    for (int k = 1; k <= 20; k++) {
      assertThat(roots.get(k - 1).real()).isTrue();
      assertThat(roots.get(k - 1).interval().contains(Rational.of(k))).isTrue();
    }
  }

  /** Wilkinson's own change, −210·x^19 to −(210 + 2^−23)·x^19, leaves ten real roots. */
  @Test
  void theSmallestChangeOfWilkinsonsPolynomialMakesTenRootsComplex() {
    Polynomial polynomial =
        Polynomial.withRoots(IntStream.rangeClosed(1, 20).mapToObj(Rational::of).toList())
            .minus(Polynomial.monomial(Rational.of(1, 1 << 23), 19));
    List<EnclosedRoot> roots = RootEnclosures.of(polynomial, 15);
    assertThat(roots).filteredOn(EnclosedRoot::real).hasSize(10);
    // Wilkinson, Rounding Errors in Algebraic Processes, 1963 (from memory): 16.7307 ± 2.8126i.
    assertThat(roots)
        .extracting(root -> root.disc().decimal(5).orElse("?"))
        .contains("16.731 + 2.8126*i");
  }

  /** Mignotte's polynomials x^n − 2(ax − 1)² have two roots extremely near to 1/a. */
  @ParameterizedTest
  @CsvSource({"5,10", "10,1000", "20,100", "31,50"})
  void twoRootsOfMignottesPolynomialAreToldApart(int degree, int a) {
    Polynomial polynomial =
        Polynomial.monomial(Rational.ONE, degree)
            .minus(Polynomial.ofDescending(a, -1).power(2).times(Rational.TWO));
    List<EnclosedRoot> roots = RootEnclosures.of(polynomial, 15);
    assertThat(roots).hasSize(degree);
    Rational near = Rational.of(1, a);
    List<EnclosedRoot> pair =
        roots.stream()
            .filter(EnclosedRoot::real)
            .filter(
                root ->
                    root.disc()
                            .realCentre()
                            .toRational()
                            .minus(near)
                            .absolute()
                            .compareTo(near.times(Rational.of(1, 100)))
                        < 0)
            .toList();
    assertThat(pair).hasSize(2);
    assertThat(pair.get(0).interval().high().toRational()).isLessThan(near);
    assertThat(pair.get(1).interval().low().toRational()).isGreaterThan(near);
  }

  @ParameterizedTest
  @CsvSource({"2,2", "7,-3", "30,5", "64,-1", "100,1"})
  void rootsOfUnityTimesARootLieOnACircle(int degree, int constant) {
    Polynomial polynomial =
        Polynomial.monomial(Rational.ONE, degree).plus(Polynomial.constant(Rational.of(constant)));
    List<EnclosedRoot> roots = RootEnclosures.of(polynomial, 20);
    assertThat(roots).hasSize(degree);
    for (EnclosedRoot root : roots) {
      assertThat(root.disc().absolute(100).power(degree).contains(Rational.of(Math.abs(constant))))
          .isTrue();
      assertThat(root.disc().power(degree).contains(Rational.of(-constant))).isTrue();
    }
  }

  @Test
  void rootsOfWidelyDifferentSizeAreFound() {
    Polynomial polynomial =
        Polynomial.withRoots(
            List.of(
                Rational.of(10).power(400),
                Rational.of(10).power(-400),
                Rational.of(-7),
                Rational.of(3, 11)));
    List<EnclosedRoot> roots = RootEnclosures.of(polynomial, 15);
    assertThat(roots).hasSize(4).allMatch(EnclosedRoot::real);
    assertThat(roots.get(0).interval().contains(Rational.of(-7))).isTrue();
    assertThat(roots.get(1).interval().contains(Rational.of(10).power(-400))).isTrue();
    assertThat(roots.get(2).interval().contains(Rational.of(3, 11))).isTrue();
    assertThat(roots.get(3).interval().contains(Rational.of(10).power(400))).isTrue();
  }

  @Test
  void coefficientsOfThousandsOfDigitsDoNotOverflow() {
    Rational huge = Rational.of(10).power(3000).plus(Rational.ONE);
    Polynomial polynomial = Polynomial.ofDescending(1, 3, -2, -5).times(huge);
    assertThat(RootEnclosures.of(polynomial.plus(Polynomial.ONE), 10))
        .hasSize(3)
        .allMatch(EnclosedRoot::real);
  }

  @Test
  void hardwareRootsOfAnotherLibraryLieByTheDiscs() {
    for (int degree = 2; degree <= 15; degree++) {
      Polynomial polynomial = random(degree, SEED + 100 + degree);
      double[] ascending = new double[degree + 1];
      for (int k = 0; k <= degree; k++) {
        ascending[k] = polynomial.numerator(k).doubleValue();
      }
      Complex[] others = new LaguerreSolver().solveAllComplex(ascending, 0);
      List<EnclosedRoot> roots = RootEnclosures.of(polynomial, 15);
      for (EnclosedRoot root : roots) {
        double x = root.disc().realCentre().toRational().numerator().doubleValue();
        double re = x / root.disc().realCentre().toRational().denominator().doubleValue();
        double im =
            root.disc().imaginaryCentre().toRational().numerator().doubleValue()
                / root.disc().imaginaryCentre().toRational().denominator().doubleValue();
        double nearest = Double.MAX_VALUE;
        for (Complex other : others) {
          nearest = Math.min(nearest, other.subtract(new Complex(re, im)).norm());
        }
        assertThat(nearest).as("seed %d degree %d", SEED, degree).isLessThan(1e-6);
      }
    }
  }

  @Test
  void manyDigitsAgreeWithAnotherLibrary() {
    org.apfloat.Apfloat fifth = org.apfloat.ApfloatMath.root(new org.apfloat.Apfloat(7, 520), 5);
    EnclosedRoot root = RootEnclosures.of(Polynomial.ofDescending(1, 0, 0, 0, 0, -7), 510).get(0);
    assertThat(root.interval().significant(500).orElseThrow())
        .startsWith(fifth.toString(true).substring(0, 500));
  }

  @Test
  void aConstantAndOutOfRangeRequestsAreRefused() {
    assertThatThrownBy(() -> RootEnclosures.of(Polynomial.constant(Rational.of(7)), 15))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("7");
    assertThatThrownBy(() -> RootEnclosures.of(Polynomial.monomial(Rational.ONE, 201), 15))
        .hasMessageContaining("201");
    assertThatThrownBy(() -> RootEnclosures.of(Polynomial.X, 0)).hasMessageContaining("0");
  }

  @Test
  void theSameRequestGivesTheSameDiscs() {
    Polynomial polynomial = random(17, SEED);
    assertThat(RootEnclosures.of(polynomial, 40)).isEqualTo(RootEnclosures.of(polynomial, 40));
  }

  private static void assertRadius(EnclosedRoot root, int digits) {
    Rational allowed =
        root.disc().realCentre().toRational().absolute().times(Rational.of(10).power(-digits));
    assertThat(root.disc().radius().toRational()).isLessThanOrEqualTo(allowed);
  }

  private static Polynomial polynomial(String descending) {
    long[] coefficients =
        Arrays.stream(descending.trim().split(" ")).mapToLong(Long::parseLong).toArray();
    return Polynomial.ofDescending(coefficients);
  }

  private static Polynomial random(int degree, long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    long[] descending = new long[degree + 1];
    descending[0] = random.nextInt(1, 10);
    for (int k = 1; k <= degree; k++) {
      descending[k] = random.nextInt(-9, 10);
    }
    return Polynomial.ofDescending(descending);
  }

  /** Newton's identities on the coefficients: nothing here knows a root. */
  private static List<Rational> powerSumsByNewton(Polynomial polynomial, int last) {
    int n = polynomial.degree();
    Polynomial monic = polynomial.monic();
    List<Rational> sums = new ArrayList<>(List.of(Rational.of(n)));
    for (int k = 1; k <= last; k++) {
      Rational sum = Rational.ZERO;
      for (int i = 1; i < k && i <= n; i++) {
        sum = sum.minus(monic.coefficient(n - i).times(sums.get(k - i)));
      }
      if (k <= n) {
        sum = sum.minus(monic.coefficient(n - k).times(k));
      }
      sums.add(sum);
    }
    return sums;
  }
}
