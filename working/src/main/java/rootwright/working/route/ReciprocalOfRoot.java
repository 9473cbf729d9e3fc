package rootwright.working.route;

import java.util.List;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.PolynomialFormula;
import rootwright.algebra.notation.UnicodeWriter;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.working.answer.Answer;
import rootwright.working.ask.Asked;
import rootwright.working.problem.RootFunction;
import rootwright.working.step.Idea;

/**
 * A fraction in one root with r − k below it as a polynomial in that root: P = (x − k)·Q + P(k), so
 * 1/(r − k) = −Q(r)/P(k).
 */
final class ReciprocalOfRoot implements Route {

  private static final String TITLE = "turn P(r) = 0 into a reciprocal";

  @Override
  public String name() {
    return "reciprocal";
  }

  @Override
  public String title() {
    return TITLE;
  }

  @Override
  public String teaches() {
    return "P(r) = 0 also says what 1/(r − k) is, without a fraction in r.";
  }

  @Override
  public Attempt attempt(Asked asked) {
    if (asked.singleRoot().isEmpty()) {
      return new Attempt.Declined("the ask is not in one root");
    }
    RootFunction f = asked.singleRoot().get();
    int degree = asked.problem().degree();
    if (f.isPolynomial()) {
      return new Attempt.Declined("no root stands in a denominator");
    } else if (f.denominator().degree() > 1) {
      return new Attempt.Declined("the denominator is not linear in the root");
    } else if (f.numerator().degree() > degree) {
      return new Attempt.Declined("the numerator has to be reduced first");
    }
    Rational k = f.denominator().coefficient(0).over(f.denominator().lead()).negate();
    Rational remainder = asked.problem().polynomial().at(k);
    return remainder.isZero() ? Reasons.ZERO_DENOMINATOR : worked(asked, f, k, remainder);
  }

  private static Attempt worked(Asked asked, RootFunction f, Rational k, Rational remainder) {
    String root = ReducePowers.rootIn(asked);
    Polynomial polynomial = asked.problem().polynomial();
    Polynomial linear = Polynomial.withRoots(List.of(k));
    Polynomial quotient = polynomial.divide(linear).quotient();
    Polynomial inverse = quotient.times(remainder.reciprocal().negate());
    Formula below = PolynomialFormula.of(linear, root);
    Lines lines = new Lines(asked.problem().setting());
    lines.add(
        Idea.VANISHING,
        "divide by " + UnicodeWriter.write(below),
        new Formula.Application("P", List.of(Formula.name(root))),
        new Combination()
            .plus(Combination.product(List.of(below, PolynomialFormula.of(quotient, root))))
            .plus(remainder)
            .formula(),
        Formula.number(0));
    lines.add(
        Idea.REDUCE,
        "solve for the reciprocal",
        Formula.number(1).over(below),
        PolynomialFormula.of(inverse, root));
    Polynomial.Division division = f.numerator().divide(f.denominator());
    Rational share = division.remainder().coefficient(0).over(f.denominator().lead());
    Polynomial answer = division.quotient().plus(inverse.times(share));
    lines.add(
        Idea.REDUCE,
        "put it in",
        asked.formula(),
        new Combination()
            .plusTerms(PolynomialFormula.of(division.quotient(), root))
            .plus(share, Formula.number(1).over(below))
            .formula(),
        PolynomialFormula.of(answer, root));
    return new Attempt.Worked(
        TITLE,
        lines.steps(),
        answer.degree() > 0
            ? new Answer.PolynomialIn(answer, root)
            : Answer.exact(answer.coefficient(0)),
        List.of());
  }
}
