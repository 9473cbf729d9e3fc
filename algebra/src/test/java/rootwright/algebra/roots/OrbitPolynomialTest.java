package rootwright.algebra.roots;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.polynomial.RationalFunction;

class OrbitPolynomialTest {

  private static final RationalFunction R = unknown(0);
  private static final RationalFunction S = unknown(1);
  private static final RationalFunction T = unknown(2);
  private static final RationalFunction U = unknown(3);

  private static RationalFunction unknown(int number) {
    return RationalFunction.of(MultivariatePolynomial.unknown(number));
  }

  private static final RationalFunction CYCLIC =
      R.power(2).times(S).plus(S.power(2).times(T)).plus(T.power(2).times(R));

  /**
   * Dickson, First Course in the Theory of Equations (1922), sec 49, p. 51: the resolvent cubic y³
   * − cy² + (bd − 4e)y − (d² + e(b² − 4c)) of x⁴ + bx³ + cx² + dx + e.
   */
  @Test
  void pairProductsOfAQuarticHaveTheResolventCubic() {
    Polynomial quartic = Polynomial.ofDescending(1, 2, -3, 5, 7);
    assertThat(OrbitPolynomial.of(quartic, R.times(S).plus(T.times(U))))
        .isEqualTo(new OrbitPolynomial.Exact(Polynomial.ofDescending(1, 3, -18, -137)));
  }

  /**
   * NIST DLMF sec 1.11(iii) (from memory): w⁴ − 6w² − 3w + 4 has the resolvent cubic with the roots
   * −(r + s)² of t³ + 12t² + 20t + 9.
   */
  @Test
  void squaredPairSumsOfADepressedQuarticHaveTheResolventCubicOfTheHandbook() {
    Polynomial quartic = Polynomial.ofDescending(1, 0, -6, -3, 4);
    RationalFunction minusSquare = R.plus(S).times(T.plus(U));
    assertThat(OrbitPolynomial.of(quartic, minusSquare))
        .isEqualTo(new OrbitPolynomial.Exact(Polynomial.ofDescending(1, 12, 20, 9)));
  }

  /**
   * Dickson, First Course in the Theory of Equations (1922): sec 20 ex 13 i and iii, sec 105 ex 9
   * (the book prints the substitution; worked out); Hall and Knight, Higher Algebra (1887), XXXV.d
   * 27 and 28 (numbering from memory).
   */
  @Test
  void printedEquationsOfMixedImagesAgree() {
    assertImages("1 4 3", R.power(2).over(S), "1 28/3 3");
    assertImages("1 -2 -3", R.plus(RationalFunction.ONE.over(S)), "1 -4/3 -4/3");
    assertImages("1 2 -3 5", R.times(S).minus(RationalFunction.ONE.over(T)), "5 18 72 -216");
    assertImages("1 0 3 2", S.plus(T).over(R.power(2)), "2 -3 0 -1");
    assertImages("1 0 -4 3", S.times(T).plus(RationalFunction.ONE.over(R)), "3 8 0 -8");
  }

  private static void assertImages(String row, RationalFunction image, String expected) {
    assertThat(OrbitPolynomial.of(Coefficients.read(row), image))
        .isEqualTo(new OrbitPolynomial.Exact(Coefficients.read(expected).monic()));
  }

  @Test
  void cyclicSumsOfACubicAreTheRootsOfAQuadratic() {
    // Roots 1, 2, 4: 1·2 + 4·4 + 16·1 = 34 and 1·4 + 16·2 + 4·1 = 40.
    Polynomial cubic = Polynomial.withRoots(Stream.of(1, 2, 4).map(Rational::of).toList());
    assertThat(OrbitPolynomial.of(cubic, CYCLIC))
        .isEqualTo(
            new OrbitPolynomial.Exact(
                Polynomial.withRoots(List.of(Rational.of(34), Rational.of(40)))));
  }

  @Test
  void repeatedRootsCanMakeAnUnsymmetricExpressionSingleValued() {
    Polynomial cubic = Polynomial.withRoots(Stream.of(1, 1, 2).map(Rational::of).toList());
    OrbitPolynomial orbit = OrbitPolynomial.of(cubic, CYCLIC);
    assertThat(((OrbitPolynomial.Exact) orbit).singleValue())
        .isEqualTo(Optional.of(Rational.of(7)));
  }

  @Test
  void differenceOfTwoRootsHasTwoValues() {
    OrbitPolynomial orbit = OrbitPolynomial.of(Polynomial.ofDescending(1, -1, -1), R.minus(S));
    assertThat(orbit).isEqualTo(new OrbitPolynomial.Exact(Polynomial.ofDescending(1, 0, -5)));
    assertThat(((OrbitPolynomial.Exact) orbit).singleValue()).isEmpty();
  }

  @Test
  void denominatorThatCanVanishIsNamed() {
    Polynomial cubic = Polynomial.ofDescending(1, 0, -1, 0);
    assertThat(OrbitPolynomial.of(cubic, S.over(R.plus(T))))
        .isInstanceOf(OrbitPolynomial.ZeroDenominator.class);
  }

  @Test
  void largeOrbitsOnlyTellTheirSize() {
    Polynomial sextic = Polynomial.ofDescending(1, 0, 0, 0, -1, 0, 3);
    RationalFunction weights =
        R.plus(S.times(RationalFunction.of(Rational.of(2))))
            .plus(T.times(RationalFunction.of(Rational.of(3))))
            .plus(U.times(RationalFunction.of(Rational.of(4))));
    assertThat(OrbitPolynomial.of(sextic, weights))
        .isEqualTo(new OrbitPolynomial.TooLarge(BigInteger.valueOf(360)));
  }

  @Test
  void rootsOfTheOrbitPolynomialAreTheValuesAtAllWaysToDealOutTheNames() {
    List<RationalFunction> expressions =
        List.of(
            R.times(S),
            R.minus(S),
            R.plus(S).power(2),
            R.power(2).over(S.plus(unknown(0).times(RationalFunction.of(Rational.of(5))))),
            R.minus(S).over(R.plus(S).plus(RationalFunction.of(Rational.of(7)))));
    for (ChosenRoots chosen : ChosenRoots.all(4)) {
      if (chosen.roots().size() < 2) {
        continue;
      }
      for (RationalFunction expression : expressions) {
        compare(chosen, expression, 2);
      }
      if (chosen.roots().size() == 3) {
        compare(chosen, CYCLIC, 3);
        compare(chosen, R.over(S.plus(T.times(RationalFunction.of(Rational.of(9))))), 3);
      }
    }
  }

  private static void compare(ChosenRoots chosen, RationalFunction expression, int size) {
    int names = chosen.roots().size();
    int images = Orbit.of(expression, names).images().size();
    List<List<Rational>> choices = chosen.choices(size);
    boolean vanishes =
        choices.stream().anyMatch(choice -> expression.denominator().at(choice).isZero());
    OrbitPolynomial orbit = OrbitPolynomial.of(chosen.polynomial(), expression);
    if (vanishes) {
      assertThat(orbit)
          .as("%s at %s", expression, chosen)
          .isInstanceOf(OrbitPolynomial.ZeroDenominator.class);
      return;
    }
    List<Rational> values =
        choices.stream()
            .map(c -> expression.numerator().at(c).over(expression.denominator().at(c)))
            .toList();
    Polynomial all = Polynomial.withRoots(values);
    Polynomial found = ((OrbitPolynomial.Exact) orbit).polynomial();
    assertThat(found.power(choices.size() / images))
        .as("%s at %s", expression, chosen)
        .isEqualTo(all);
  }

  /**
   * Beside the tower of the roots: the power sums of the images as traces of powers, divided by how
   * often each image is met.
   */
  @Test
  void orbitPolynomialsAgreeWithTracesInTheTower() {
    SplittableRandom random = Seed.random();
    List<RationalFunction> expressions =
        List.of(
            CYCLIC,
            R.times(S).plus(T.times(U)),
            R.minus(S).times(T.minus(U)),
            R.plus(S.times(RationalFunction.of(Rational.of(1, 2)))).power(2),
            R.times(S).minus(T));
    for (int round = 0; round < 8; round++) {
      Polynomial polynomial = Seed.polynomial(random, 4);
      RootTower tower = RootTower.of(polynomial, 4);
      for (RationalFunction expression : expressions) {
        int images = Orbit.of(expression, 4).images().size();
        assertThat(OrbitPolynomial.of(polynomial, expression))
            .as("seed %d: %s of %s", Seed.VALUE, expression, polynomial)
            .isEqualTo(
                new OrbitPolynomial.Exact(tower.orbitPolynomial(expression.numerator(), images)));
      }
    }
  }

  /** Here an exchange of two roots changes the sign of the product of the denominators. */
  @Test
  void quotientsOfDifferencesAreExactWhateverTheSignOfTheirDenominators() {
    List<Rational> roots = Stream.of(0, 1, 3, 7).map(Rational::of).toList();
    ChosenRoots chosen = new ChosenRoots(roots, Polynomial.withRoots(roots));
    compare(chosen, R.minus(S).over(T.minus(U)), 4);
    compare(chosen, R.over(S.minus(T)), 3);
    compare(chosen, R.minus(S).over(T), 3);
    compare(chosen, R.times(U).over(R.minus(S).times(S.minus(T)).times(T.minus(R))), 4);
  }

  @Test
  void seventyTermsOfAnOcticAreMultipliedOut() {
    List<Rational> roots = Stream.of(-3, -2, -2, 0, 1, 1, 5, 6).map(Rational::of).toList();
    List<Rational> products = new ArrayList<>();
    for (int names = 0; names < 256; names++) {
      if (Integer.bitCount(names) == 4) {
        Rational product = Rational.ONE;
        for (int k = 0; k < 8; k++) {
          product = (names >> k & 1) == 1 ? product.times(roots.get(k)) : product;
        }
        products.add(product);
      }
    }
    assertThat(
            OrbitPolynomial.of(
                Polynomial.withRoots(roots).times(Rational.of(3)), R.times(S).times(T).times(U)))
        .isEqualTo(new OrbitPolynomial.Exact(Polynomial.withRoots(products)));
    Polynomial dense = Polynomial.ofDescending(2, 1, -3, 0, 4, 1, -1, 5, 7);
    OrbitPolynomial sums = OrbitPolynomial.of(dense, R.plus(S));
    assertThat(((OrbitPolynomial.Exact) sums).polynomial().primitive())
        .isEqualTo(PairPolynomial.sums(dense));
  }
}
