package rootwright.working.proof;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.FormulaNames;
import rootwright.algebra.polynomial.RationalFunction;

/** The images of an expression under renaming the roots, those that are formally distinct. */
final class FormalImages {

  private static final int MOST = 900;

  private FormalImages() {}

  static List<Formula> of(Formula body, Identity identity) {
    List<String> roots = identity.letters().roots();
    List<String> occurring = FormulaNames.in(body).stream().filter(roots::contains).toList();
    List<Map<String, String>> renamings = new ArrayList<>();
    renamings(occurring, roots, new LinkedHashMap<>(), renamings);
    if (renamings.size() > MOST) {
      throw new UnsayableException("there are too many images to add up");
    }
    ExpandedEvaluation evaluation = new ExpandedEvaluation(identity);
    Set<RationalFunction> seen = new HashSet<>();
    List<Formula> images = new ArrayList<>();
    for (Map<String, String> renaming : renamings) {
      Formula image = renamed(body, renaming);
      if (seen.add(evaluation.valueOf(image).lowestTerms())) {
        images.add(image);
      }
    }
    return images;
  }

  static Formula renamed(Formula formula, Map<String, String> renaming) {
    return formula.rewrite(
        part ->
            part instanceof Formula.Name name && renaming.containsKey(name.spelling())
                ? Formula.name(renaming.getOrDefault(name.spelling(), name.spelling()))
                : part);
  }

  private static void renamings(
      List<String> from,
      List<String> to,
      Map<String, String> chosen,
      List<Map<String, String>> into) {
    if (chosen.size() == from.size()) {
      into.add(new LinkedHashMap<>(chosen));
      return;
    }
    String next = from.get(chosen.size());
    for (String image : to) {
      if (!chosen.containsValue(image)) {
        chosen.put(next, image);
        renamings(from, to, chosen, into);
        chosen.remove(next);
      }
    }
  }
}
