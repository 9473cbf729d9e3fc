package rootwright.algebra.notation;

import java.util.Map;

/** The brackets that are read, opening to closing. */
final class Brackets {

  private static final Map<String, String> PAIRS =
      Map.of("(", ")", "[", "]", "{", "}", "⌊", "⌋", "⌈", "⌉");

  private Brackets() {}

  static boolean opens(String text) {
    return PAIRS.containsKey(text);
  }

  static boolean closes(String text) {
    return PAIRS.containsValue(text);
  }

  /** The bracket that closes an opening one. */
  static String closing(String opening) {
    return PAIRS.getOrDefault(opening, "");
  }
}
