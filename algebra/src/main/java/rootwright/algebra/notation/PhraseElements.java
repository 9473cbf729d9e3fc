package rootwright.algebra.notation;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What a sum or product in words runs over: “squares of the reciprocals of the roots”. */
final class PhraseElements {

  private static final int LARGEST_POWER = 1_000;

  private static final Pattern POWERS =
      Pattern.compile("^(\\d{1,4})(st|nd|rd|th|-th)? powers?( of (.*))?$");

  private static final List<Change> PLURAL = new ArrayList<>();
  private static final List<Change> SINGULAR = new ArrayList<>();

  static {
    both("square", formula -> formula.power(2));
    both("cube", formula -> formula.power(3));
    both("reciprocal", PhraseElements::reciprocal);
    both("inverse", PhraseElements::reciprocal);
    both("absolute value", PhraseElements::absolute);
    both("square root", formula -> new Formula.Radical(formula, 2));
    both("cube root", formula -> new Formula.Radical(formula, 3));
    PLURAL.add(new Change("negatives", Formula.Negative::new));
    PLURAL.add(new Change("moduli", PhraseElements::absolute));
    String[] ordinals = {
      "fourth", "fifth", "sixth", "seventh", "eighth", "ninth", "tenth", "eleventh", "twelfth"
    };
    for (int k = 0; k < ordinals.length; k++) {
      int exponent = k + 4;
      both(ordinals[k] + " power", formula -> formula.power(exponent));
    }
  }

  private PhraseElements() {}

  /**
   * A word for what is done with each element.
   *
   * @param words as they stand in the phrase
   * @param change what is done
   */
  record Change(String words, UnaryOperator<Formula> change) {

    /** What follows “words of”; “roots” if only the words stand there; empty if others do. */
    Optional<String> rest(String phrase) {
      if (phrase.equals(words)) {
        return Optional.of("roots");
      }
      return phrase.startsWith(words + " of ")
          ? Optional.of(phrase.substring(words.length() + " of ".length()))
          : Optional.empty();
    }
  }

  private static void both(String word, UnaryOperator<Formula> change) {
    SINGULAR.add(new Change(word, change));
    PLURAL.add(new Change(word + "s", change));
    // “sum of square of roots” is how many say it.
    PLURAL.add(new Change(word, change));
  }

  /** The words that change one value: “the square of the sum of the roots”. */
  static List<Change> singular() {
    return SINGULAR;
  }

  /** The element that a phrase describes, in the names of the first roots. */
  static Optional<Formula> read(String phrase, List<String> roots) {
    Optional<Formula> simple = simple(phrase, roots);
    if (simple.isPresent()) {
      return simple;
    }
    for (Change change : PLURAL) {
      Optional<String> rest = change.rest(phrase);
      if (rest.isPresent()) {
        return read(rest.get(), roots).map(change.change());
      }
    }
    Matcher powers = POWERS.matcher(phrase);
    if (powers.matches() && Integer.parseInt(powers.group(1)) <= LARGEST_POWER) {
      int exponent = Integer.parseInt(powers.group(1));
      String of = powers.group(4) == null ? "roots" : powers.group(4);
      return read(of, roots).map(formula -> formula.power(exponent));
    }
    return Optional.empty();
  }

  private static Optional<Formula> simple(String phrase, List<String> roots) {
    Formula first = Formula.name(roots.get(0));
    return switch (phrase) {
      case "roots", "zeros", "solutions" -> Optional.of(first);
      case "real roots", "real zeros", "real solutions" ->
          Optional.of(new Formula.Application("real roots", List.of()));
      default -> roots.size() < 2 ? Optional.empty() : pairs(phrase, first, roots);
    };
  }

  private static Optional<Formula> pairs(String phrase, Formula first, List<String> roots) {
    Formula second = Formula.name(roots.get(1));
    return switch (phrase) {
      case "products of pairs",
          "products of pairs of roots",
          "pairwise products",
          "pairwise products of roots",
          "products of roots two at a time",
          "products of roots taken two at a time",
          "roots two at a time",
          "roots taken two at a time" ->
          Optional.of(first.times(second));
      case "products of triples",
          "products of roots three at a time",
          "products of roots taken three at a time",
          "roots taken three at a time" ->
          roots.size() < 3
              ? Optional.empty()
              : Optional.of(first.times(second).times(Formula.name(roots.get(2))));
      case "pairwise sums", "sums of pairs", "pairwise sums of roots", "sums of pairs of roots" ->
          Optional.of(first.plus(second));
      case "differences",
          "differences of roots",
          "pairwise differences",
          "pairwise differences of roots" ->
          Optional.of(first.minus(second));
      case "squared differences", "squared differences of roots" ->
          Optional.of(first.minus(second).power(2));
      default -> Optional.empty();
    };
  }

  private static Formula reciprocal(Formula formula) {
    return Formula.number(1).over(formula);
  }

  private static Formula absolute(Formula formula) {
    return new Formula.Application("abs", List.of(formula));
  }
}
