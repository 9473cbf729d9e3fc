package rootwright.press.pdf;

import java.util.Map;
import java.util.Optional;

/**
 * Signs that people write between words and that the typeface lacks: each is drawn as a formula
 * instead.
 */
final class MissingSigns {

  /**
   * A sign drawn as a formula.
   *
   * @param latex how it is drawn
   * @param linear how it is written in ASCII
   */
  record Sign(String latex, String linear) {}

  private static final Map<Integer, Sign> SIGNS =
      Map.ofEntries(
          sign('≈', "\\approx", "~"),
          sign('≠', "\\ne", "!="),
          sign('≤', "\\le", "<="),
          sign('≥', "\\ge", ">="),
          sign('≡', "\\equiv", "="),
          sign('∞', "\\infty", "infinity"),
          sign('⇒', "\\Rightarrow", "=>"),
          sign('⇔', "\\Leftrightarrow", "<=>"),
          sign('∈', "\\in", "in"),
          sign('∉', "\\notin", "not in"),
          sign('∅', "\\emptyset", "{}"),
          sign('∑', "\\Sigma", "sum"),
          sign('∏', "\\Pi", "product"),
          sign('∛', "\\sqrt[3]{\\ }", "cbrt"),
          sign('′', "{}'", "'"),
          sign('ℤ', "\\mathbb{Z}", "Z"),
          sign('ℚ', "\\mathbb{Q}", "Q"),
          sign('ℝ', "\\mathbb{R}", "R"),
          sign('ℂ', "\\mathbb{C}", "C"),
          sign('⁰', "{}^0", "^0"),
          sign('⁴', "{}^4", "^4"),
          sign('⁵', "{}^5", "^5"),
          sign('⁶', "{}^6", "^6"),
          sign('⁷', "{}^7", "^7"),
          sign('⁸', "{}^8", "^8"),
          sign('⁹', "{}^9", "^9"),
          sign('⁻', "{}^-", "^-"),
          sign('ⁱ', "{}^i", "^i"),
          sign('ⁿ', "{}^n", "^n"),
          sign('ᵏ', "{}^k", "^k"),
          sign('₀', "{}_0", "_0"),
          sign('₁', "{}_1", "_1"),
          sign('₂', "{}_2", "_2"),
          sign('₃', "{}_3", "_3"),
          sign('₄', "{}_4", "_4"),
          sign('₅', "{}_5", "_5"),
          sign('₆', "{}_6", "_6"),
          sign('₇', "{}_7", "_7"),
          sign('₈', "{}_8", "_8"),
          sign('₉', "{}_9", "_9"),
          sign('ₙ', "{}_n", "_n"),
          sign('ₖ', "{}_k", "_k"),
          sign('λ', "\\lambda", "lambda"));

  private MissingSigns() {}

  /** How a sign is drawn, if it can be. */
  static Optional<Sign> drawn(int codePoint) {
    return Optional.ofNullable(SIGNS.get(codePoint));
  }

  private static Map.Entry<Integer, Sign> sign(char sign, String latex, String linear) {
    return Map.entry((int) sign, new Sign(latex, linear));
  }
}
