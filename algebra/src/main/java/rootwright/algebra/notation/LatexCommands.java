package rootwright.algebra.notation;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/** The table of LaTeX commands that are read, each with the token it becomes. */
final class LatexCommands {

  /**
   * What a command becomes.
   *
   * @param kind the kind of its token
   * @param text the canonical text of its token
   */
  record Meaning(Token.Kind kind, String text) {}

  /** A blank: the command is passed over. */
  static final Meaning BLANK = new Meaning(Token.Kind.END, "blank");

  /** The braces after the command are dropped, what stands in them is read. */
  static final Meaning UNWRAPPED = new Meaning(Token.Kind.END, "unwrapped");

  private static final Map<String, Meaning> TABLE = new HashMap<>();

  static {
    put(BLANK, ", ; : ! quad qquad enspace thinspace displaystyle textstyle limits nolimits");
    put(BLANK, "left right big Big bigg Bigg bigl bigr Bigl Bigr biggl biggr Biggl Biggr ( ) [ ]");
    put(UNWRAPPED, "text mathrm operatorname mathit mathbf mathsf textrm mbox");
    sign("*", "cdot times ast");
    sign("/", "div");
    sign("+-", "pm");
    sign("=", "eq");
    sign("!=", "ne neq");
    sign("<=", "le leq leqslant");
    sign(">=", "ge geq geqslant");
    sign("<", "lt");
    sign(">", "gt");
    sign("≡", "equiv");
    sign("'", "prime");
    sign("Σ", "sum Sigma");
    sign("Π", "prod Pi");
    word("\\frac", "frac dfrac tfrac cfrac");
    word("\\sqrt", "sqrt");
    word("mod", "bmod mod");
    word("\\pmod", "pmod");
    word("log", "log");
    word("ln", "ln");
    word("sin", "sin");
    word("cos", "cos");
    word("tan", "tan");
    word("cot", "cot");
    word("csc", "csc");
    word("sec", "sec");
    put(new Meaning(Token.Kind.OPEN, "{"), "{ lbrace");
    put(new Meaning(Token.Kind.CLOSE, "}"), "} rbrace");
    put(new Meaning(Token.Kind.OPEN, "⌊"), "lfloor");
    put(new Meaning(Token.Kind.CLOSE, "⌋"), "rfloor");
    put(new Meaning(Token.Kind.OPEN, "⌈"), "lceil");
    put(new Meaning(Token.Kind.CLOSE, "⌉"), "rceil");
    put(new Meaning(Token.Kind.BAR, "|"), "| lvert rvert vert");
    put(new Meaning(Token.Kind.LETTER, "ε"), "varepsilon");
    put(new Meaning(Token.Kind.LETTER, "θ"), "vartheta");
    put(new Meaning(Token.Kind.LETTER, "φ"), "varphi");
    put(new Meaning(Token.Kind.LETTER, "ρ"), "varrho");
    put(new Meaning(Token.Kind.LETTER, "i"), "imath");
  }

  private LatexCommands() {}

  private static void put(Meaning meaning, String commands) {
    for (String command : commands.split(" ")) {
      TABLE.put(command, meaning);
    }
  }

  private static void sign(String canonical, String commands) {
    put(new Meaning(Token.Kind.SIGN, canonical), commands);
  }

  private static void word(String canonical, String commands) {
    put(new Meaning(Token.Kind.WORD, canonical), commands);
  }

  /** What a command without its backslash becomes; empty if it is not known. */
  static Optional<Meaning> meaning(String command) {
    if (TABLE.containsKey(command)) {
      return Optional.of(TABLE.get(command));
    }
    String letter = GreekLetters.named(command);
    return letter.isEmpty()
        ? Optional.empty()
        : Optional.of(new Meaning(Token.Kind.LETTER, letter));
  }
}
