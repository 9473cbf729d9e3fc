package rootwright.working.proof;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.FormulaReader;
import rootwright.algebra.notation.UnreadableException;

/**
 * Formulas said to be equal whatever numbers stand for their letters. P(x) = a·(x − r)(x − s)… with
 * the roots of {@code letters}, unless {@code functions} says otherwise; e_k, p_k, h_k are taken in
 * these roots, and Σ and Π run over all images under renaming them.
 *
 * @param letters the roots
 * @param sides at least two
 * @param functions what {@code P}, {@code Q}, {@code f} and {@code g} are, each a formula in x
 */
public record Identity(Letters letters, List<Formula> sides, Map<String, Formula> functions) {

  /** The lead coefficient of P where nothing else is said. */
  public static final String LEAD = "a";

  /**
   * @throws IllegalArgumentException if there are fewer than two sides
   */
  public Identity {
    sides = List.copyOf(sides);
    functions = Map.copyOf(functions);
    if (sides.size() < 2) {
      throw new IllegalArgumentException("an identity of %d sides".formatted(sides.size()));
    }
  }

  /**
   * An identity from its text, both sides with {@code =} between.
   *
   * @throws IllegalArgumentException if the text is not an equation
   */
  public static Identity of(Letters letters, String equation) {
    if (!(read(equation) instanceof Formula.Relation relation)) {
      throw new IllegalArgumentException("not an equation: " + equation);
    }
    return new Identity(
        letters, relation.sides(), Map.of("P", read(LEAD + "*" + letters.factors("x"))));
  }

  /** The same with one more function of x. */
  public Identity with(String function, String body) {
    Map<String, Formula> more = new HashMap<>(functions);
    more.put(function, read(body));
    return new Identity(letters, sides, more);
  }

  /** The line as it is written. */
  public Formula shown() {
    return Formula.equation(sides.toArray(Formula[]::new));
  }

  static Formula read(String text) {
    try {
      return FormulaReader.formula(text);
    } catch (UnreadableException wrong) {
      throw new IllegalArgumentException(
          "cannot be read: %s (%s)".formatted(text, wrong.getMessage()), wrong);
    }
  }
}
