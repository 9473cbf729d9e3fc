package rootwright.working.review;

import java.util.List;
import java.util.stream.IntStream;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.PolynomialFormula;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.working.check.Verdict;
import rootwright.working.check.exact.Valuation;
import rootwright.working.problem.Problem;
import rootwright.working.solve.TwoChecks;
import rootwright.working.step.Claim;
import rootwright.working.step.Setting;

/** What numbers with "or" between them are for the left side. */
enum Alternatives {
  /** Each is a root of the polynomial, and the left side names a root. */
  ROOTS,
  /** All values that the left side can have, and no others. */
  ALL,
  /** Values that it can have, but there are others. */
  MORE,
  /** At least one is no value of it. */
  NONE_SUCH,
  /** Beyond what is decided. */
  UNDECIDED;

  static Alternatives of(
      Formula left, List<Formula> values, Problem problem, Setting setting, TwoChecks checks) {
    boolean root =
        left instanceof Formula.Name name
            && (name.spelling().equals(problem.unknown())
                || problem.roots().contains(name.spelling()));
    if (root) {
      return judged(problem.polynomial(), values, setting, checks) == NONE_SUCH ? NONE_SUCH : ROOTS;
    }
    Valuation valuation = Valuation.of(left, setting);
    if (valuation instanceof Valuation.Several several) {
      return judged(several.orbit(), values, setting, checks);
    }
    return valuation instanceof Valuation.Determined ? NONE_SUCH : UNDECIDED;
  }

  private static Alternatives judged(
      Polynomial orbit, List<Formula> values, Setting setting, TwoChecks checks) {
    Formula x = Formula.name("x");
    for (Formula value : values) {
      Formula at = PolynomialFormula.of(orbit, "x").rewrite(part -> part.equals(x) ? value : part);
      Verdict verdict =
          checks.verdict(
              Formula.equation(at, Formula.number(0)), Claim.equal(setting, at, Formula.number(0)));
      if (verdict instanceof Verdict.Undecided) {
        return UNDECIDED;
      } else if (!verdict.isConfirmed()) {
        return NONE_SUCH;
      }
    }
    long distinct =
        IntStream.range(0, values.size())
            .filter(
                k ->
                    values.subList(0, k).stream()
                        .noneMatch(
                            earlier ->
                                checks
                                    .verdict(
                                        Formula.equation(earlier, values.get(k)),
                                        Claim.equal(setting, earlier, values.get(k)))
                                    .isConfirmed()))
            .count();
    return distinct == orbit.squarefreePart().degree() ? ALL : MORE;
  }
}
