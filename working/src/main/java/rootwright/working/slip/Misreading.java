package rootwright.working.slip;

import java.util.List;
import java.util.Optional;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.working.ask.Asked;
import rootwright.working.check.exact.Valuation;
import rootwright.working.problem.Problem;
import rootwright.working.step.Idea;
import rootwright.working.step.Setting;

/**
 * A slip in reading e₁, e₂, … off the coefficients. Whoever misreads them works, without knowing,
 * with the roots of another polynomial; what is wrong afterwards is the right value for that one.
 */
abstract class Misreading implements Slip {

  @Override
  public Idea spot() {
    return Idea.READ_COEFFICIENTS;
  }

  @Override
  public final List<Rational> on(Asked asked) {
    // Where names matter for the right polynomial they matter for the wrong one.
    if (!asked.hasSingleValue()) {
      return List.of();
    }
    return polynomialTaken(asked.problem())
        .flatMap(wrong -> value(asked, wrong))
        .map(List::of)
        .orElse(List.of());
  }

  @Override
  public final Optional<Polynomial> polynomialTaken(Problem problem) {
    return misread(problem).filter(wrong -> wrong.degree() == problem.degree());
  }

  /** The polynomial whose e's the student takes; of the same degree, or there is no slip. */
  abstract Optional<Polynomial> misread(Problem problem);

  private static Optional<Rational> value(Asked asked, Polynomial wrong) {
    Setting setting = Setting.of(wrong, asked.problem().roots());
    return Valuation.of(asked.formula(), setting) instanceof Valuation.Determined determined
        ? Optional.of(determined.value())
        : Optional.empty();
  }
}
