package rootwright.algebra.roots;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.algebra.polynomial.Polynomial;

class RootTowerTest {

  private static final MultivariatePolynomial R = MultivariatePolynomial.unknown(0);
  private static final MultivariatePolynomial S = MultivariatePolynomial.unknown(1);
  private static final MultivariatePolynomial T = MultivariatePolynomial.unknown(2);

  @Test
  void normalFormKeepsEveryValueAndHasLowDegrees() {
    MultivariatePolynomial element =
        R.power(4).times(S.power(3)).plus(T.power(5).times(R)).minus(S.times(T));
    for (ChosenRoots chosen : ChosenRoots.all(4)) {
      int degree = chosen.roots().size();
      if (degree >= 3) {
        MultivariatePolynomial form = RootTower.of(chosen.polynomial(), 3).normalForm(element);
        for (int k = 0; k < 3; k++) {
          assertThat(form.degreeIn(k)).isLessThan(degree - k);
        }
        for (List<Rational> choice : chosen.choices(3)) {
          assertThat(form.at(choice)).as("%s", chosen).isEqualTo(element.at(choice));
        }
      }
    }
  }

  @Test
  void traceIsTheSumOverAllChoices() {
    MultivariatePolynomial element = R.power(3).times(S).plus(S.power(2)).minus(R);
    for (ChosenRoots chosen : ChosenRoots.all(4)) {
      if (chosen.roots().size() >= 2) {
        Rational sum =
            chosen.choices(2).stream().map(element::at).reduce(Rational.ZERO, Rational::plus);
        assertThat(RootTower.of(chosen.polynomial(), 2).trace(element))
            .as("%s", chosen)
            .isEqualTo(sum);
      }
    }
  }

  @Test
  void elementarySymmetricExpressionsAreTheCoefficients() {
    RootTower tower = RootTower.of(Polynomial.ofDescending(2, -6, 5, 7), 3);
    assertThat(tower.constant(R.plus(S).plus(T))).isEqualTo(Optional.of(Rational.of(3)));
    assertThat(tower.constant(R.times(S).plus(S.times(T)).plus(T.times(R))))
        .isEqualTo(Optional.of(Rational.of(5, 2)));
    assertThat(tower.constant(R.times(S).times(T))).isEqualTo(Optional.of(Rational.of(-7, 2)));
    assertThat(tower.constant(R.plus(S))).isEmpty();
  }

  /** For x² − x − 1: r² + s = (r + 1) + (1 − r) = 2 whichever root is r, though not symmetric. */
  @Test
  void expressionsThatAreNotSymmetricCanBeConstant() {
    RootTower tower = RootTower.of(Polynomial.ofDescending(1, -1, -1), 2);
    assertThat(tower.constant(R.power(2).plus(S))).isEqualTo(Optional.of(Rational.TWO));
  }

  @Test
  void inverseTimesTheElementIsOneOrSomeChoiceMakesItZero() {
    MultivariatePolynomial element =
        R.plus(S.times(Rational.TWO)).minus(MultivariatePolynomial.ONE);
    for (ChosenRoots chosen : ChosenRoots.all(4)) {
      if (chosen.roots().size() >= 2) {
        RootTower tower = RootTower.of(chosen.polynomial(), 2);
        Optional<MultivariatePolynomial> inverse = tower.inverse(element);
        boolean vanishes = chosen.choices(2).stream().anyMatch(c -> element.at(c).isZero());
        assertThat(inverse.isEmpty()).as("%s", chosen).isEqualTo(vanishes);
        inverse.ifPresent(
            value ->
                assertThat(tower.times(value, element))
                    .as("%s", chosen)
                    .isEqualTo(MultivariatePolynomial.ONE));
      }
    }
  }

  @Test
  void relationsBetweenTheRootsAreZero() {
    Polynomial cubic = Polynomial.ofDescending(1, 0, -3, 1);
    RootTower tower = RootTower.of(cubic, 2);
    assertThat(tower.isZero(MultivariatePolynomial.of(cubic, 1))).isTrue();
    assertThat(
            tower.isZero(
                R.power(2)
                    .plus(R.times(S))
                    .plus(S.power(2))
                    .minus(MultivariatePolynomial.constant(Rational.of(3)))))
        .isTrue();
    assertThat(tower.isZero(R.minus(S))).isFalse();
    assertThat(tower.dimension()).isEqualTo(6);
  }

  @Test
  void moreRootsThanTheDegreeAreRefused() {
    assertThatThrownBy(() -> RootTower.of(Polynomial.ofDescending(1, 0, 1), 3))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("3 distinct roots");
    RootTower tower = RootTower.of(Polynomial.ofDescending(1, 0, 1), 1);
    assertThatThrownBy(() -> tower.normalForm(S))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("beyond");
  }
}
