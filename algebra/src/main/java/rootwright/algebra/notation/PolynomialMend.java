package rootwright.algebra.notation;

import java.util.regex.Pattern;

/** Guesses what was meant where a text is a formula but not a polynomial. */
final class PolynomialMend {

  private static final Pattern DECIMAL_COMMA = Pattern.compile("(\\d),(\\d)");

  private PolynomialMend() {}

  /**
   * {@code x^2} for {@code x2}, {@code -} for {@code +-}, a point for a decimal comma; empty if
   * nothing can be guessed.
   */
  static String of(PlacedFormula placed, PartRefusedException refused) {
    String text = placed.text();
    int at = text.offsetByCodePoints(0, placed.placeOf(refused.part()));
    if (refused.part() instanceof Formula.Name name) {
      return power(text, at, name);
    }
    if (refused.part() instanceof Formula.Listing) {
      return DECIMAL_COMMA.matcher(text).replaceAll("$1.$2");
    }
    return refused.part() instanceof Formula.PlusMinus ? text.replace("+-", "-") : "";
  }

  /** The text with {@code x^2} for {@code x2} at a place; empty if that does not stand there. */
  static String power(String text, int at, Formula.Name name) {
    String typed = name.letter() + name.index();
    return !name.index().isEmpty() && text.startsWith(typed, at)
        ? text.substring(0, at)
            + name.letter()
            + "^"
            + name.index()
            + text.substring(at + typed.length())
        : "";
  }
}
