package rootwright.working.values;

import java.util.ArrayList;
import java.util.List;
import rootwright.algebra.notation.Formula;

/** e_k as a letter that stands for something, and written out in the numbers. */
final class ElementaryNames {

  private ElementaryNames() {}

  /** The letter e_k, for settings in which it is free or defined. */
  static Formula letter(int k) {
    return new Formula.Name("e", String.valueOf(k));
  }

  /** The sum of all products of k of the names. */
  static Formula inNames(List<String> names, int k) {
    List<Formula> products = new ArrayList<>();
    collect(names, k, 0, List.of(), products);
    return Formula.sum(products);
  }

  private static void collect(
      List<String> names, int left, int from, List<Formula> chosen, List<Formula> products) {
    if (left == 0) {
      products.add(Formula.product(chosen));
      return;
    }
    for (int k = from; k + left <= names.size(); k++) {
      List<Formula> longer = new ArrayList<>(chosen);
      longer.add(Formula.name(names.get(k)));
      collect(names, left - 1, k + 1, longer, products);
    }
  }
}
