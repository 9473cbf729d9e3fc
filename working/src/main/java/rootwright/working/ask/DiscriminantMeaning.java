package rootwright.working.ask;

import java.util.List;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.number.Rational;
import rootwright.algebra.symmetric.Discriminant;
import rootwright.algebra.symmetric.SymmetricPolynomial;
import rootwright.working.problem.Problem;

/** What the word discriminant stands for, written in the roots. */
public final class DiscriminantMeaning {

  /** Six factors for degree 4; ten for degree 5 nobody writes out. */
  private static final int MOST_WRITTEN_OUT = 4;

  private DiscriminantMeaning() {}

  /** a^(2n−2)·Π (r − s)², the product being over pairs; 1 for degree 1. */
  public static Formula of(Problem problem) {
    int n = problem.degree();
    Rational lead = problem.polynomial().lead().power(2 * n - 2);
    if (n == 1) {
      return Formula.number(lead);
    }
    Formula product = squaredDifferences(problem.roots().get(0), problem.roots().get(1));
    return lead.isOne() ? product : Formula.number(lead).times(product);
  }

  /**
   * Whether an ask is for the product of the squared differences by its form: as a product over
   * pairs, or, up to degree 4, written out in whatever way.
   */
  public static boolean isSquaredDifferences(Asked asked) {
    List<String> roots = asked.problem().roots();
    boolean overPairs =
        roots.stream()
            .anyMatch(
                r ->
                    roots.stream()
                        .anyMatch(
                            s -> !r.equals(s) && asked.formula().equals(squaredDifferences(r, s))));
    return overPairs || asked.symmetric().filter(DiscriminantMeaning::isWrittenOut).isPresent();
  }

  private static Formula squaredDifferences(String one, String other) {
    return new Formula.Aggregate(
        Formula.Aggregate.Operation.PRODUCT, Formula.name(one).minus(Formula.name(other)).power(2));
  }

  private static boolean isWrittenOut(SymmetricPolynomial asked) {
    int n = asked.variables();
    return !asked.isZero()
        && n >= 2
        && n <= MOST_WRITTEN_OUT
        && asked.terms().lastKey().weight() == n * (n - 1)
        && asked.equals(Discriminant.universal(n).toSymmetric());
  }
}
