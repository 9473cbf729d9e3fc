package rootwright.working.letters;

import java.util.List;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.polynomial.Monomial;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.algebra.polynomial.RationalFunction;
import rootwright.working.answer.Answer;
import rootwright.working.route.Attempt;
import rootwright.working.route.RouteOn;
import rootwright.working.slip.SlipOn;
import rootwright.working.step.Idea;
import rootwright.working.step.LetteredSetting;

/** The route to a resultant, and the slip of leaving the lead out. */
final class ResultantRoutes {

  static final List<SlipOn<PairProblem>> SLIPS =
      List.of(
          new PairSlips.Turned<>(
              "lead-forgotten",
              "The resultant holds the lead of the first to the degree of the second.",
              Idea.EVALUATE,
              15,
              ResultantRoutes::withoutLead));

  private ResultantRoutes() {}

  private static List<? extends Answer> withoutLead(PairProblem problem) {
    RationalFunction value =
        InLetters.cleared(
            PairRoutes.resultantValue(problem)
                .over(
                    RationalFunction.of(problem.first().lead()).power(problem.second().degree())));
    boolean number = value.isPolynomial() && value.numerator().isConstant();
    return List.of(
        number
            ? Answer.exact(value.numerator().coefficient(Monomial.ONE))
            : new Answer.FunctionOf(InLetters.formula(value, problem.letters())));
  }

  /** The product of the values of the second at the roots of the first. */
  record OverFirst(Formula written, Answer answer) implements RouteOn<PairProblem> {
    @Override
    public String name() {
      return "values-at-roots";
    }

    @Override
    public String title() {
      return "multiply the values of the second at the roots of the first";
    }

    @Override
    public String teaches() {
      return "The resultant is 0 exactly when a root of the one is a root of the other.";
    }

    @Override
    public Attempt attempt(PairProblem problem) {
      LetterLines lines = new LetterLines();
      LetteredSetting setting = PairRoutes.setting(problem);
      String r = problem.names().get(0);
      Formula root = Formula.name(r);
      MultivariatePolynomial lead = problem.first().lead();
      if (lead.isConstant()) {
        MultivariatePolynomial reduced = reduced(problem);
        LetteredPolynomial rest = new LetteredPolynomial(reduced, r, problem.letters());
        lines.add(
            setting,
            Idea.REDUCE,
            "by A(r) = 0",
            new Formula.Application("B", List.of(root)),
            rest.formula());
        if (problem.letters().size() <= 2 && reduced.degreeIn(0) > 0) {
          lines.add(
              setting,
              Idea.SUM_OVER_ROOTS,
              "over all roots of A",
              new Formula.Aggregate(
                  Formula.Aggregate.Operation.PRODUCT, new Formula.Application("B", List.of(root))),
              new Formula.Aggregate(Formula.Aggregate.Operation.PRODUCT, rest.formula()));
        }
      }
      lines.add(setting, Idea.ELIMINATE, "the resultant", PairRoutes.resultant(problem), written);
      return new Attempt.Worked(title(), lines.steps(), answer, List.of());
    }

    /** B less a multiple of A, of lower degree than A, where the lead of A is a number. */
    private static MultivariatePolynomial reduced(PairProblem problem) {
      MultivariatePolynomial rest = problem.second().polynomial();
      MultivariatePolynomial a = problem.first().polynomial();
      int n = problem.first().degree();
      while (!rest.isZero() && rest.degreeIn(0) >= n) {
        int power = rest.degreeIn(0);
        MultivariatePolynomial lead = rest.coefficientsIn(0).get(power);
        MultivariatePolynomial scaled =
            lead.times(problem.first().lead().coefficient(Monomial.ONE).reciprocal());
        rest =
            rest.minus(a.times(scaled).times(MultivariatePolynomial.unknown(0).power(power - n)));
      }
      return rest;
    }
  }
}
