package rootwright.composing.scan.candidate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.composing.scan.Expressions;

class CompiledExpressionTest {

  private static final long SEED = Long.getLong("rootwright.seed", 20240611L);

  @Test
  void publishedSumOfSquaresComesOutOfTheCoefficients() {
    // 2x^3 - 6x^2 + x + 5: e1 = 3, e2 = 1/2, so the sum of the squares is 9 - 1 = 8.
    assertThat(Expressions.sumOfSquares(3).valueAt(new long[] {5, 1, -6, 2}))
        .contains(Rational.of(8));
  }

  @Test
  void valueEqualsTheExpressionAtTheElementarySymmetricValues() {
    SplittableRandom random = new SplittableRandom(SEED);
    for (int round = 0; round < 2_000; round++) {
      int degree = 2 + random.nextInt(4);
      MultivariatePolynomial above = randomPolynomial(random, degree);
      MultivariatePolynomial below = randomPolynomial(random, degree);
      if (below.isZero()) {
        continue;
      }
      long[] ascending = new long[degree + 1];
      for (int k = 0; k <= degree; k++) {
        ascending[k] = random.nextLong(-9, 10);
      }
      ascending[degree] = random.nextLong(1, 10) * (random.nextBoolean() ? 1 : -1);
      List<Rational> elementary = new ArrayList<>();
      for (int k = 1; k <= degree; k++) {
        Rational ratio = Rational.of(ascending[degree - k], ascending[degree]);
        elementary.add(k % 2 == 0 ? ratio : ratio.negate());
      }
      Rational divisor = below.at(elementary);
      Optional<Rational> expected =
          divisor.isZero() ? Optional.empty() : Optional.of(above.at(elementary).over(divisor));
      assertThat(CompiledExpression.of(degree, above, below).valueAt(ascending))
          .as("seed %d, round %d", SEED, round)
          .isEqualTo(expected);
    }
  }

  @Test
  void rowValuesEqualSingleValues() {
    SplittableRandom random = new SplittableRandom(SEED);
    for (int round = 0; round < 300; round++) {
      int degree = 2 + random.nextInt(3);
      CompiledExpression expression =
          CompiledExpression.of(degree, randomPolynomial(random, degree));
      CoefficientBox box = CoefficientBox.upTo(degree, 6);
      RowForm along = new RowForm(expression.numerator(), box);
      Row row = new Row(box);
      long[] ascending = new long[degree + 1];
      for (int times = 0; times < 20; times++) {
        row.moveTo(random.nextLong(box.rows()));
        assertThat(along.fits(row)).isTrue();
        // A short prefix first: the stepping must continue where it stopped.
        along.values(row, 1 + random.nextInt(row.length()));
        long[] values = along.values(row);
        for (int place = 0; place < row.length(); place++) {
          row.copyTo(place, ascending);
          assertThat(values[place])
              .as("seed %d, round %d", SEED, round)
              .isEqualTo(expression.numerator().at(ascending).longValueExact());
        }
      }
    }
  }

  @Test
  void valuesBeyondSixtyFourBitsAreExact() {
    CompiledExpression cubes = Expressions.sumOfCubes(3);
    long big = 3_000_000_000_000L;
    // e1 = big, e2 = e3 = 0: the sum of the cubes is big^3, a number of 125 bits.
    assertThat(cubes.valueAt(new long[] {0, 0, -big, 1})).contains(Rational.of(big).power(3));
    CoefficientBox box =
        CoefficientBox.monicUpTo(3, 1).with(2, new CoefficientRange(-big, -big + 1));
    Row row = new Row(box);
    row.moveTo(0);
    assertThat(new RowForm(cubes.numerator(), box).fits(row)).isFalse();
  }

  @Test
  void boxTooLargeToProveStillProvesItsSmallRows() {
    CompiledExpression cubes = Expressions.sumOfCubes(3);
    CoefficientBox box = CoefficientBox.monicUpTo(3, 1).with(2, CoefficientRange.upTo(3_000_000));
    RowForm along = new RowForm(cubes.numerator(), box);
    Row row = new Row(box);
    row.moveTo(0);
    assertThat(row.coefficient(2)).isEqualTo(-3_000_000);
    assertThat(along.fits(row)).isFalse();
    row.moveTo(box.rows() / 2);
    assertThat(Math.abs(row.coefficient(2))).isLessThan(5);
    assertThat(along.fits(row)).isTrue();
  }

  @Test
  void commonPowersOfTheLeadAreTakenOut() {
    // e2/e3 = -a1/a0, whatever the lead.
    CompiledExpression reciprocals =
        CompiledExpression.of(3, Expressions.elementary(2), Expressions.elementary(3));
    assertThat(reciprocals.numerator().polynomial().degreeIn(3)).isZero();
    assertThat(reciprocals.denominator().polynomial().degreeIn(3)).isZero();
    assertThat(reciprocals.isAlwaysDefined()).isFalse();
    assertThat(reciprocals.valueAt(new long[] {0, 4, 1, 2})).isEmpty();
    assertThat(Expressions.sumOfSquares(3).isAlwaysDefined()).isTrue();
  }

  @Test
  void parityTellsWhatTheMirrorDoes() {
    assertThat(Expressions.sumOfSquares(4).parity()).isEqualTo(Parity.EVEN);
    assertThat(Expressions.sumOfCubes(4).parity()).isEqualTo(Parity.ODD);
    MultivariatePolynomial mixed = Expressions.elementary(1).plus(Expressions.elementary(2));
    assertThat(CompiledExpression.of(3, mixed).parity()).isEqualTo(Parity.NEITHER);
    assertThat(
            CompiledExpression.of(3, Expressions.elementary(1), Expressions.elementary(3)).parity())
        .isEqualTo(Parity.EVEN);
  }

  @Test
  void elementaryPolynomialAboveTheDegreeIsRefused() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> CompiledExpression.of(3, Expressions.elementary(4)))
        .withMessageContaining("e4");
  }

  private static MultivariatePolynomial randomPolynomial(SplittableRandom random, int degree) {
    MultivariatePolynomial sum = MultivariatePolynomial.ZERO;
    for (int term = random.nextInt(5); term >= 0; term--) {
      Rational factor = Rational.of(random.nextLong(-9, 10), random.nextLong(1, 5));
      MultivariatePolynomial product = MultivariatePolynomial.constant(factor);
      for (int k = random.nextInt(4); k > 0; k--) {
        product = product.times(Expressions.elementary(1 + random.nextInt(degree)));
      }
      sum = sum.plus(product);
    }
    return sum;
  }
}
