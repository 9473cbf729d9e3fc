package rootwright.algebra.notation;

import java.util.HashMap;
import java.util.Map;

/** The table of signs: every spelling that is read, and the canonical one it stands for. */
final class Signs {

  /** The longest spelling in the table, in code points. */
  static final int LONGEST = 3;

  private static final Map<String, String> CANONICAL = new HashMap<>();

  static {
    same("+", "+", "＋");
    same("-", "-", "−", "–", "—", "‐", "‑", "－");
    same("+-", "+-", "+/-", "±");
    same("*", "*", "×", "·", "⋅", "∗", "•", "∙", "\u2062");
    same("/", "/", "÷", "⁄", "∕");
    same("^", "^", "**", "ˆ");
    same("_", "_");
    same("=", "=", "==", "＝");
    same("!=", "!=", "<>", "≠");
    same("<=", "<=", "=<", "≤", "⩽", "≦");
    same(">=", ">=", "≥", "⩾", "≧");
    same("<", "<");
    same(">", ">");
    same("≡", "≡", "===");
    same(",", ",", "\u2063");
    same("'", "'", "′", "’");
    same("''", "''", "″");
    same("√", "√");
    same("∛", "∛");
    same("∜", "∜");
    same("Σ", "Σ", "∑");
    same("Π", "Π", "∏");
  }

  private Signs() {}

  private static void same(String canonical, String... spellings) {
    for (String spelling : spellings) {
      CANONICAL.put(spelling, canonical);
    }
  }

  /** The canonical spelling, or an empty text if this is not the spelling of a sign. */
  static String canonical(String spelling) {
    return CANONICAL.getOrDefault(spelling, "");
  }
}
