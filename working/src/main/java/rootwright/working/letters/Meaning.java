package rootwright.working.letters;

import rootwright.algebra.notation.Formula;

/** What words in an ask stand for, written in the roots. */
final class Meaning {

  private Meaning() {}

  /** The discriminant is lead^(2n−2)·∏(r − s)². */
  static Formula of(Formula ask, LetteredProblem problem) {
    boolean discriminant =
        ask instanceof Formula.Application application
            && application.function().equals("discriminant")
            && application.arguments().isEmpty();
    if (!discriminant) {
      return ask;
    }
    int n = problem.polynomial().degree();
    Formula lead = InLetters.formula(problem.polynomial().lead(), problem.polynomial().letters());
    if (n == 1) {
      return Formula.number(1);
    }
    Formula product =
        new Formula.Aggregate(
            Formula.Aggregate.Operation.PRODUCT,
            Formula.name(problem.roots().get(0))
                .minus(Formula.name(problem.roots().get(1)))
                .power(2));
    return lead.equals(Formula.number(1)) ? product : lead.power(2L * n - 2).times(product);
  }
}
