package rootwright.algebra.roots;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.SplittableRandom;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.polynomial.RationalFunction;

class OrbitTotalTest {

  private static final RationalFunction R = unknown(0);
  private static final RationalFunction S = unknown(1);
  private static final RationalFunction T = unknown(2);
  private static final RationalFunction U = unknown(3);
  private static final RationalFunction TWO = RationalFunction.of(Rational.TWO);

  private static RationalFunction unknown(int number) {
    return RationalFunction.of(MultivariatePolynomial.unknown(number));
  }

  private static final List<RationalFunction> EXPRESSIONS =
      List.of(
          R.over(S),
          R.over(S.plus(T)),
          R.plus(S).over(R.minus(S).power(2)),
          R.power(2).over(R.minus(S).times(R.minus(T))),
          R.over(S.plus(TWO.times(T))),
          TWO.over(R.minus(S)),
          R.times(S).plus(T).power(2));

  @Test
  void totalsAreTheEndsOfTheOrbitPolynomial() {
    SplittableRandom random = Seed.random();
    for (RationalFunction expression : EXPRESSIONS) {
      for (int degree = 3; degree <= 5; degree++) {
        Polynomial polynomial = Seed.polynomial(random, degree);
        OrbitPolynomial orbit = OrbitPolynomial.of(polynomial, expression);
        if (orbit instanceof OrbitPolynomial.Exact exact) {
          assertThat(OrbitTotal.sum(polynomial, expression))
              .as("sum for %s at %s, seed %d", expression, polynomial, Seed.VALUE)
              .isEqualTo(new OrbitTotal.Exact(exact.sum()));
          assertThat(OrbitTotal.product(polynomial, expression))
              .as("product for %s at %s, seed %d", expression, polynomial, Seed.VALUE)
              .isEqualTo(new OrbitTotal.Exact(product(exact.polynomial())));
        } else {
          assertThat(OrbitTotal.sum(polynomial, expression))
              .as("sum for %s at %s, seed %d", expression, polynomial, Seed.VALUE)
              .isInstanceOf(OrbitTotal.ZeroDenominator.class);
        }
      }
    }
  }

  private static Rational product(Polynomial monic) {
    Rational last = monic.coefficient(0);
    return monic.degree() % 2 == 0 ? last : last.negate();
  }

  /** Orbits of 168, 280 and 420 images, whose polynomials are not found. */
  @Test
  void quotientsInSeveralOfEightRootsAddUpToWhatTheRootsGive() {
    List<Rational> roots = List.of(1, 2, 3, 5, 7, 11, 13, 17).stream().map(Rational::of).toList();
    ChosenRoots chosen = new ChosenRoots(roots, Polynomial.withRoots(roots).times(Rational.of(3)));
    sums(chosen, 3, R.over(S.plus(T)), 2, c -> c.get(0).over(c.get(1).plus(c.get(2))));
    sums(
        chosen,
        4,
        R.over(S.plus(T).plus(U)),
        6,
        c -> c.get(0).over(c.get(1).plus(c.get(2)).plus(c.get(3))));
    sums(
        chosen,
        4,
        R.plus(S).over(T.plus(U)),
        4,
        c -> c.get(0).plus(c.get(1)).over(c.get(2).plus(c.get(3))));
  }

  private static void sums(
      ChosenRoots chosen,
      int names,
      RationalFunction expression,
      long choicesOfOneImage,
      Function<List<Rational>, Rational> value) {
    Rational sum = chosen.choices(names).stream().map(value).reduce(Rational.ZERO, Rational::plus);
    assertThat(OrbitTotal.sum(chosen.polynomial(), expression))
        .as(expression.toString())
        .isEqualTo(new OrbitTotal.Exact(sum.over(Rational.of(choicesOfOneImage))));
  }

  @Test
  void aDenominatorThatVanishesAtSomeRootsIsNamedSo() {
    // 1 + (−1) = 0, and no prime can tell that from a unit.
    Polynomial polynomial =
        Polynomial.ofDescending(1, 0, -1, 0).times(Polynomial.ofDescending(1, 7));
    assertThat(OrbitTotal.sum(polynomial, R.over(S.plus(T))))
        .isInstanceOf(OrbitTotal.ZeroDenominator.class);
    assertThat(OrbitTotal.product(polynomial, R.over(S.plus(T))))
        .isInstanceOf(OrbitTotal.ZeroDenominator.class);
  }
}
