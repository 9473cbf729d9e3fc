package rootwright.algebra.roots;

import static org.assertj.core.api.Assertions.assertThat;

import cc.redberry.rings.poly.multivar.MultivariatePolynomial;
import cc.redberry.rings.poly.multivar.MultivariateResultants;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.BinaryOperator;
import org.junit.jupiter.api.Test;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;

class PairPolynomialTest {

  /**
   * Dickson, First Course in the Theory of Equations (1922), ch IX misc ex 6, p. 142; Burnside and
   * Panton, The Theory of Equations, chapter IV (from memory).
   */
  @Test
  void printedPairProductsAgree() {
    assertThat(PairPolynomial.products(Polynomial.ofDescending(1, 3, 2, -5)))
        .isEqualTo(Polynomial.ofDescending(1, -2, -15, -25));
    assertThat(PairPolynomial.products(Polynomial.ofDescending(1, 2, -3, 5, 7)))
        .isEqualTo(Polynomial.ofDescending(1, 3, 3, -95, 21, 147, 343));
  }

  /** Burnside and Panton, The Theory of Equations, art 42 (from memory). */
  @Test
  void printedSquaredDifferencesAgree() {
    assertThat(PairPolynomial.squaredDifferences(Polynomial.ofDescending(1, -4, 3, 7)))
        .isEqualTo(Polynomial.ofDescending(1, -14, 49, 1007));
  }

  @Test
  void pairsOfChosenRootsAreTheRoots() {
    for (ChosenRoots chosen : ChosenRoots.all(4)) {
      assertThat(PairPolynomial.sums(chosen.polynomial()))
          .as("%s", chosen)
          .isEqualTo(overPairs(chosen.roots(), Rational::plus));
      assertThat(PairPolynomial.products(chosen.polynomial()))
          .as("%s", chosen)
          .isEqualTo(overPairs(chosen.roots(), Rational::times));
      assertThat(PairPolynomial.squaredDifferences(chosen.polynomial()))
          .as("%s", chosen)
          .isEqualTo(overPairs(chosen.roots(), (r, s) -> r.minus(s).power(2)));
      Transformed ratios = PairPolynomial.ratios(chosen.polynomial());
      if (chosen.roots().size() > 1 && chosen.roots().contains(Rational.ZERO)) {
        assertThat(ratios).isEqualTo(new Transformed.ZeroDenominator(Polynomial.X));
      } else {
        Polynomial expected =
            overPairs(chosen.roots(), Rational::over)
                .times(overPairs(chosen.roots(), (r, s) -> s.over(r)));
        assertThat(ratios).as("%s", chosen).isEqualTo(new Transformed.Exact(expected));
      }
    }
  }

  private static Polynomial overPairs(List<Rational> roots, BinaryOperator<Rational> map) {
    List<Rational> images = new ArrayList<>();
    for (int i = 0; i < roots.size(); i++) {
      for (int j = i + 1; j < roots.size(); j++) {
        images.add(map.apply(roots.get(i), roots.get(j)));
      }
    }
    return Polynomial.withRoots(images).primitive();
  }

  /** Fractional roots of both signs at degree 12, where several primes are needed. */
  @Test
  void pairsOfManyFractionalRootsAreTheRoots() {
    SplittableRandom random = Seed.random();
    for (int round = 0; round < 5; round++) {
      List<Rational> roots = new ArrayList<>();
      for (int k = 0; k < 12; k++) {
        roots.add(Rational.of(random.nextInt(-40, 41), random.nextInt(1, 8)));
      }
      Polynomial polynomial = Polynomial.withRoots(roots);
      assertThat(PairPolynomial.sums(polynomial))
          .as("seed %d: %s", Seed.VALUE, roots)
          .isEqualTo(overPairs(roots, Rational::plus));
      assertThat(PairPolynomial.products(polynomial))
          .as("seed %d: %s", Seed.VALUE, roots)
          .isEqualTo(overPairs(roots, Rational::times));
      assertThat(PairPolynomial.squaredDifferences(polynomial))
          .as("seed %d: %s", Seed.VALUE, roots)
          .isEqualTo(overPairs(roots, (r, s) -> r.minus(s).power(2)));
    }
  }

  /** A lead that the first prime divides must not be divided by. */
  @Test
  void primesThatDivideTheLeadAreLeftOut() {
    Rational prime = Rational.of((1L << 61) - 1);
    List<Rational> roots = List.of(prime.reciprocal(), prime, Rational.of(3));
    assertThat(PairPolynomial.sums(Polynomial.withRoots(roots)))
        .isEqualTo(overPairs(roots, Rational::plus));
  }

  @Test
  void oneRootMakesNoPair() {
    assertThat(PairPolynomial.sums(Polynomial.ofDescending(3, 0))).isEqualTo(Polynomial.ONE);
  }

  /**
   * A library's resultant of P(y) and P(x − y) in y has all n² sums as roots: each pair twice, and
   * every root with itself.
   */
  @Test
  void sumsAgreeWithAResultantOfAnIndependentLibrary() {
    SplittableRandom random = Seed.random();
    for (int round = 0; round < 10; round++) {
      Polynomial polynomial = Seed.polynomial(random, random.nextInt(2, 6)).primitive();
      StringBuilder plain = new StringBuilder("0");
      StringBuilder shifted = new StringBuilder("0");
      for (int k = 0; k <= polynomial.degree(); k++) {
        plain.append("+(").append(polynomial.numerator(k)).append(")*y^").append(k);
        shifted.append("+(").append(polynomial.numerator(k)).append(")*(x-y)^").append(k);
      }
      String resultant =
          MultivariateResultants.Resultant(
                  MultivariatePolynomial.parse(plain.toString(), "x", "y"),
                  MultivariatePolynomial.parse(shifted.toString(), "x", "y"),
                  1)
              .toString("x", "y");
      Polynomial self = TransformedPolynomial.of(polynomial, Polynomial.ofDescending(2, 0));
      Polynomial all = PairPolynomial.sums(polynomial).power(2).times(self);
      var library = MultivariatePolynomial.parse(resultant, "x", "y");
      var ours = library.createZero();
      for (int k = 0; k <= all.degree(); k++) {
        ours.add(MultivariatePolynomial.parse("(" + all.numerator(k) + ")*x^" + k, "x", "y"));
      }
      // Both up to a whole factor: compare the products with each other's lead.
      boolean same = ours.clone().multiply(library.lc()).equals(library.multiply(ours.lc()));
      assertThat(same).as("seed %d: %s", Seed.VALUE, polynomial).isTrue();
    }
  }
}
