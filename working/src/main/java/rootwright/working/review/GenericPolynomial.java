package rootwright.working.review;

import java.util.ArrayList;
import java.util.List;
import rootwright.algebra.notation.Formula;
import rootwright.working.problem.Problem;

/**
 * Writes P(c) as a·(c − r)(c − s)…, and P′(c), P″(c) by the product rule, so that what holds for
 * every polynomial with this leading coefficient becomes an identity in the roots.
 */
final class GenericPolynomial {

  private final Problem problem;

  GenericPolynomial(Problem problem) {
    this.problem = problem;
  }

  /** The formula with P and its first two derivatives written out. */
  Formula writtenOut(Formula formula) {
    return formula.rewrite(
        part ->
            part instanceof Formula.Application application && application.arguments().size() == 1
                ? applied(application)
                : part);
  }

  private Formula applied(Formula.Application application) {
    Formula at = application.arguments().get(0);
    return switch (application.function()) {
      case "P" -> derivative(at, 0);
      case "P'" -> derivative(at, 1);
      case "P''" -> derivative(at, 2);
      default -> application;
    };
  }

  /** The sum of the products that leave out {@code order} factors, in every order. */
  private Formula derivative(Formula at, int order) {
    List<Formula> factors =
        problem.roots().stream().map(root -> at.minus(Formula.name(root))).toList();
    List<List<Formula>> products = List.of(factors);
    for (int k = 0; k < order; k++) {
      List<List<Formula>> next = new ArrayList<>();
      for (List<Formula> product : products) {
        for (int left = 0; left < product.size(); left++) {
          List<Formula> fewer = new ArrayList<>(product);
          fewer.remove(left);
          next.add(fewer);
        }
      }
      products = next;
    }
    Formula sum = Formula.sum(products.stream().map(Formula::product).toList());
    return Formula.number(problem.polynomial().lead()).times(sum);
  }
}
