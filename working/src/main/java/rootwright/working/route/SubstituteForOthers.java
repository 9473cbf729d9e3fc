package rootwright.working.route;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import rootwright.algebra.notation.Formula;
import rootwright.working.ask.Asked;
import rootwright.working.check.exact.Expansion;
import rootwright.working.problem.Problem;

/**
 * Where each term is the same for all roots but one, puts e_1 − r for the sum of the others and
 * e_n/r for their product, so that one root is left in each term.
 */
final class SubstituteForOthers implements Route {

  static final String TITLE = "put one root for the sum of the others";

  @Override
  public String name() {
    return "substitute";
  }

  @Override
  public String title() {
    return TITLE;
  }

  @Override
  public String teaches() {
    return "The other roots together are known as soon as one root is.";
  }

  @Override
  public Attempt attempt(Asked asked) {
    if (asked.quotient().isEmpty()) {
      return Reasons.NOT_SYMMETRIC;
    } else if (asked.sumOverRoots().isPresent() || asked.productOverRoots().isPresent()) {
      return new Attempt.Declined("every term has one root in it already");
    }
    Problem problem = asked.problem();
    Optional<Formula> written = WrittenOut.of(problem);
    boolean product = written.filter(Formula.Product.class::isInstance).isPresent();
    List<Formula> terms =
        written
            .filter(formula -> product || formula instanceof Formula.Sum)
            .map(Formula::parts)
            .orElse(List.of());
    if (problem.degree() < 3 || terms.size() != problem.degree()) {
      return new Attempt.Declined("the ask does not have one term for every root");
    }
    Attempt last = new Attempt.Declined("no term is the same for all roots but one");
    for (OthersReplaced.ProductAs productAs : OthersReplaced.ProductAs.values()) {
      Optional<OthersReplaced> replaced = common(terms, problem, productAs);
      if (replaced.isPresent()) {
        OneForOthers lines = new OneForOthers(asked, terms.get(0), replaced.get());
        last = product ? lines.product() : lines.sum();
      }
      if (last instanceof Attempt.Worked) {
        return last;
      }
    }
    return last;
  }

  /** What the first term turns into, if every term turns into the same function of another root. */
  private static Optional<OthersReplaced> common(
      List<Formula> terms, Problem problem, OthersReplaced.ProductAs productAs) {
    List<OthersReplaced> found = new ArrayList<>();
    Set<Integer> roots = new HashSet<>();
    for (Formula term : terms) {
      Optional<OthersReplaced> one =
          Expansion.of(term, problem)
              .flatMap(
                  expression -> OthersReplaced.of(expression, problem.polynomial(), productAs));
      if (one.isEmpty() || !roots.add(one.get().root())) {
        return Optional.empty();
      }
      found.add(one.get());
    }
    return found.stream().map(OthersReplaced::f).distinct().count() == 1
        ? Optional.of(found.get(0))
        : Optional.empty();
  }
}
