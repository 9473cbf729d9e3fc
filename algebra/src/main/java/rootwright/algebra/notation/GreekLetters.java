package rootwright.algebra.notation;

import java.util.HashMap;
import java.util.Map;

/** The Greek letters with their English names. */
final class GreekLetters {

  private static final String[] ROWS = {
    "α alpha",
    "β beta",
    "γ gamma",
    "δ delta",
    "ε epsilon",
    "ζ zeta",
    "η eta",
    "θ theta",
    "ι iota",
    "κ kappa",
    "λ lambda",
    "μ mu",
    "ν nu",
    "ξ xi",
    "π pi",
    "ρ rho",
    "σ sigma",
    "τ tau",
    "υ upsilon",
    "φ phi",
    "χ chi",
    "ψ psi",
    "ω omega",
    "Γ Gamma",
    "Δ Delta",
    "Θ Theta",
    "Λ Lambda",
    "Ξ Xi",
    "Φ Phi",
    "Ψ Psi",
    "Ω Omega"
  };

  private static final Map<String, String> BY_NAME = new HashMap<>();
  private static final Map<String, String> NAMES = new HashMap<>();

  static {
    for (String row : ROWS) {
      String letter = row.substring(0, 1);
      String name = row.substring(2);
      BY_NAME.put(name, letter);
      NAMES.put(letter, name);
    }
  }

  /** Other shapes of a letter that are read as the letter. */
  private static final Map<String, String> VARIANTS =
      Map.of("ϵ", "ε", "ϑ", "θ", "ϕ", "φ", "ϱ", "ρ", "ς", "σ", "ϖ", "π", "µ", "μ");

  private GreekLetters() {}

  /** The letter with this English name; empty if there is none. */
  static String named(String name) {
    return BY_NAME.getOrDefault(name, "");
  }

  /** The English name of a letter; empty if it is not Greek. */
  static String nameOf(String letter) {
    return NAMES.getOrDefault(letter, "");
  }

  /** The letter a character stands for; empty if it is not Greek. */
  static String letter(String character) {
    String plain = VARIANTS.getOrDefault(character, character);
    return NAMES.containsKey(plain) ? plain : "";
  }
}
