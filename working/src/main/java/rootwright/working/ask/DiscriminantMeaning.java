package rootwright.working.ask;

import rootwright.algebra.notation.Formula;
import rootwright.algebra.number.Rational;
import rootwright.working.problem.Problem;

/** What the word discriminant stands for, written in the roots. */
public final class DiscriminantMeaning {

  private DiscriminantMeaning() {}

  /** a^(2n−2)·Π (r − s)², the product being over pairs; 1 for degree 1. */
  public static Formula of(Problem problem) {
    int n = problem.degree();
    Rational lead = problem.polynomial().lead().power(2 * n - 2);
    if (n == 1) {
      return Formula.number(lead);
    }
    Formula difference =
        Formula.name(problem.roots().get(0)).minus(Formula.name(problem.roots().get(1)));
    Formula product =
        new Formula.Aggregate(Formula.Aggregate.Operation.PRODUCT, difference.power(2));
    return lead.isOne() ? product : Formula.number(lead).times(product);
  }
}
