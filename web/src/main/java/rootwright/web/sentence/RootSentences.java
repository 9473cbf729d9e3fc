package rootwright.web.sentence;

import java.util.List;
import java.util.Map;

/** Sentences about the roots themselves: which they are, how many are real or positive. */
final class RootSentences {

  private static final Map<String, String> LABELS = Map.of("polynomial", "polynomial or equation");

  static final List<Sentence> ALL =
      List.of(
          about(
              "roots",
              "the roots themselves",
              "Find the roots of {polynomial}.",
              "roots",
              "2x^3 - 3x^2 - 11x + 6"),
          about(
              "real-roots",
              "how many roots are real",
              "How many roots of {polynomial} are real?",
              "real roots",
              "x^4 - 5x^2 + x + 2"),
          about(
              "positive-roots",
              "how many roots are positive",
              "How many roots of {polynomial} are positive?",
              "positive roots",
              "x^5 - 3x^3 + x^2 + 2x - 1"),
          about(
              "negative-roots",
              "how many roots are negative",
              "How many roots of {polynomial} are negative?",
              "negative roots",
              "x^4 + 2x^3 - 6x^2 - 5x + 3"),
          about(
              "all-roots-real",
              "whether all roots are real",
              "Are all roots of {polynomial} real?",
              "are all roots real",
              "x^4 - 3x^3 + 5x^2 + x - 2"),
          about(
              "sum-of-real-roots",
              "the sum of the real roots",
              "Find the sum of the real roots of {polynomial}.",
              "sum of the real roots",
              "x^4 - 6x^3 + 4x^2 - 6x + 1"));

  private RootSentences() {}

  private static Sentence about(
      String name, String title, String words, String find, String example) {
    return Sentence.of(name, title, words, find, LABELS, Map.of("polynomial", example));
  }
}
