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
import rootwright.working.problem.RootFunction;

/**
 * Gives a quantity a name where that leaves one letter: r − k in a fraction that has it above and
 * below; or, where each term is the same for all roots but one, e_1 − r for the sum of the others
 * and e_n/r for their product.
 */
final class Substitute implements Route {

  private static final String FOR_OTHERS = "put one root for the sum of the others";

  @Override
  public String name() {
    return "substitute";
  }

  @Override
  public String title() {
    return "give a repeated quantity a name";
  }

  @Override
  public String teaches() {
    return "A good name leaves one letter where there were several.";
  }

  @Override
  public Attempt attempt(Asked asked) {
    if (asked.quotient().isEmpty()) {
      return Reasons.notSymmetric(asked);
    } else if (asked.sumOverRoots().isPresent()) {
      return inOneRoot(asked, asked.sumOverRoots().get());
    } else if (asked.productOverRoots().isPresent()) {
      return new Attempt.Declined("every factor has one root in it already");
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
        last = forOthers(asked, terms.get(0), replaced.get(), product);
      }
      if (last instanceof Attempt.Worked) {
        return last;
      }
    }
    return last;
  }

  /** A fraction in which r − k stands above as well as below. */
  private static Attempt inOneRoot(Asked asked, RootFunction f) {
    if (f.isPolynomial() || f.numerator().degree() < 1) {
      return new Attempt.Declined("nothing stands in it twice, so a name shortens nothing");
    } else if (!(asked.formula() instanceof Formula.Aggregate sum)) {
      return new Attempt.Declined("the terms are not gathered under one sign");
    } else {
      Formula root =
          asked.problem().roots().stream()
              .map(Formula::name)
              .filter(name -> sum.body().contains(name::equals))
              .findFirst()
              .orElseThrow();
      Lines lines = new Lines(asked.problem().setting());
      return new SumInOneRoot(asked, lines, "give what stands below a name", sum.body(), f, root)
          .worked();
    }
  }

  private static Attempt forOthers(
      Asked asked, Formula term, OthersReplaced replaced, boolean product) {
    Formula root = Formula.name(asked.problem().roots().get(replaced.root()));
    Lines lines = new Lines(asked.problem().setting());
    new OneForOthers(asked.problem(), replaced, lines).write();
    return product
        ? new ProductInOneRoot(asked, lines, FOR_OTHERS, term, replaced.f(), root).worked()
        : new SumInOneRoot(asked, lines, FOR_OTHERS, term, replaced.f(), root).worked();
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
