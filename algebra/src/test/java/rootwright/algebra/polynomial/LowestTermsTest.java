package rootwright.algebra.polynomial;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import rootwright.algebra.number.Rational;

class LowestTermsTest {

  private static final long SEED = Long.getLong("rootwright.seed", 20240615L);
  private static final MultivariatePolynomial X = MultivariatePolynomial.unknown(0);
  private static final MultivariatePolynomial Y = MultivariatePolynomial.unknown(1);

  private static MultivariatePolynomial random(SplittableRandom random, int unknowns) {
    MultivariatePolynomial sum = MultivariatePolynomial.ZERO;
    int terms = random.nextInt(1, 5);
    for (int k = 0; k < terms; k++) {
      int[] exponents = new int[unknowns];
      for (int i = 0; i < unknowns; i++) {
        exponents[i] = random.nextInt(3);
      }
      Rational value = Rational.of(random.nextInt(1, 9), random.nextInt(1, 4));
      sum = sum.plus(MultivariatePolynomial.term(value, Monomial.of(exponents)));
    }
    return sum;
  }

  /** A factor multiplied into both parts leaves no trace. */
  @Test
  void commonFactorsDisappear() {
    SplittableRandom random = new SplittableRandom(SEED);
    for (int round = 0; round < 300; round++) {
      int unknowns = random.nextInt(1, 5);
      MultivariatePolynomial over = random(random, unknowns);
      MultivariatePolynomial under = random(random, unknowns);
      MultivariatePolynomial factor = random(random, unknowns);
      RationalFunction plain = new RationalFunction(over, under).lowestTerms();
      String context = "seed " + SEED + ": " + over + " over " + under + ", factor " + factor;
      assertThat(new RationalFunction(over.times(factor), under.times(factor)).lowestTerms())
          .as(context)
          .isEqualTo(plain);
      assertThat(plain.isSameFunction(new RationalFunction(over, under))).as(context).isTrue();
      assertThat(plain.denominator().degree()).as(context).isLessThanOrEqualTo(under.degree());
    }
  }

  @Test
  void differencesOfPowersDivide() {
    RationalFunction quotient =
        new RationalFunction(X.power(3).minus(Y.power(3)), X.minus(Y)).lowestTerms();
    assertThat(quotient)
        .isEqualTo(RationalFunction.of(X.power(2).plus(X.times(Y)).plus(Y.power(2))));
  }

  @Test
  void leadOfTheDenominatorIsOneAndZeroIsZero() {
    MultivariatePolynomial under = X.times(Rational.of(2)).plus(Y.times(Rational.of(6)));
    assertThat(new RationalFunction(Y, under).lowestTerms())
        .isEqualTo(
            new RationalFunction(Y.times(Rational.of(1, 2)), X.plus(Y.times(Rational.of(3)))));
    assertThat(new RationalFunction(MultivariatePolynomial.ZERO, under).lowestTerms())
        .isEqualTo(RationalFunction.ZERO);
  }

  /** Six fractions in six unknowns: no division of polynomials could be carried out here. */
  @Test
  void longCyclicSumsAreSeenToBeInLowestTerms() {
    RationalFunction sum = RationalFunction.ZERO;
    for (int k = 0; k < 6; k++) {
      MultivariatePolynomial next = MultivariatePolynomial.unknown((k + 1) % 6);
      MultivariatePolynomial last = MultivariatePolynomial.unknown((k + 2) % 6);
      sum = sum.plus(new RationalFunction(MultivariatePolynomial.unknown(k), next.plus(last)));
    }
    assertThat(sum.lowestTerms().denominator().degree()).isEqualTo(6);
  }
}
