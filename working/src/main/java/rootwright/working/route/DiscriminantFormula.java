package rootwright.working.route;

import rootwright.algebra.number.Rational;
import rootwright.working.ask.Asked;

/** The discriminant of a quadratic or a cubic by its formula in the coefficients. */
final class DiscriminantFormula implements Route {

  @Override
  public String name() {
    return "discriminant-formula";
  }

  @Override
  public String title() {
    return "put the coefficients into the formula";
  }

  @Override
  public String teaches() {
    return "The discriminant is a polynomial in the coefficients.";
  }

  @Override
  public Attempt attempt(Asked asked) {
    if (!DiscriminantLines.isKnown(asked.problem())) {
      return new Attempt.Declined("from degree 4 on the formula is too long to be known");
    }
    Lines lines = new Lines(asked.problem().setting());
    Rational value = DiscriminantLines.write(lines, asked.problem());
    return Attempt.Worked.of(title(), lines.steps(), value);
  }
}
