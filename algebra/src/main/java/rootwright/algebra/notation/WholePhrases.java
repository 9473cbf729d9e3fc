package rootwright.algebra.notation;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The phrases that are asks as they stand. */
final class WholePhrases {

  private static final Map<String, String> ASKS =
      Map.ofEntries(
          Map.entry("discriminant", "discriminant"),
          Map.entry("roots", "roots"),
          Map.entry("zeros", "roots"),
          Map.entry("solutions", "roots"),
          Map.entry("number of real roots", "real roots"),
          Map.entry("number of real zeros", "real roots"),
          Map.entry("number of real solutions", "real roots"),
          Map.entry("how many real roots", "real roots"),
          Map.entry("how many roots are real", "real roots"),
          Map.entry("how many of roots are real", "real roots"),
          Map.entry("how many real roots are there", "real roots"),
          Map.entry("real roots", "real roots"),
          Map.entry("number of positive roots", "positive roots"),
          Map.entry("number of positive real roots", "positive roots"),
          Map.entry("how many positive roots", "positive roots"),
          Map.entry("how many positive roots are there", "positive roots"),
          Map.entry("how many roots are positive", "positive roots"),
          Map.entry("how many of roots are positive", "positive roots"),
          Map.entry("positive roots", "positive roots"),
          Map.entry("number of negative roots", "negative roots"),
          Map.entry("number of negative real roots", "negative roots"),
          Map.entry("how many negative roots", "negative roots"),
          Map.entry("how many negative roots are there", "negative roots"),
          Map.entry("how many roots are negative", "negative roots"),
          Map.entry("how many of roots are negative", "negative roots"),
          Map.entry("negative roots", "negative roots"),
          Map.entry("are roots real", "all roots real"),
          Map.entry("are roots real numbers", "all roots real"),
          Map.entry("whether roots are real", "all roots real"),
          Map.entry("roots real", "all roots real"),
          Map.entry("only real roots", "all roots real"));

  private WholePhrases() {}

  static Optional<Formula> value(String phrase, List<String> roots) {
    if (ASKS.containsKey(phrase)) {
      return Optional.of(new Formula.Application(ASKS.getOrDefault(phrase, phrase), List.of()));
    }
    if (roots.size() == 2) {
      Formula difference = Formula.name(roots.get(0)).minus(Formula.name(roots.get(1)));
      return switch (phrase) {
        case "difference of roots", "difference between roots" -> Optional.of(difference);
        case "positive difference of roots",
            "positive difference between roots",
            "absolute difference of roots",
            "distance between roots" ->
            Optional.of(new Formula.Application("abs", List.of(difference)));
        default -> Optional.empty();
      };
    }
    return Optional.empty();
  }
}
