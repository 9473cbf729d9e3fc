package rootwright.algebra.symmetric;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.polynomial.RationalFunction;
import rootwright.algebra.symmetric.QuotientRecognition.NotSymmetric;
import rootwright.algebra.symmetric.QuotientRecognition.Symmetric;
import rootwright.algebra.symmetric.QuotientRecognition.TooLarge;

class SymmetricQuotientTest {

  private static final RationalFunction R = RationalFunction.of(MultivariatePolynomial.unknown(0));
  private static final RationalFunction S = RationalFunction.of(MultivariatePolynomial.unknown(1));
  private static final RationalFunction T = RationalFunction.of(MultivariatePolynomial.unknown(2));
  private static final RationalFunction ONE = RationalFunction.ONE;

  private static SymmetricQuotient symmetric(RationalFunction function, int n) {
    QuotientRecognition found = SymmetricQuotient.recognise(function, n);
    assertThat(found).isInstanceOf(Symmetric.class);
    return ((Symmetric) found).quotient();
  }

  private static Rational at(RationalFunction function, List<Rational> point) {
    return function.numerator().at(point).over(function.denominator().at(point));
  }

  @Test
  void sumsOfReciprocalsAreReadAndEvaluated() {
    // 1/r + 1/s + 1/t = e₂/e₃, for x³ − 6x² + 11x − 6: 11/6.
    RationalFunction sum = ONE.over(R).plus(ONE.over(S)).plus(ONE.over(T));
    assertThat(symmetric(sum, 3).at(Polynomial.ofDescending(1, -6, 11, -6)))
        .contains(Rational.of(11, 6));
  }

  @Test
  void aZeroDenominatorGivesNoValue() {
    RationalFunction sum = ONE.over(R).plus(ONE.over(S));
    assertThat(symmetric(sum, 2).at(Polynomial.ofDescending(1, -1, 0))).isEmpty();
  }

  @Test
  void aQuotientWithoutSymmetricPartsIsMadeSymmetric() {
    // (r² − s²)/(r − s) = r + s, and r²/(r(r + s)) + s/(r + s) = 1.
    RationalFunction difference = R.power(2).minus(S.power(2)).over(R.minus(S));
    assertThat(symmetric(difference, 2).at(Polynomial.ofDescending(1, -5, 6)))
        .contains(Rational.of(5));
    RationalFunction one = R.power(2).over(R.times(R.plus(S))).plus(S.over(R.plus(S)));
    assertThat(symmetric(one, 2).at(Polynomial.ofDescending(2, -5, 3))).contains(Rational.ONE);
  }

  @Test
  void symmetricSumsOfRandomQuotientsKeepTheirValue() {
    SplittableRandom random = Samples.random();
    for (int trial = 0; trial < 30; trial++) {
      RationalFunction shift = RationalFunction.of(Rational.of(random.nextInt(1, 8), 3));
      RationalFunction sum = RationalFunction.ZERO;
      for (RationalFunction root : List.of(R, S, T)) {
        sum = sum.plus(root.plus(shift).over(root.power(2).plus(shift)));
      }
      List<Rational> roots = Samples.point(random, 3);
      assertThat(symmetric(sum, 3).at(Polynomial.withRoots(roots)))
          .as("seed %d, trial %d", Samples.SEED, trial)
          .contains(at(sum, roots));
    }
  }

  @Test
  void aCyclicSumOfRatiosIsNotSymmetricAndTheExchangeShowsIt() {
    RationalFunction cyclic = R.over(S).plus(S.over(T)).plus(T.over(R));
    QuotientRecognition found = SymmetricQuotient.recognise(cyclic, 3);
    assertThat(found).isInstanceOf(NotSymmetric.class);
    NotSymmetric witness = (NotSymmetric) found;
    List<Rational> point = List.of(Rational.ONE, Rational.TWO, Rational.of(5));
    List<Rational> exchanged = new ArrayList<>(point);
    exchanged.set(witness.first(), point.get(witness.second()));
    exchanged.set(witness.second(), point.get(witness.first()));
    assertThat(at(cyclic, exchanged)).isNotEqualTo(at(cyclic, point));
    assertThat(SymmetricQuotient.recognise(R.over(S), 2)).isInstanceOf(NotSymmetric.class);
  }

  @Test
  void whatIsTooLargeSaysSo() {
    // ((r_1 + 2r_2 + … + 8r_8)^2 in disguise: the same factor above and below hides a constant.
    MultivariatePolynomial mixed = MultivariatePolynomial.ONE;
    for (int k = 0; k < 8; k++) {
      mixed = mixed.plus(MultivariatePolynomial.unknown(k).times(Rational.of(k + 1L)));
    }
    QuotientRecognition found = SymmetricQuotient.recognise(new RationalFunction(mixed, mixed), 8);
    assertThat(found).isInstanceOf(TooLarge.class);
    assertThat(((TooLarge) found).why()).contains("120");
  }
}
