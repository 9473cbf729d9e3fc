package rootwright.working.letters;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.FormulaExpansion;
import rootwright.algebra.notation.FormulaReader;
import rootwright.algebra.notation.UnreadableException;
import rootwright.algebra.number.Rational;

/** A condition in words with everything taken out that carries no meaning. */
final class ConditionText {

  private static final Pattern EMPTY =
      Pattern.compile(
          "\\b(?:the|its|it|has|have|having|are|is|be|being|become|that|with|there|exists?|both|all"
              + "|equation|polynomial|quadratic|cubic|quartic|form|lie|lies|lying|located|strictly|then|such|of"
              + "|must|should)\\b");
  private static final List<List<String>> SAME =
      List.of(
          List.of("\\bsolutions\\b|\\bzeros\\b|\\bzeroes\\b", "roots"),
          List.of("\\bsolution\\b", "root"),
          List.of("\\beach other\\b|\\bone another\\b", "other"),
          List.of("\\banother\\b|\\bother one\\b|\\bsecond\\b|\\bother root\\b", "other"),
          List.of("\\bone another\\b", "other"),
          List.of("\\bsigns\\b", "sign"),
          List.of("\\bwhole numbers?\\b", "integers"),
          List.of("\\binteger\\b|\\bintegral\\b", "integers"),
          List.of("\\bequal to\\b|\\bequals\\b|\\bamounts? to\\b", "="),
          List.of("\\bdifferent\\b|\\bunequal\\b", "distinct"),
          List.of("\\bprecisely\\b|\\bjust\\b", "exactly"),
          List.of("\\bmagnitude\\b|\\babsolute value\\b|\\bmodulus\\b|\\bvalue\\b", "size"));

  private ConditionText() {}

  /** The words that matter, lower case, one blank between them. */
  static String bare(String text) {
    String words = text.strip().toLowerCase(Locale.ROOT).replace('\u2212', '-').replace('–', '-');
    words = words.replaceAll("[.!]+$", "").replaceAll("\\s+", " ");
    words = words.replaceAll("\\bboth\\b|\\ball\\b", "");
    for (List<String> pair : SAME) {
      words = words.replaceAll(pair.get(0), pair.get(1));
    }
    words = words.replaceAll("\\ban? (?!and\\b)(?=\\p{L}{2,})", "");
    return EMPTY.matcher(words).replaceAll("").replaceAll("\\s+", " ").strip();
  }

  /** How many a word says. */
  static Optional<Integer> count(String word) {
    return switch (word) {
      case "no", "none" -> Optional.of(0);
      case "one", "single", "unique", "some" -> Optional.of(1);
      case "two" -> Optional.of(2);
      case "three" -> Optional.of(3);
      case "four" -> Optional.of(4);
      case "five" -> Optional.of(5);
      case "six" -> Optional.of(6);
      default -> word.matches("\\d{1,2}") ? Optional.of(Integer.parseInt(word)) : Optional.empty();
    };
  }

  /** A rational number as it is written, “zero” and the like included. */
  static Optional<Rational> number(String text) {
    String word = text.strip();
    Optional<Integer> count = word.equals("zero") ? Optional.of(0) : count(word);
    if (count.isPresent() && !word.equals("some")) {
      return Optional.of(Rational.of(count.get()));
    }
    return word.matches("-?\\d{1,9}(/\\d{1,9}|\\.\\d{1,9})?")
        ? formula(word).flatMap(ConditionText::rational)
        : Optional.empty();
  }

  private static Optional<Rational> rational(Formula formula) {
    try {
      return Optional.of(FormulaExpansion.polynomial(formula, "x").coefficient(0));
    } catch (UnreadableException none) {
      return Optional.empty();
    }
  }

  /** A formula, if the text is one. */
  static Optional<Formula> formula(String text) {
    try {
      return Optional.of(FormulaReader.formula(text.strip()));
    } catch (UnreadableException words) {
      return Optional.empty();
    }
  }
}
