package rootwright.press.formula;

import java.util.Map;
import java.util.Optional;

/**
 * Signs of mathematics that people write between words. A typeface that lacks one has it drawn as a
 * formula, and LaTeX has it written as one.
 */
public final class Signs {

  /**
   * A sign as a formula.
   *
   * @param latex how it is drawn
   * @param linear how it is written in ASCII
   */
  public record Sign(String latex, String linear) {}

  private static final Map<Integer, Sign> SIGNS =
      Map.ofEntries(
          sign('−', "-", "-"),
          sign('±', "\\pm", "+-"),
          sign('·', "\\cdot", "*"),
          sign('×', "\\times", "*"),
          sign('√', "\\surd", "sqrt"),
          sign('→', "\\to", "->"),
          sign('°', "{}^\\circ", " degrees"),
          sign('¹', "{}^1", "^1"),
          sign('²', "{}^2", "^2"),
          sign('³', "{}^3", "^3"),
          sign('½', "\\tfrac12", "1/2"),
          sign('¼', "\\tfrac14", "1/4"),
          sign('¾', "\\tfrac34", "3/4"),
          sign('Σ', "\\Sigma", "sum"),
          sign('Π', "\\Pi", "product"),
          sign('α', "\\alpha", "alpha"),
          sign('β', "\\beta", "beta"),
          sign('γ', "\\gamma", "gamma"),
          sign('δ', "\\delta", "delta"),
          sign('θ', "\\theta", "theta"),
          sign('μ', "\\mu", "mu"),
          sign('π', "\\pi", "pi"),
          sign('σ', "\\sigma", "sigma"),
          sign('ω', "\\omega", "omega"),
          sign('Δ', "\\Delta", "Delta"),
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
          sign('∜', "\\sqrt[4]{\\ }", "fourth root of"),
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
          sign('ₘ', "{}_m", "_m"),
          sign('ᵢ', "{}_i", "_i"),
          sign('ⱼ', "{}_j", "_j"),
          sign('ᵐ', "{}^m", "^m"),
          sign('⌊', "\\lfloor", "floor("),
          sign('⌋', "\\rfloor", ")"),
          sign('⌈', "\\lceil", "ceil("),
          sign('⌉', "\\rceil", ")"),
          sign('ε', "\\varepsilon", "epsilon"),
          sign('ζ', "\\zeta", "zeta"),
          sign('η', "\\eta", "eta"),
          sign('ρ', "\\rho", "rho"),
          sign('τ', "\\tau", "tau"),
          sign('φ', "\\varphi", "phi"),
          sign('λ', "\\lambda", "lambda"));

  private Signs() {}

  /** The sign as a formula, empty if we know of none. */
  public static Optional<Sign> formula(int codePoint) {
    return Optional.ofNullable(SIGNS.get(codePoint));
  }

  private static Map.Entry<Integer, Sign> sign(char sign, String latex, String linear) {
    return Map.entry((int) sign, new Sign(latex, linear));
  }
}
