package rootwright.algebra.notation;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;

/** The names that occur in a formula. */
public final class FormulaNames {

  private FormulaNames() {}

  /** The spelling of every name, each once, in the order of its first occurrence. */
  public static Set<String> in(Formula formula) {
    return new LinkedHashSet<>(first(formula).keySet());
  }

  /** The first occurrence of every name, by its spelling. */
  static Map<String, Formula.Name> first(Formula formula) {
    Map<String, Formula.Name> names = new LinkedHashMap<>();
    collect(formula, names);
    return names;
  }

  private static void collect(Formula formula, Map<String, Formula.Name> names) {
    if (formula instanceof Formula.Name name) {
      names.putIfAbsent(name.spelling(), name);
    }
    for (Formula part : formula.parts()) {
      collect(part, names);
    }
  }
}
