package rootwright.algebra.notation;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import rootwright.algebra.polynomial.RationalFunction;

/**
 * The forms of an expression when its roots are renamed in all ways: rs, rt and st for rs. Two
 * forms are one if they are equal as fractions of polynomials in the names.
 */
public final class Forms {

  /** More renamings are not tried. */
  private static final int MOST_RENAMINGS = 120;

  private final List<String> roots;
  private final Map<String, Integer> numbers = new HashMap<>();

  private Forms(Formula expression, List<String> roots) {
    this.roots = roots;
    roots.forEach(root -> numbers.put(root, numbers.size()));
    FormulaNames.in(expression).forEach(name -> numbers.putIfAbsent(name, numbers.size()));
  }

  /**
   * Every form once, the expression itself first; empty if there are more than {@value
   * #MOST_RENAMINGS} renamings or the expression is no fraction of polynomials.
   */
  public static Optional<List<Formula>> of(Formula expression, List<String> roots) {
    return new Forms(expression, roots).all(expression).map(found -> List.copyOf(found.values()));
  }

  /**
   * The first of several expressions, if the others are exactly its other forms.
   *
   * @return empty if one of them is no form of the first, one stands twice or a form is missing
   */
  public static Optional<Formula> single(List<Formula> listed, List<String> roots) {
    Formula first = listed.get(0);
    Forms forms = new Forms(first, roots);
    Set<RationalFunction> said = new HashSet<>();
    for (Formula one : listed) {
      Optional<RationalFunction> value = forms.value(one);
      if (value.isEmpty() || !said.add(value.get())) {
        return Optional.empty();
      }
    }
    return forms.all(first).filter(all -> all.keySet().equals(said)).map(all -> first);
  }

  private Optional<Map<RationalFunction, Formula>> all(Formula expression) {
    List<String> used = FormulaNames.in(expression).stream().filter(roots::contains).toList();
    List<Map<String, String>> renamings = new ArrayList<>(List.of(Map.of()));
    for (String name : used) {
      renamings = extended(renamings, name);
      if (renamings.size() > MOST_RENAMINGS) {
        return Optional.empty();
      }
    }
    Map<RationalFunction, Formula> forms = new LinkedHashMap<>();
    for (Map<String, String> renaming : renamings) {
      Formula form = renamed(expression, renaming);
      Optional<RationalFunction> value = value(form);
      if (value.isEmpty()) {
        return Optional.empty();
      }
      forms.putIfAbsent(value.get(), form);
    }
    return Optional.of(forms);
  }

  /** Each renaming with every name that this root may get besides. */
  private List<Map<String, String>> extended(List<Map<String, String>> renamings, String name) {
    List<Map<String, String>> longer = new ArrayList<>();
    int place = roots.indexOf(name);
    for (Map<String, String> renaming : renamings) {
      for (int turn = 0; turn < roots.size(); turn++) {
        String next = roots.get((place + turn) % roots.size());
        if (!renaming.containsValue(next)) {
          Map<String, String> more = new HashMap<>(renaming);
          more.put(name, next);
          longer.add(more);
        }
      }
    }
    return longer;
  }

  private static Formula renamed(Formula expression, Map<String, String> renaming) {
    return expression.rewrite(
        part ->
            part instanceof Formula.Name name && renaming.containsKey(name.spelling())
                ? Formula.name(renaming.get(name.spelling()))
                : part);
  }

  private Optional<RationalFunction> value(Formula formula) {
    try {
      return Optional.of(new FunctionEvaluation(numbers).valueOf(formula));
    } catch (PartRefusedException refused) {
      return Optional.empty();
    }
  }
}
