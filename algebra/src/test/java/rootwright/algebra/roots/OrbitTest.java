package rootwright.algebra.roots;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigInteger;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.algebra.polynomial.RationalFunction;

class OrbitTest {

  private static RationalFunction unknown(int number) {
    return RationalFunction.of(MultivariatePolynomial.unknown(number));
  }

  private static RationalFunction number(long value) {
    return RationalFunction.of(Rational.of(value));
  }

  private static BigInteger size(RationalFunction expression, int names) {
    return Orbit.of(expression, names).size();
  }

  @Test
  void usualOrbitsHaveTheirKnownSizes() {
    RationalFunction pairs = unknown(0).times(unknown(1)).plus(unknown(2).times(unknown(3)));
    assertThat(size(pairs, 4)).isEqualTo(3);
    assertThat(size(pairs, 8)).isEqualTo(210);
    assertThat(size(unknown(0), 7)).isEqualTo(7);
    assertThat(size(unknown(0).minus(unknown(1)), 6)).isEqualTo(30);
    assertThat(size(unknown(0).plus(unknown(1)), 12)).isEqualTo(66);
    assertThat(size(number(5), 9)).isEqualTo(1);
  }

  @Test
  void symmetryIsSeenInSumsProductsAndQuotients() {
    RationalFunction sum = unknown(0).plus(unknown(1)).plus(unknown(2));
    RationalFunction product = unknown(0).times(unknown(1)).times(unknown(2));
    assertThat(Orbit.of(sum.over(product), 3).isSymmetric()).isTrue();
    assertThat(Orbit.of(sum.over(product), 4).isSymmetric()).isFalse();
  }

  @Test
  void commonFactorsAreTakenOutBeforeImagesAreCompared() {
    RationalFunction r = unknown(0);
    RationalFunction s = unknown(1);
    RationalFunction quotient = r.power(2).minus(s.power(2)).over(r.minus(s));
    assertThat(Orbit.of(quotient, 3).images())
        .containsExactlyInAnyOrder(r.plus(s), r.plus(unknown(2)), s.plus(unknown(2)));
  }

  @Test
  void signsThatCancelBetweenNumeratorAndDenominatorAreOneImage() {
    RationalFunction ratio = unknown(0).minus(unknown(1)).over(unknown(2).minus(unknown(3)));
    assertThat(size(ratio, 4)).isEqualTo(12);
  }

  @Test
  void sizeIsCountedWithoutListing() {
    RationalFunction weights = number(0);
    for (int k = 0; k < 12; k++) {
      weights = weights.plus(unknown(k).times(number(k + 1)));
    }
    assertThat(size(weights, 12)).isEqualTo(479_001_600);
    RationalFunction necklace = number(0);
    for (int k = 0; k < 8; k++) {
      necklace = necklace.plus(unknown(k).times(unknown((k + 1) % 8)));
    }
    assertThat(size(necklace, 8)).isEqualTo(40_320 / 16);
    assertThatThrownBy(() -> Orbit.of(weightsOf(6), 6).images())
        .isInstanceOf(IllegalStateException.class)
        .hasMessageContaining("720");
  }

  private static RationalFunction weightsOf(int names) {
    RationalFunction weights = number(0);
    for (int k = 0; k < names; k++) {
      weights = weights.plus(unknown(k).times(number(k + 1)));
    }
    return weights;
  }

  @Test
  void listedImagesAreAllRenamings() {
    List<RationalFunction> expressions =
        List.of(
            unknown(0).over(unknown(1).plus(unknown(2))),
            unknown(0).power(2).times(unknown(1)).minus(unknown(2)),
            unknown(0).minus(unknown(1)).over(unknown(0).plus(unknown(1))),
            unknown(0).times(unknown(1)).plus(unknown(2).times(unknown(3))));
    for (RationalFunction expression : expressions) {
      Set<RationalFunction> images = new HashSet<>();
      renamings(4, new int[4], 0, images, expression.lowestTerms());
      assertThat(Orbit.of(expression, 4).images()).containsExactlyInAnyOrderElementsOf(images);
      int choices = expression.unknowns() == 2 ? 12 : 24;
      assertThat(new Stabilizer(expression.lowestTerms()).order())
          .isEqualTo(choices / images.size());
    }
  }

  private static void renamings(
      int names, int[] to, int placed, Set<RationalFunction> images, RationalFunction function) {
    if (placed == names) {
      images.add(function.rename(to).lowestTerms());
      return;
    }
    for (int image = 0; image < names; image++) {
      boolean free = true;
      for (int k = 0; k < placed; k++) {
        free &= to[k] != image;
      }
      if (free) {
        to[placed] = image;
        renamings(names, to, placed + 1, images, function);
      }
    }
  }

  @Test
  void theSizeOfAnOrbitOverManyNamesIsCountedByTheNamesThatOccur() {
    // 30·29: no renaming but the identity keeps r − s, and 28 names do not occur in it.
    assertThat(Orbit.of(unknown(0).minus(unknown(1)), 30).size()).isEqualTo(870);
    RationalFunction alternating = RationalFunction.ZERO;
    for (int k = 0; k < 12; k++) {
      alternating = k % 2 == 0 ? alternating.plus(unknown(k)) : alternating.minus(unknown(k));
    }
    // 12!/(6!·6!), by choosing the six that are added.
    assertThat(Orbit.of(alternating, 12).size()).isEqualTo(924);
    RationalFunction quotient = RationalFunction.of(Rational.ONE).over(alternating);
    assertThat(Orbit.of(quotient, 12).size()).isEqualTo(924);
  }
}
