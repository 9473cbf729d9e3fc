package rootwright.algebra.notation;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Sums and products with “cyc” or “sym” below the sign, which can be written out only when the
 * names of all roots are known. Cyclic: one term for each turn of the names round. Symmetric: one
 * term for each of the n! renamings, so that equal terms count as often as they come, as is common
 * practice.
 */
final class TurnedRound {

  private static final String CYCLIC = "cyclic ";
  private static final String RENAMED = "symmetric ";

  private TurnedRound() {}

  /** The sum or product as typed, to be written out later. */
  static Formula typed(Formula.Aggregate.Operation operation, Caption.Order order, Formula body) {
    String word = operation == Formula.Aggregate.Operation.SUM ? "sum" : "product";
    return new Formula.Application(
        (order == Caption.Order.CYCLIC ? CYCLIC : RENAMED) + word, List.of(body));
  }

  /** The formula with every such sum and product written out for these roots. */
  static Formula writtenOut(Formula formula, List<String> roots) {
    return NormalForm.of(
        formula.rewrite(
            part ->
                part instanceof Formula.Application application
                    ? writtenOut(application, roots)
                    : part));
  }

  /** Whether the formula holds such a sum or product. */
  static boolean occursIn(Formula formula) {
    return formula.contains(
        part ->
            part instanceof Formula.Application application
                && (application.function().startsWith(CYCLIC)
                    || application.function().startsWith(RENAMED)));
  }

  private static Formula writtenOut(Formula.Application application, List<String> roots) {
    boolean sum = application.function().endsWith("sum");
    if (application.function().startsWith(CYCLIC)) {
      Formula body = application.arguments().get(0);
      List<Formula> terms = new ArrayList<>();
      for (int turn = 0; turn < roots.size(); turn++) {
        terms.add(turned(body, roots, turn));
      }
      return terms.size() == 1
          ? terms.get(0)
          : sum ? new Formula.Sum(terms) : new Formula.Product(terms);
    }
    if (application.function().startsWith(RENAMED)) {
      return renamed(application, sum, roots);
    }
    return application;
  }

  /** Every form as often as renamings lead to it. */
  private static Formula renamed(Formula.Application application, boolean sum, List<String> roots) {
    Formula body = application.arguments().get(0);
    Optional<List<Formula>> forms = Forms.of(body, roots);
    if (forms.isEmpty()) {
      return application;
    }
    int renamings = 1;
    for (int k = 2; k <= roots.size(); k++) {
      renamings *= k;
    }
    int times = renamings / forms.get().size();
    Formula aggregate =
        new Formula.Aggregate(
            sum ? Formula.Aggregate.Operation.SUM : Formula.Aggregate.Operation.PRODUCT, body);
    return times == 1
        ? aggregate
        : sum
            ? new Formula.Product(List.of(Formula.number(times), aggregate))
            : aggregate.power(times);
  }

  private static Formula turned(Formula body, List<String> roots, int turn) {
    Map<String, String> names = new HashMap<>();
    for (int k = 0; k < roots.size(); k++) {
      names.put(roots.get(k), roots.get((k + turn) % roots.size()));
    }
    return body.rewrite(
        part ->
            part instanceof Formula.Name name && names.containsKey(name.spelling())
                ? Formula.name(names.get(name.spelling()))
                : part);
  }
}
