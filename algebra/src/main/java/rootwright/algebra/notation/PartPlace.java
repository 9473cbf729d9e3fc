package rootwright.algebra.notation;

import java.util.Map;
import java.util.function.Predicate;

/** Where a part of a formula stands in the text it was read from. */
public final class PartPlace {

  private PartPlace() {}

  /** The code point at which a part like this first begins; 0 if that cannot be told. */
  public static int of(String text, Formula part) {
    Formula wanted = NormalForm.of(part);
    return in(text, wanted::equals);
  }

  /** The code point at which a part spelled so first begins; 0 if that cannot be told. */
  static int in(String text, String spelling) {
    return in(text, part -> isSpelled(part, spelling));
  }

  private static int in(String text, Predicate<Formula> wanted) {
    try {
      PlacedFormula placed = FormulaReader.placed(text);
      return placed.places().entrySet().stream()
          .filter(entry -> wanted.test(entry.getKey()))
          .mapToInt(Map.Entry::getValue)
          .min()
          .orElse(0);
    } catch (UnreadableException unreadable) {
      return 0;
    }
  }

  private static boolean isSpelled(Formula part, String spelling) {
    return part instanceof Formula.Name name
        ? name.spelling().equals(spelling)
        : part.parts().isEmpty() && PlainWriter.write(part).equals(spelling);
  }
}
