package rootwright.working.letters;

import java.util.List;

/** Words for what all roots, or a letter, may be. */
final class Natures {

  /** A pattern of all of them. */
  static final String WORDS =
      "real and distinct|distinct and real|real and positive|positive and real|positive integers?"
          + "|positive whole numbers?|real|positive|negative|rational|integers?|integral|whole numbers?"
          + "|whole|distinct|different";

  private Natures() {}

  /** What a word of the pattern means. */
  static List<RootNature> of(String words) {
    return switch (words) {
      case "real and distinct", "distinct and real" ->
          List.of(RootNature.REAL, RootNature.DISTINCT);
      case "positive", "real and positive", "positive and real" -> List.of(RootNature.POSITIVE);
      case "positive integer",
          "positive integers",
          "positive whole number",
          "positive whole numbers" ->
          List.of(RootNature.POSITIVE_INTEGER);
      case "real" -> List.of(RootNature.REAL);
      case "negative" -> List.of(RootNature.NEGATIVE);
      case "rational" -> List.of(RootNature.RATIONAL);
      case "distinct", "different" -> List.of(RootNature.DISTINCT);
      default -> List.of(RootNature.INTEGER);
    };
  }
}
