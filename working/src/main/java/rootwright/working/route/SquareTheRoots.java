package rootwright.working.route;

import java.util.List;
import java.util.Optional;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.PolynomialFormula;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.roots.TransformedPolynomial;
import rootwright.working.answer.Answer;
import rootwright.working.ask.Asked;
import rootwright.working.problem.Problem;
import rootwright.working.problem.RootFunction;
import rootwright.working.step.Claim;
import rootwright.working.step.Idea;
import rootwright.working.step.Setting;

/** The polynomial with the roots r²: P(x)·P(−x) has even powers only (Dandelin 1826; Graeffe). */
final class SquareTheRoots implements Route {

  private static final RootFunction SQUARE = RootFunction.of(Polynomial.monomial(Rational.ONE, 2));

  private final Optional<String> letter;

  /** With the letter of the answer; absent for that of the problem. */
  SquareTheRoots(Optional<String> letter) {
    this.letter = letter;
  }

  @Override
  public String name() {
    return "square-roots";
  }

  @Override
  public String title() {
    return "multiply P(x) by P(−x)";
  }

  @Override
  public String teaches() {
    return "P(x)·P(−x) is a polynomial in x², and its roots in x² are the squares.";
  }

  @Override
  public Attempt attempt(Asked asked) {
    if (!asked.singleRoot().equals(Optional.of(SQUARE))) {
      return new Attempt.Declined("the new roots are not the squares of the old ones");
    }
    Problem problem = asked.problem();
    Polynomial p = problem.polynomial();
    Polynomial image = TransformedPolynomial.squares(p);
    Setting setting = problem.setting();
    Lines lines = new Lines(setting);
    Formula x = Formula.name(problem.unknown());
    Polynomial mirrored = p.compose(Polynomial.X.negate());
    Rational factor = p.lead().times(mirrored.lead()).over(image.lead());
    lines
        .in(setting.withFree(problem.unknown()))
        .add(
            Idea.SQUARE_ROOTS,
            "the odd powers cancel",
            new Formula.Application("P", List.of(x))
                .times(new Formula.Application("P", List.of(new Formula.Negative(x)))),
            PolynomialFormula.of(p, x).times(PolynomialFormula.of(mirrored, x)),
            PolynomialFormula.of(image.times(factor), x.power(2)));
    String shownIn = letter.orElse(problem.unknown());
    lines.addRoots(
        Idea.STATE,
        "the letter for the square",
        Formula.equation(PolynomialFormula.of(image, shownIn), Formula.number(0)),
        new Claim.HasRoots(setting, image, problem.ask()));
    return new Attempt.Worked(
        title(), lines.steps(), new Answer.PolynomialIn(image, shownIn), List.of());
  }
}
