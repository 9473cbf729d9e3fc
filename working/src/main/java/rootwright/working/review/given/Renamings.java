package rootwright.working.review.given;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.FormulaNames;

/** The forms that an expression takes when the roots change their names. */
final class Renamings {

  private static final int MOST = 800;

  private Renamings() {}

  /** The forms, those that come to the same not taken together; at most {@value #MOST}. */
  static List<Formula> of(Formula body, List<Applied> polynomials) {
    List<Map<String, String>> renamings = List.of(Map.of());
    for (Applied polynomial : polynomials) {
      List<String> occurring =
          polynomial.roots().stream().filter(FormulaNames.in(body)::contains).toList();
      List<Map<String, String>> more = new ArrayList<>();
      renamings.forEach(renaming -> choose(occurring, polynomial.roots(), renaming, more));
      renamings = more;
    }
    return renamings.stream().map(renaming -> renamed(body, renaming)).toList();
  }

  private static void choose(
      List<String> from,
      List<String> to,
      Map<String, String> start,
      List<Map<String, String>> found) {
    if (from.isEmpty()) {
      found.add(start);
      return;
    }
    for (String root : to) {
      if (!start.containsValue(root) && found.size() < MOST) {
        Map<String, String> more = new HashMap<>(start);
        more.put(from.get(0), root);
        choose(from.subList(1, from.size()), to, more, found);
      }
    }
  }

  private static Formula renamed(Formula body, Map<String, String> renaming) {
    return body.rewrite(
        part ->
            part instanceof Formula.Name name && renaming.containsKey(name.spelling())
                ? Formula.name(renaming.get(name.spelling()))
                : part);
  }
}
