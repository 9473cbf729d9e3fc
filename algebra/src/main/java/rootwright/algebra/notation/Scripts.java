package rootwright.algebra.notation;

import java.util.HashMap;
import java.util.Map;

/** Raised and lowered characters, and the fractions that are one character. */
final class Scripts {

  private static final String RAISED = "⁰¹²³⁴⁵⁶⁷⁸⁹⁺⁻⁼⁽⁾ⁿⁱᵏᵐᵃᵇʳˢᵗˣ";
  private static final String RAISED_AS = "0123456789+-=()nikmabrstx";
  private static final String LOWERED = "₀₁₂₃₄₅₆₇₈₉₊₋₌₍₎ₙᵢⱼₖₘₐₑₕₓᵣₛₜₚ";
  private static final String LOWERED_AS = "0123456789+-=()nijkmaehxrstp";
  private static final String VULGAR = "½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅐⅛⅜⅝⅞⅑⅒";
  private static final String[] VULGAR_AS = {
    "1/2", "1/3", "2/3", "1/4", "3/4", "1/5", "2/5", "3/5", "4/5", "1/6", "5/6", "1/7", "1/8",
    "3/8", "5/8", "7/8", "1/9", "1/10"
  };

  private static final Map<Character, Character> RAISING = new HashMap<>();
  private static final Map<Character, Character> LOWERING = new HashMap<>();

  static {
    for (int k = 0; k < 12; k++) {
      RAISING.put(RAISED_AS.charAt(k), RAISED.charAt(k));
      LOWERING.put(LOWERED_AS.charAt(k), LOWERED.charAt(k));
    }
    RAISING.put('n', 'ⁿ');
    RAISING.put('k', 'ᵏ');
    RAISING.put('m', 'ᵐ');
    RAISING.put('x', 'ˣ');
    LOWERING.put('n', 'ₙ');
    LOWERING.put('k', 'ₖ');
    LOWERING.put('m', 'ₘ');
    LOWERING.put('i', 'ᵢ');
    LOWERING.put('j', 'ⱼ');
  }

  private Scripts() {}

  /** The plain text of a raised character; empty if it is not raised. */
  static String raised(int character) {
    return at(RAISED, RAISED_AS, character);
  }

  /** The plain text of a lowered character; empty if it is not lowered. */
  static String lowered(int character) {
    return at(LOWERED, LOWERED_AS, character);
  }

  /** The fraction {@code a/b} that a character stands for; empty if it is none. */
  static String vulgar(int character) {
    int place = VULGAR.indexOf(character);
    return place < 0 ? "" : VULGAR_AS[place];
  }

  /** The text in raised characters; empty if a character has no raised form. */
  static String raise(String text) {
    return mapped(text, RAISING);
  }

  /** The text in lowered characters; empty if a character has no lowered form. */
  static String lower(String text) {
    return mapped(text, LOWERING);
  }

  private static String at(String characters, String meanings, int character) {
    int place = characters.indexOf(character);
    return place < 0 ? "" : meanings.substring(place, place + 1);
  }

  private static String mapped(String text, Map<Character, Character> table) {
    StringBuilder result = new StringBuilder();
    for (int k = 0; k < text.length(); k++) {
      Character image = table.get(text.charAt(k));
      if (image == null) {
        return "";
      }
      result.append(image);
    }
    return result.toString();
  }
}
