package rootwright.algebra.real;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rootwright.algebra.enclosure.EnclosedRoot;
import rootwright.algebra.enclosure.RootEnclosures;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;

class RealRootsTest {

  private static final long SEED = Long.getLong("rootwright.seed", 3L);

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          # Dickson, First Course in the Theory of Equations, 1922: sec 69 ex 1, p 78
          1 0 2 20          | -3 -2
          # sec 70 ex 1, ex 2, ex 4, ex 5, p 79
          1 3 -2 -5         | -4 -3, -2 -1, 1 2
          1 0 12 5 -9       | -2 -1, 0 1
          3 0 -6 8 -3       | -2 -1, 0 1
          1 6 0 0 -30 -12 -9 | -7 -6, 1 2
          # sec 73 ex 1, p 85
          1 -1 -2 1         | -2 -1, 0 1, 1 2
          """)
  void rootsLieInTheIntervalsThatDicksonPrints(String coefficients, String intervals) {
    Polynomial polynomial = polynomial(coefficients);
    SturmSequence sturm = SturmSequence.of(polynomial);
    List<IsolatedRoot> roots = RealRootIsolation.of(polynomial);
    String[] printed = intervals.split(",");
    assertThat(roots).hasSameSizeAs(printed);
    assertThat(sturm.count()).isEqualTo(printed.length);
    for (int k = 0; k < printed.length; k++) {
      String[] ends = printed[k].trim().split(" ");
      Rational low = Rational.parse(ends[0]);
      Rational high = Rational.parse(ends[1]);
      assertThat(sturm.countIn(low, high)).isEqualTo(1);
      assertThat(roots.get(k).compareTo(low)).isPositive();
      assertThat(roots.get(k).compareTo(high)).isNegative();
    }
  }

  @ParameterizedTest
  @CsvSource({
    // Dickson, 1922: sec 45 ex 2 and ex 4, p 48; sec 50 ex 1, p 52; sec 72 ex 4, p 83
    "1 0 -15 4, 3, 3",
    "1 4 -11 6, 2, 3",
    "1 -3 1 3 -2, 3, 4",
    "1 0 -1 -2 2, 1, 2",
    "7, 0, 0",
    "1 0 1, 0, 0"
  })
  void realRootsAreCountedOnceAndWithMultiplicity(
      String coefficients, int distinct, int withMultiplicity) {
    assertThat(RealRootCount.of(polynomial(coefficients)))
        .isEqualTo(new RealRootCount(distinct, withMultiplicity));
  }

  @Test
  void sturmCountsChosenRootsInEveryInterval() {
    SplittableRandom random = new SplittableRandom(SEED);
    for (int round = 0; round < 150; round++) {
      TreeSet<Rational> chosen = new TreeSet<>();
      List<Rational> all = new ArrayList<>();
      for (int k = random.nextInt(1, 7); k > 0; k--) {
        Rational root = Rational.of(random.nextInt(-12, 13), random.nextInt(1, 4));
        chosen.add(root);
        all.add(root);
      }
      Polynomial polynomial =
          Polynomial.withRoots(all)
              .times(Polynomial.ofDescending(1, 1, 1))
              .times(Rational.of(-3, 5));
      SturmSequence sturm = SturmSequence.of(polynomial);
      assertThat(sturm.count()).as("seed %d", SEED).isEqualTo(chosen.size());
      for (int low = -13; low <= 12; low++) {
        Rational from = Rational.of(low);
        Rational to = Rational.of(low + random.nextInt(0, 6));
        int inside = chosen.subSet(from, false, to, true).size();
        assertThat(sturm.countIn(from, to)).as("seed %d", SEED).isEqualTo(inside);
        assertThat(sturm.countUpTo(to)).isEqualTo(chosen.headSet(to, true).size());
        assertThat(sturm.countAbove(from)).isEqualTo(chosen.tailSet(from, false).size());
      }
      List<IsolatedRoot> isolated = RealRootIsolation.of(polynomial);
      assertThat(isolated).hasSameSizeAs(chosen);
      int place = 0;
      for (Rational root : chosen) {
        IsolatedRoot found = isolated.get(place++);
        assertThat(found.compareTo(root)).as("seed %d", SEED).isZero();
        assertThat(found.multiplicity()).isEqualTo((int) all.stream().filter(root::equals).count());
      }
    }
  }

  @Test
  void bisectionSturmAndEnclosuresCountTheSame() {
    SplittableRandom random = new SplittableRandom(SEED);
    for (int round = 0; round < 120; round++) {
      long[] descending = new long[random.nextInt(2, 14)];
      for (int k = 0; k < descending.length; k++) {
        descending[k] = random.nextInt(-6, 7);
      }
      descending[0] = random.nextInt(1, 7);
      Polynomial polynomial = Polynomial.ofDescending(descending);
      List<IsolatedRoot> isolated = RealRootIsolation.of(polynomial);
      List<EnclosedRoot> enclosed =
          RootEnclosures.of(polynomial, 15).stream().filter(EnclosedRoot::real).toList();
      assertThat(isolated).as("seed %d: %s", SEED, polynomial).hasSameSizeAs(enclosed);
      assertThat(SturmSequence.of(polynomial).count()).isEqualTo(isolated.size());
      for (int k = 0; k < isolated.size(); k++) {
        IsolatedRoot fine = isolated.get(k).refinedTo(Rational.of(1, 1 << 20));
        assertThat(enclosed.get(k).interval().low().toRational()).isLessThanOrEqualTo(fine.high());
        assertThat(enclosed.get(k).interval().high().toRational())
            .isGreaterThanOrEqualTo(fine.low());
        assertThat(isolated.get(k).multiplicity()).isEqualTo(enclosed.get(k).multiplicity());
      }
      SignChanges rule = SignChanges.of(polynomial);
      int positive =
          isolated.stream()
              .filter(root -> root.compareTo(Rational.ZERO) > 0)
              .mapToInt(IsolatedRoot::multiplicity)
              .sum();
      int negative =
          isolated.stream()
              .filter(root -> root.compareTo(Rational.ZERO) < 0)
              .mapToInt(IsolatedRoot::multiplicity)
              .sum();
      assertThat(rule.possiblePositive()).contains(positive);
      assertThat(rule.possibleNegative()).contains(negative);
    }
  }

  @Test
  void theSignOfAnotherPolynomialAtARootIsExact() {
    IsolatedRoot root2 = RealRootIsolation.of(Polynomial.ofDescending(1, 0, -2)).get(1);
    // x³ − 2x vanishes at √2, though it is another polynomial.
    assertThat(root2.signOf(Polynomial.ofDescending(1, 0, -2, 0))).isZero();
    // 239/169 is a convergent of √2 from above, 577/408 from above, 99/70 above, 41/29 below.
    assertThat(root2.compareTo(Rational.of(577, 408))).isNegative();
    assertThat(root2.compareTo(Rational.of(41, 29))).isPositive();
    assertThat(root2.signOf(Polynomial.ofDescending(1, 0, 0, 0, -4))).isZero();
    assertThat(root2.signOf(Polynomial.ZERO)).isZero();
    assertThat(root2.signOf(Polynomial.constant(Rational.of(-3)))).isNegative();
  }

  @Test
  void rootsOfDifferentPolynomialsAreCompared() {
    IsolatedRoot root2 = RealRootIsolation.of(Polynomial.ofDescending(1, 0, -2)).get(1);
    IsolatedRoot same = RealRootIsolation.of(Polynomial.ofDescending(1, -1, -2, 2)).get(2);
    IsolatedRoot cube = RealRootIsolation.of(Polynomial.ofDescending(1, 0, 0, -3)).get(0);
    assertThat(root2.compareTo(same)).isZero();
    assertThat(root2.compareTo(cube)).isNegative();
    assertThat(cube.compareTo(root2)).isPositive();
  }

  @Test
  void signChangesOfAnExample() {
    // Dickson sec 70 ex 5: +,+,−,−,− and, mirrored, +,−,−,+,−
    SignChanges rule = SignChanges.of(Polynomial.ofDescending(1, 6, 0, 0, -30, -12, -9));
    assertThat(rule).isEqualTo(new SignChanges(1, 3));
    assertThat(rule.possibleNegative()).containsExactly(3, 1);
  }

  @Test
  void theZeroPolynomialAndBadIntervalsAreRefused() {
    assertThatThrownBy(() -> SturmSequence.of(Polynomial.ZERO))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> SignChanges.of(Polynomial.ZERO))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> RealRootIsolation.of(Polynomial.ZERO))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> SturmSequence.of(Polynomial.X).countIn(Rational.ONE, Rational.ZERO))
        .hasMessageContaining("from 1 to 0");
    assertThatThrownBy(() -> new IsolatedRoot(Polynomial.X, Rational.ONE, Rational.TWO, 1))
        .hasMessageContaining("no change of sign");
  }

  private static Polynomial polynomial(String descending) {
    return Polynomial.ofDescending(
        Arrays.stream(descending.trim().split(" ")).mapToLong(Long::parseLong).toArray());
  }
}
