package rootwright.working.values;

import java.util.List;
import java.util.Optional;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.algebra.symmetric.GirardWaring;
import rootwright.working.ask.Asked;
import rootwright.working.problem.Problem;

/**
 * An ask about numbers whose elementary symmetric values are known.
 *
 * @param elementary e_1, …, e_n
 * @param asked the ask about the roots of their polynomial
 */
record DataAsked(SymmetricData data, List<Rational> elementary, Asked asked) {

  /** The problem about the roots of their polynomial. */
  Problem problem() {
    return asked.problem();
  }

  /** The value of S_k, if it is among the data. */
  Optional<Rational> givenPowerSum(int k) {
    MultivariatePolynomial form = GirardWaring.powerSum(k, data.count()).polynomial();
    return data.givens().stream()
        .filter(
            given -> given.under().equals(MultivariatePolynomial.ONE) && given.over().equals(form))
        .map(GivenValue::value)
        .findFirst();
  }
}
