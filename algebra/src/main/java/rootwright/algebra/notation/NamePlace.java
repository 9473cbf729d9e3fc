package rootwright.algebra.notation;

/** Where a name stands in a text. */
final class NamePlace {

  private NamePlace() {}

  /** The code point at which a part spelled so first begins; 0 if that cannot be told. */
  static int in(String text, String spelling) {
    try {
      PlacedFormula placed = FormulaReader.placed(text);
      return placed.places().entrySet().stream()
          .filter(entry -> isSpelled(entry.getKey(), spelling))
          .mapToInt(java.util.Map.Entry::getValue)
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
