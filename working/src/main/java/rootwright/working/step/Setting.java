package rootwright.working.step;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.polynomial.Polynomial;

/**
 * What the names in a claim stand for.
 *
 * @param polynomial the polynomial whose roots are meant; degree at least 1
 * @param roots names of its roots, each standing for another root (counted with multiplicity); at
 *     most as many as the degree
 * @param functions what {@code P}, {@code Q}, … applied to something mean; primes are derivatives
 * @param definitions names introduced on the way ({@code y = r − 3}), in terms of the roots
 * @param free letters for which a claim must hold identically, such as x in P(x) = (x − 2)·Q(x)
 */
public record Setting(
    Polynomial polynomial,
    List<String> roots,
    Map<String, Polynomial> functions,
    Map<String, Formula> definitions,
    List<String> free) {

  /**
   * Checks that there are no more names than roots.
   *
   * @throws IllegalArgumentException if there are
   */
  public Setting {
    roots = List.copyOf(roots);
    functions = Map.copyOf(functions);
    definitions = Map.copyOf(definitions);
    free = List.copyOf(free);
    if (polynomial.degree() < 1 || roots.size() > polynomial.degree()) {
      throw new IllegalArgumentException(
          "%d names for the roots of a polynomial of degree %d"
              .formatted(roots.size(), polynomial.degree()));
    }
  }

  /** The setting in which P is the polynomial and nothing else is named. */
  public static Setting of(Polynomial polynomial, List<String> roots) {
    return new Setting(polynomial, roots, Map.of("P", polynomial), Map.of(), List.of());
  }

  /** The setting for claims in which no root occurs, identically in these letters. */
  public static Setting ofLetters(List<String> letters) {
    return new Setting(Polynomial.X, List.of(), Map.of(), Map.of(), letters);
  }

  /**
   * The setting as formulas see it in which nothing is applied: without the functions, so that
   * settings which differ in these alone become equal.
   */
  public Setting withoutFunctions() {
    return functions.isEmpty() ? this : new Setting(polynomial, roots, Map.of(), definitions, free);
  }

  /** The same with one more polynomial to apply. */
  public Setting withFunction(String name, Polynomial function) {
    Map<String, Polynomial> more = new HashMap<>(functions);
    more.put(name, function);
    return new Setting(polynomial, roots, more, definitions, free);
  }

  /** The same with one more name, defined in terms of the roots and earlier names. */
  public Setting withDefinition(String name, Formula meaning) {
    Map<String, Formula> more = new HashMap<>(definitions);
    more.put(name, meaning);
    return new Setting(polynomial, roots, functions, more, free);
  }

  /** The same with one more letter for which claims hold identically. */
  public Setting withFree(String letter) {
    List<String> more = new ArrayList<>(free);
    more.add(letter);
    return new Setting(polynomial, roots, functions, definitions, more);
  }
}
