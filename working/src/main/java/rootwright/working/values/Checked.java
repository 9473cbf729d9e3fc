package rootwright.working.values;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rootwright.algebra.ideal.Ideal;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.working.route.Combination;
import rootwright.working.route.NamedForm;
import rootwright.working.solve.SecondOpinion;
import rootwright.working.solve.TwoChecks;
import rootwright.working.step.Claim;
import rootwright.working.step.Setting;

/**
 * What follows from data, confirmed as identities: the ask and the data in e_1, e_2, … are
 * identities in the numbers, and the conclusion is a combination of the equations, an identity in
 * e_1, e_2, ….
 *
 * @param over the numerator of the ask
 * @param under its denominator
 * @param equations the left sides of the equations, the conditions on denominators last
 * @param ideal what they generate
 */
record Checked(
    SymmetricData data,
    Formula ask,
    MultivariatePolynomial over,
    MultivariatePolynomial under,
    List<MultivariatePolynomial> equations,
    Ideal ideal) {

  /** Highest power of the conclusion that is tried. */
  private static final int HIGHEST_POWER = 4;

  /** Longest conclusion that is reduced. */
  private static final int MOST_TERMS = 300;

  Checked {
    equations = List.copyOf(equations);
  }

  /** How unknown k − 1 is called: e_k, and q_1, q_2 for reciprocals of what is not zero. */
  Formula letter(int k) {
    return k <= data.count()
        ? ElementaryNames.letter(k)
        : new Formula.Name("q", String.valueOf(k - data.count()));
  }

  /**
   * The second opinion on the claim that these are all values of the ask.
   *
   * @param values the polynomial whose roots the values are
   */
  Optional<SecondOpinion> conclusion(Polynomial values, TwoChecks checks) {
    Setting identities = data.identities();
    checks.require(ask, Claim.equal(identities, ask, written(over, under)));
    for (GivenValue given : data.givens()) {
      checks.require(
          given.relation(),
          Claim.equal(identities, given.shown(), written(given.over(), given.under())));
    }
    MultivariatePolynomial conclusion = MultivariatePolynomial.ZERO;
    for (int k = 0; k <= values.degree(); k++) {
      conclusion =
          conclusion.plus(
              over.power(k).times(under.power(values.degree() - k)).times(values.coefficient(k)));
    }
    MultivariatePolynomial power = conclusion;
    for (int m = 1; m <= HIGHEST_POWER && power.terms().size() <= MOST_TERMS; m++) {
      Optional<List<MultivariatePolynomial>> factors = ideal.factors(power);
      if (factors.isPresent()) {
        return Optional.of(checks.require(ask, combination(power, factors.get())));
      }
      power = power.times(conclusion);
    }
    return Optional.empty();
  }

  /** The identity conclusion = Σ factor·equation. */
  private Claim combination(
      MultivariatePolynomial conclusion, List<MultivariatePolynomial> factors) {
    List<String> letters = new ArrayList<>();
    for (int k = 1; k <= data.count() + 2; k++) {
      letters.add(((Formula.Name) letter(k)).spelling());
    }
    Combination sum = new Combination();
    for (int k = 0; k < factors.size(); k++) {
      if (!factors.get(k).isZero()) {
        sum.plus(
            Combination.product(
                List.of(
                    new NamedForm(factors.get(k), this::letter).written(),
                    new NamedForm(equations.get(k), this::letter).written())));
      }
    }
    return Claim.equal(
        Setting.ofLetters(letters),
        new NamedForm(conclusion, this::letter).written(),
        sum.formula());
  }

  /** over/under with the letters e_1, e_2, …. */
  Formula written(MultivariatePolynomial above, MultivariatePolynomial below) {
    Formula top = new NamedForm(above, this::letter).written();
    return below.equals(MultivariatePolynomial.ONE)
        ? top
        : top.over(new NamedForm(below, this::letter).written());
  }

  /** The polynomial t − value. */
  static Polynomial linear(Rational value) {
    return Polynomial.ofAscending(List.of(value.negate(), Rational.ONE));
  }
}
