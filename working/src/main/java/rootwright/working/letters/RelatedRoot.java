package rootwright.working.letters;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.FormulaReader;
import rootwright.algebra.notation.UnreadableException;

/** How one root is said to come from another: twice it, its square, three more than it. */
final class RelatedRoot {

  private static final Pattern MULTIPLE =
      Pattern.compile(
          "(?<factor>twice|double|the double|thrice|triple|half|three|four|five|-?\\d+(?:/\\d+)?)(?: times)?");
  private static final Pattern SHIFTED =
      Pattern.compile(
          "(?<by>one|two|three|\\d+(?:/\\d+)?) (?<way>more|larger|greater|less|smaller) than");

  private RelatedRoot() {}

  /** The image of a root. */
  static Optional<Formula> of(String how, Formula root) {
    Optional<Formula> named =
        switch (how) {
          case "the square", "square" -> Optional.of(root.power(2));
          case "the cube", "cube" -> Optional.of(root.power(3));
          case "the reciprocal", "reciprocal" -> Optional.of(Formula.number(1).over(root));
          case "the negative", "the opposite", "minus" -> Optional.of(new Formula.Negative(root));
          case "the negative reciprocal" ->
              Optional.of(new Formula.Negative(Formula.number(1).over(root)));
          default -> Optional.empty();
        };
    if (named.isPresent()) {
      return named;
    }
    Matcher multiple = MULTIPLE.matcher(how);
    if (multiple.matches()) {
      return number(multiple.group("factor")).map(factor -> factor.times(root));
    }
    Matcher shifted = SHIFTED.matcher(how);
    if (shifted.matches()) {
      boolean more =
          !shifted.group("way").equals("less") && !shifted.group("way").equals("smaller");
      return number(shifted.group("by")).map(by -> more ? root.plus(by) : root.minus(by));
    }
    return Optional.empty();
  }

  private static Optional<Formula> number(String word) {
    String digits =
        switch (word) {
          case "twice", "double", "the double", "two" -> "2";
          case "thrice", "triple", "three" -> "3";
          case "four" -> "4";
          case "five" -> "5";
          case "one" -> "1";
          case "half" -> "1/2";
          default -> word;
        };
    try {
      return Optional.of(FormulaReader.formula(digits));
    } catch (UnreadableException unread) {
      return Optional.empty();
    }
  }
}
