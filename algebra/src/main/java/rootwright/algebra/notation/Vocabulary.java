package rootwright.algebra.notation;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/** The words that are read in a formula, and those that only show that a sentence was meant. */
final class Vocabulary {

  /** The most letters that are taken for a product when no sign stands between them. */
  private static final int LONGEST_PRODUCT = 8;

  private static final Map<String, LatexCommands.Meaning> WORDS = new TreeMap<>();

  /** Words of sentences; a formula that holds one is not taken for a product of letters. */
  private static final Set<String> SENTENCE =
      Set.of(
          "of",
          "the",
          "all",
          "for",
          "find",
          "value",
          "values",
          "square",
          "squares",
          "cube",
          "cubes",
          "power",
          "powers",
          "reciprocal",
          "reciprocals",
          "number",
          "pairs",
          "pair",
          "their",
          "where",
          "equation",
          "solve",
          "what",
          "how",
          "many",
          "distinct",
          "difference",
          "differences",
          "each",
          "every",
          "over",
          "plus",
          "minus",
          "times",
          "divided",
          "squared",
          "cubed",
          "equals",
          "equal");

  static {
    sign("Σ", "sum");
    sign("Π", "product", "prod");
    sign("√", "sqrt");
    sign("∛", "cbrt");
    sign(",", "or", "and");
    word("mod", "mod", "modulo");
    word("discriminant", "discriminant", "disc");
    word("csc", "csc", "cosec");
    List.of("root", "roots", "real", "polynomial", "with").forEach(same -> word(same, same));
    FunctionWords.ALL.forEach(same -> word(same, same));
  }

  private Vocabulary() {}

  private static void sign(String canonical, String... spellings) {
    for (String spelling : spellings) {
      WORDS.put(spelling, new LatexCommands.Meaning(Token.Kind.SIGN, canonical));
    }
  }

  private static void word(String canonical, String... spellings) {
    for (String spelling : spellings) {
      WORDS.put(spelling, new LatexCommands.Meaning(Token.Kind.WORD, canonical));
    }
  }

  /** What a word becomes; case does not matter; empty if it is not in the vocabulary. */
  static Optional<LatexCommands.Meaning> meaning(String word) {
    return Optional.ofNullable(WORDS.get(word.toLowerCase(Locale.ROOT)));
  }

  /** Whether letters side by side are read one by one: they make no word and resemble none. */
  static boolean isProductOfLetters(String run) {
    return run.length() <= LONGEST_PRODUCT
        && meaning(run).isEmpty()
        && GreekLetters.named(run).isEmpty()
        && !isSentence(run)
        && near(run).isEmpty();
  }

  /** Whether the word belongs to a sentence rather than to a formula. */
  static boolean isSentence(String word) {
    return word.length() > 1 && SENTENCE.contains(word.toLowerCase(Locale.ROOT));
  }

  /** The word of the vocabulary that was probably meant; empty if none is near. */
  static String near(String word) {
    String lower = word.toLowerCase(Locale.ROOT);
    if (lower.length() < 5) {
      return "";
    }
    String best =
        Nearest.of(lower, WORDS.keySet().stream().filter(known -> known.length() > 4).toList());
    return best.isEmpty() ? split(word) : best;
  }

  /** A known word and the rest, if the letters begin with one. */
  private static String split(String word) {
    for (String known : WORDS.keySet()) {
      if (known.length() >= 4 && word.toLowerCase(Locale.ROOT).startsWith(known)) {
        return known + " " + word.substring(known.length());
      }
    }
    return "";
  }
}
