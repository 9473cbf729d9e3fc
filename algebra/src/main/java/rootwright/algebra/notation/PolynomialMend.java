package rootwright.algebra.notation;

/** Guesses what was meant where a text is a formula but not a polynomial. */
final class PolynomialMend {

  private PolynomialMend() {}

  /** {@code x2} for {@code x^2}, {@code +-} for {@code -}; empty if nothing can be guessed. */
  static String of(PlacedFormula placed, PartRefusedException refused) {
    String text = placed.text();
    int at = text.offsetByCodePoints(0, placed.placeOf(refused.part()));
    if (refused.part() instanceof Formula.Name name && !name.index().isEmpty()) {
      String typed = name.letter() + name.index();
      return text.startsWith(typed, at)
          ? text.substring(0, at)
              + name.letter()
              + "^"
              + name.index()
              + text.substring(at + typed.length())
          : "";
    }
    return refused.part() instanceof Formula.PlusMinus ? text.replace("+-", "-") : "";
  }
}
