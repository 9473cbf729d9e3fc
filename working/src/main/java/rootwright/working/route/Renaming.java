package rootwright.working.route;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import rootwright.algebra.notation.Formula;

/** Puts formulas for names, all at once. */
record Renaming(Map<String, Formula> meanings) {

  Renaming {
    meanings = Map.copyOf(meanings);
  }

  /** The renaming that exchanges two names. */
  static Renaming exchange(String one, String other) {
    return new Renaming(Map.of(one, Formula.name(other), other, Formula.name(one)));
  }

  /** The renaming that puts the second names for the first, in order. */
  static Renaming of(List<String> names, List<String> others) {
    Map<String, Formula> meanings = new HashMap<>();
    for (int k = 0; k < names.size(); k++) {
      meanings.put(names.get(k), Formula.name(others.get(k)));
    }
    return new Renaming(meanings);
  }

  /** The formula with the meanings put for the names. */
  Formula of(Formula formula) {
    if (formula instanceof Formula.Name name) {
      return meanings.getOrDefault(name.spelling(), name);
    }
    List<Formula> parts = new ArrayList<>();
    for (Formula part : formula.parts()) {
      parts.add(of(part));
    }
    return parts.isEmpty() ? formula : formula.withParts(parts);
  }
}
