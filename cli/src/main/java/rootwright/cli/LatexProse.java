package rootwright.cli;

import java.util.Map;

/** Prose with Unicode mathematics in it as source that a plain {@code article} sets. */
final class LatexProse {

  private static final String SUBSCRIPTS = "₀₁₂₃₄₅₆₇₈₉";
  private static final String SUPERSCRIPTS = "⁰¹²³⁴⁵⁶⁷⁸⁹";

  private static final Map<Character, String> SIGNS =
      Map.ofEntries(
          Map.entry('\\', "\\textbackslash{}"),
          Map.entry('&', "\\&"),
          Map.entry('%', "\\%"),
          Map.entry('#', "\\#"),
          Map.entry('_', "\\_"),
          Map.entry('{', "\\{"),
          Map.entry('}', "\\}"),
          Map.entry('^', "\\textasciicircum{}"),
          Map.entry('~', "\\textasciitilde{}"),
          Map.entry('′', "\\ensuremath{'}"),
          Map.entry('−', "\\ensuremath{-}"),
          Map.entry('≠', "\\ensuremath{\\neq}"),
          Map.entry('≤', "\\ensuremath{\\leq}"),
          Map.entry('≥', "\\ensuremath{\\geq}"),
          Map.entry('≡', "\\ensuremath{\\equiv}"),
          Map.entry('≈', "\\ensuremath{\\approx}"),
          Map.entry('±', "\\ensuremath{\\pm}"),
          Map.entry('·', "\\ensuremath{\\cdot}"),
          Map.entry('∞', "\\ensuremath{\\infty}"),
          Map.entry('√', "\\ensuremath{\\surd}"),
          Map.entry('Σ', "\\ensuremath{\\sum}"),
          Map.entry('Π', "\\ensuremath{\\prod}"),
          Map.entry('ₙ', "\\ensuremath{_{n}}"),
          Map.entry('ₖ', "\\ensuremath{_{k}}"),
          Map.entry('ⁿ', "\\ensuremath{^{n}}"),
          Map.entry('⁻', "\\ensuremath{^{-}}"),
          Map.entry('…', "\\ldots{}"),
          Map.entry('“', "``"),
          Map.entry('”', "''"),
          Map.entry('’', "'"));

  private LatexProse() {}

  static String of(String text) {
    StringBuilder source = new StringBuilder();
    for (int k = 0; k < text.length(); k++) {
      char sign = text.charAt(k);
      int below = SUBSCRIPTS.indexOf(sign);
      int above = SUPERSCRIPTS.indexOf(sign);
      if (below >= 0) {
        source.append("\\ensuremath{_{").append(below).append("}}");
      } else if (above >= 0) {
        source.append("\\ensuremath{^{").append(above).append("}}");
      } else {
        source.append(SIGNS.getOrDefault(sign, String.valueOf(sign)));
      }
    }
    return source.toString();
  }
}
