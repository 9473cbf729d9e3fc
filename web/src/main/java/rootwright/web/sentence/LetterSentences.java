package rootwright.web.sentence;

import java.util.List;
import java.util.Map;

/** Sentences about polynomials with letters among the coefficients. */
final class LetterSentences {

  private static final String POLYNOMIAL = "polynomial with a letter among its coefficients";

  /** A letter other than the unknown, and no word of the numbers that are described. */
  private static final String WITH_LETTERS =
      "^(?!.*(unity|cos|sin|tan|cot|sec|csc|sqrt|frac|log)).*[abckmpq]";

  static final List<Sentence> ALL =
      List.of(
          new Sentence(
              "letters",
              "a letter from a condition",
              "Let {roots} be the roots of {polynomial}. Find {find} if {condition}.",
              "{polynomial}",
              "{find} if {condition}",
              "",
              Map.of(
                  "polynomial", POLYNOMIAL,
                  "find", "letter, or expression in the roots",
                  "condition", "what holds for the roots"),
              Map.of(
                  "polynomial", "x^3 - 6x^2 + kx + 10",
                  "find", "k",
                  "condition", "the roots are in arithmetic progression")),
          new Sentence(
              "function-of-letters",
              "a value as a function of letters",
              "Let {roots} be the roots of {polynomial}. Find {find} as a function of the letters.",
              "{polynomial}",
              "{find}",
              WITH_LETTERS,
              Map.of("polynomial", POLYNOMIAL, "find", "expression in the roots"),
              Map.of("polynomial", "x^3 + p x^2 + q x - 2", "find", "Σ r^2 s")));

  private LetterSentences() {}
}
