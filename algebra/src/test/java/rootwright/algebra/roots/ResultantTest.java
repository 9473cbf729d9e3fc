package rootwright.algebra.roots;

import static org.assertj.core.api.Assertions.assertThat;

import cc.redberry.rings.Rings;
import cc.redberry.rings.bigint.BigInteger;
import cc.redberry.rings.poly.univar.UnivariatePolynomial;
import cc.redberry.rings.poly.univar.UnivariateResultants;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;

class ResultantTest {

  /**
   * Dickson, First Course in the Theory of Equations (1922), sec 112, with leads 1 (worked out).
   */
  @Test
  void resultantOfTwoQuadraticsIsTheTextbookExpression() {
    for (long a = -3; a <= 3; a++) {
      for (long b = -3; b <= 3; b++) {
        for (long c = -3; c <= 3; c++) {
          for (long d = -3; d <= 3; d++) {
            assertThat(
                    Resultant.of(
                        Polynomial.ofDescending(1, a, b), Polynomial.ofDescending(1, c, d)))
                .isEqualTo(Rational.of((b - d) * (b - d) + (a - c) * (a * d - b * c)));
          }
        }
      }
    }
  }

  @Test
  void resultantIsTheProductOfTheValuesAtTheRoots() {
    Polynomial other = Polynomial.ofDescending(2, -1, 3).times(Rational.of(1, 7));
    for (ChosenRoots chosen : ChosenRoots.all(4)) {
      Polynomial polynomial = chosen.polynomial();
      Rational expected = polynomial.lead().power(2).times(chosen.product(other::at));
      assertThat(Resultant.of(polynomial, other)).as("%s", chosen).isEqualTo(expected);
      Rational sign = polynomial.degree() * 2 % 2 == 0 ? Rational.ONE : Rational.MINUS_ONE;
      assertThat(Resultant.of(other, polynomial)).as("%s", chosen).isEqualTo(expected.times(sign));
    }
  }

  @Test
  void resultantsAndNormsAgreeWithAnIndependentLibrary() {
    SplittableRandom random = Seed.random();
    for (int round = 0; round < 300; round++) {
      Polynomial p = Seed.polynomial(random, random.nextInt(1, 9));
      Polynomial q = Seed.polynomial(random, random.nextInt(0, 9));
      Rational library = library(p, q);
      String context = "seed " + Seed.VALUE + ": " + p + " and " + q;
      assertThat(Resultant.of(p, q)).as(context).isEqualTo(library);
      assertThat(ResidueAlgebra.of(p).norm(q))
          .as(context)
          .isEqualTo(library.over(p.lead().power(q.degree())));
    }
  }

  private static Rational library(Polynomial p, Polynomial q) {
    BigInteger resultant = (BigInteger) UnivariateResultants.Resultant(toLibrary(p), toLibrary(q));
    return Rational.parse(resultant.toString());
  }

  private static UnivariatePolynomial<BigInteger> toLibrary(Polynomial polynomial) {
    BigInteger[] ascending = new BigInteger[polynomial.degree() + 1];
    for (int k = 0; k < ascending.length; k++) {
      ascending[k] = new BigInteger(polynomial.numerator(k).toString());
    }
    return UnivariatePolynomial.create(Rings.Z, ascending);
  }

  @Test
  void zeroSharesEveryRootAndConstantsNone() {
    Polynomial p = Polynomial.ofDescending(1, 0, -2);
    assertThat(Resultant.of(p, Polynomial.ZERO)).isEqualTo(Rational.ZERO);
    assertThat(Resultant.of(p, Polynomial.ofDescending(3))).isEqualTo(Rational.of(9));
    assertThat(Resultant.of(Polynomial.ofDescending(3), Polynomial.ofDescending(5)))
        .isEqualTo(Rational.ONE);
  }
}
