package rootwright.working.letters;

import java.util.List;
import java.util.Map;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.working.step.Claim;
import rootwright.working.step.Setting;

/**
 * A sum or product over all pairs of roots of two polynomials with numbers.
 *
 * @param problem the problem
 * @param aggregate what is summed or multiplied
 * @param value its value
 */
record PairsAsked(PairProblem problem, Formula.Aggregate aggregate, Rational value) {

  Polynomial first() {
    return problem.firstNumeric();
  }

  Polynomial second() {
    return problem.secondNumeric();
  }

  String firstName() {
    return problem.names().get(0);
  }

  String secondName() {
    return problem.names().get(1);
  }

  /** The setting of formulas about the first polynomial, in which B is the second. */
  Setting setting() {
    return new Setting(
        first(), List.of(firstName()), Map.of("A", first(), "B", second()), Map.of(), List.of());
  }

  /** The claim that the aggregate is equal to a formula about the first polynomial. */
  Claim claim(Formula formula) {
    return new Claim.EqualOverPairs(setting(), second(), problem.names(), aggregate, formula);
  }
}
