package rootwright.algebra.value;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import rootwright.algebra.notation.PlainWriter;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;

class QuarticSurdsTest {

  private static final long SEED = Long.getLong("rootwright.seed", 20261125L);

  private static List<String> written(long... descending) {
    return ExactValues.rootsOf(Polynomial.ofDescending(descending)).stream()
        .map(root -> PlainWriter.write(root.value().toFormula()))
        .toList();
  }

  @Test
  void rootsOfTextbookQuarticsAreSumsOfSquareRoots() {
    assertThat(written(1, 0, -10, 0, 1))
        .containsExactly(
            "-(sqrt(2) + sqrt(3))", "sqrt(2) - sqrt(3)", "sqrt(3) - sqrt(2)", "sqrt(2) + sqrt(3)");
    assertThat(written(1, 0, 0, 0, 1))
        .containsExactly(
            "(-sqrt(2) + sqrt(2)*i)/2",
            "-(sqrt(2) + sqrt(2)*i)/2",
            "(sqrt(2) + sqrt(2)*i)/2",
            "(sqrt(2) - sqrt(2)*i)/2");
    assertThat(written(1, 0, -4, 0, 1)).contains("(sqrt(6) - sqrt(2))/2");
    assertThat(written(1, 0, -1, 0, 1)).contains("(sqrt(3) + i)/2");
  }

  @Test
  void aQuarticThatNeedsARootUnderARootKeepsItsPlace() {
    assertThat(written(1, 0, -5, 0, 5)).contains("root(x^4 - 5*x^2 + 5, 1)");
    assertThat(written(1, 0, 0, -1, -1)).contains("root(x^4 - x - 1, 2)");
  }

  /** The square of each sum, worked with, satisfies the polynomial exactly. */
  @Test
  void everySumIsARootOfItsPolynomial() {
    SplittableRandom random = new SplittableRandom(SEED);
    int found = 0;
    for (int trial = 0; trial < 200; trial++) {
      Rational h = Rational.of(random.nextLong(-3, 4), random.nextLong(1, 3));
      SurdSum alpha =
          SurdSum.squareRoot(Rational.of(random.nextLong(-9, 10), random.nextLong(1, 4)));
      SurdSum beta =
          SurdSum.squareRoot(Rational.of(random.nextLong(-9, 10), random.nextLong(1, 4)));
      SurdSum number = SurdSum.of(h).plus(alpha).plus(beta);
      Polynomial polynomial = number.minimalPolynomial().primitive();
      if (polynomial.degree() == 4) {
        found++;
        for (int index = 0; index < 4; index++) {
          SurdSum sum = new RootOf(polynomial, index).inSurds().orElseThrow();
          SurdSum value = SurdSum.ZERO;
          for (int k = 4; k >= 0; k--) {
            value = value.times(sum).plus(SurdSum.of(polynomial.coefficient(k)));
          }
          assertThat(value).as("%s, seed %d", polynomial, SEED).isEqualTo(SurdSum.ZERO);
        }
      }
    }
    assertThat(found).isGreaterThan(50);
  }
}
