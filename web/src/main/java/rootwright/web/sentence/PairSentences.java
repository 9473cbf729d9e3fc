package rootwright.web.sentence;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Sentences about two polynomials. */
final class PairSentences {

  private static final String BOTH = "{polynomial} and {other}";

  /** Two texts with "and" between them, and no words of numbers that are described. */
  private static final String TWO = "^(?!.*(unity|cos|sin|tan|cot|sec|csc)).* and ";

  private static final Map<String, String> LABELS =
      Map.of(
          "polynomial", "first polynomial",
          "other", "second polynomial",
          "find", "what is to be found",
          "condition", "what holds for the roots");

  static final List<Sentence> ALL =
      List.of(
          about(
              "mixed-roots",
              "an expression that mixes the roots of two polynomials",
              "Let r be any root of {polynomial} and s any root of {other}. Find {find}.",
              "{find}",
              Map.of("polynomial", "x^2 - 4x + 2", "other", "x^3 - x + 3", "find", "Π (r - s)")),
          about(
              "common-roots",
              "the common roots of two polynomials",
              "Find the common roots of {polynomial} and {other}.",
              "common roots",
              Map.of("polynomial", "x^3 - 2x^2 - 5x + 6", "other", "x^2 - 4x + 3")),
          about(
              "shared-root",
              "a letter for which two polynomials share a root",
              "For {polynomial} and {other}, find {find} if {condition}.",
              "{find} if {condition}",
              Map.of(
                  "polynomial", "x^2 + kx + 6",
                  "other", "x^2 + 3x + 2k",
                  "find", "k",
                  "condition", "they share exactly one root")),
          about(
              "resultant",
              "the resultant of two polynomials",
              "Find the resultant of {polynomial} and {other}.",
              "resultant",
              Map.of("polynomial", "2x^2 - x + 4", "other", "x^3 + x - 1")));

  private PairSentences() {}

  private static Sentence about(
      String name, String title, String words, String find, Map<String, String> example) {
    Map<String, String> labels = new HashMap<>(LABELS);
    labels.keySet().retainAll(example.keySet());
    return new Sentence(name, title, words, BOTH, find, TWO, labels, example);
  }
}
