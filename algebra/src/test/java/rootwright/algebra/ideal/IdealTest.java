package rootwright.algebra.ideal;

import static org.assertj.core.api.Assertions.assertThat;

import cc.redberry.rings.Rings;
import cc.redberry.rings.bigint.BigInteger;
import cc.redberry.rings.poly.multivar.GroebnerBases;
import cc.redberry.rings.poly.multivar.MonomialOrder;
import cc.redberry.rings.poly.multivar.MultivariateDivision;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import rootwright.algebra.notation.FormulaExpansion;
import rootwright.algebra.notation.FormulaReader;
import rootwright.algebra.notation.UnreadableException;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Monomial;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.algebra.polynomial.Polynomial;

class IdealTest {

  private static final long SEED = Long.getLong("rootwright.seed", 20_261_131L);

  private static MultivariatePolynomial p(String text) throws UnreadableException {
    return FormulaExpansion.expand(FormulaReader.formula(text), Map.of("x", 0, "y", 1, "z", 2))
        .numerator();
  }

  private static Ideal ideal(String... texts) throws UnreadableException {
    List<MultivariatePolynomial> generators = new ArrayList<>();
    for (String text : texts) {
      generators.add(p(text));
    }
    return Ideal.of(generators, 3).orElseThrow();
  }

  @Test
  void theSumOfCubesFollowsFromAVanishingSumAndTheFactorsShowIt() throws UnreadableException {
    Ideal ideal = ideal("x + y + z");
    MultivariatePolynomial claim = p("x^3 + y^3 + z^3 - 3x y z");
    MultivariatePolynomial factor = ideal.factors(claim).orElseThrow().get(0);
    assertThat(factor.times(p("x + y + z"))).isEqualTo(claim);
    assertThat(ideal.factors(p("x y z"))).isEmpty();
    assertThat(ideal.isFinite()).isFalse();
  }

  /** Cox, Little and O'Shea 2015, Ideals, Varieties, and Algorithms, ch 2 sec 8: 4 points. */
  @Test
  void aSphereAConeAndAPlaneMeetInFinitelyManyPoints() throws UnreadableException {
    Ideal ideal = ideal("x^2 + y^2 + z^2 - 1", "x^2 + z^2 - y", "x - z");
    assertThat(ideal.isFinite()).isTrue();
    assertThat(ideal.minimalPolynomial(p("y")).orElseThrow())
        .isEqualTo(Polynomial.ofDescending(1, 1, -1));
    assertThat(ideal.minimalPolynomial(p("2 x^2 - y")).orElseThrow()).isEqualTo(Polynomial.X);
  }

  @Test
  void equationsWithoutACommonSolutionGiveEverything() throws UnreadableException {
    Ideal ideal = ideal("x + y - 3", "x^2 + y^2 - 5", "x y - 1");
    assertThat(ideal.isEverything()).isTrue();
    List<MultivariatePolynomial> factors = ideal.factors(MultivariatePolynomial.ONE).orElseThrow();
    assertThat(
            factors
                .get(0)
                .times(p("x + y - 3"))
                .plus(factors.get(1).times(p("x^2 + y^2 - 5")))
                .plus(factors.get(2).times(p("x y - 1"))))
        .isEqualTo(MultivariatePolynomial.ONE);
  }

  @Test
  void membershipAgreesWithAnotherLibraryAndFactorsMultiplyBack() {
    SplittableRandom random = new SplittableRandom(SEED);
    int members = 0;
    for (int k = 0; k < 40; k++) {
      List<MultivariatePolynomial> generators = List.of(any(random), any(random));
      MultivariatePolynomial claim =
          random.nextBoolean()
              ? any(random)
              : any(random).times(generators.get(0)).plus(any(random).times(generators.get(1)));
      Ideal ideal = Ideal.of(generators, 3).orElseThrow();
      var theirs =
          GroebnerBases.GroebnerBasis(
              generators.stream().map(IdealTest::rings).toList(), MonomialOrder.GREVLEX);
      boolean member =
          MultivariateDivision.remainder(rings(claim).setOrdering(MonomialOrder.GREVLEX), theirs)
              .isZero();
      var factors = ideal.factors(claim);
      assertThat(factors.isPresent()).as("seed %d, case %d", SEED, k).isEqualTo(member);
      if (member) {
        members++;
        assertThat(
                factors
                    .get()
                    .get(0)
                    .times(generators.get(0))
                    .plus(factors.get().get(1).times(generators.get(1))))
            .isEqualTo(claim);
      }
    }
    assertThat(members).isBetween(5, 39);
  }

  private static MultivariatePolynomial any(SplittableRandom random) {
    MultivariatePolynomial sum = MultivariatePolynomial.ZERO;
    for (int k = 0; k < 3; k++) {
      sum =
          sum.plus(
              MultivariatePolynomial.term(
                  Rational.of(random.nextInt(-3, 4)),
                  Monomial.of(random.nextInt(2), random.nextInt(2), random.nextInt(2))));
    }
    return sum;
  }

  private static cc.redberry.rings.poly.multivar.MultivariatePolynomial<
          cc.redberry.rings.Rational<BigInteger>>
      rings(MultivariatePolynomial polynomial) {
    var sum =
        cc.redberry.rings.poly.multivar.MultivariatePolynomial.zero(
            3, Rings.Q, MonomialOrder.GREVLEX);
    for (var term : polynomial.terms().entrySet()) {
      sum.add(
          cc.redberry.rings.poly.multivar.MultivariatePolynomial.one(
                  3, Rings.Q, MonomialOrder.GREVLEX)
              .multiplyByMonomial(0, term.getKey().exponent(0))
              .multiplyByMonomial(1, term.getKey().exponent(1))
              .multiplyByMonomial(2, term.getKey().exponent(2))
              .multiply(
                  new cc.redberry.rings.Rational<>(
                      Rings.Z,
                      new BigInteger(term.getValue().numerator().toString()),
                      new BigInteger(term.getValue().denominator().toString()))));
    }
    return sum;
  }
}
