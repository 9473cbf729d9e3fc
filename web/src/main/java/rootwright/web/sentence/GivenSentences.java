package rootwright.web.sentence;

import java.util.List;
import java.util.Map;

/** Sentences in which conditions are given behind the word "if", and no polynomial. */
final class GivenSentences {

  private static final String CONDITIONS = "what is given, with commas between the conditions";

  static final List<Sentence> ALL =
      List.of(
          new Sentence(
              "given-values",
              "numbers of which symmetric values are given",
              "Find {find} if {condition}.",
              "",
              "{find} if {condition}",
              "",
              Map.of("find", "expression, or the word numbers", "condition", CONDITIONS),
              Map.of(
                  "find", "x^4 + y^4 + z^4",
                  "condition", "x + y + z = 1, x^2 + y^2 + z^2 = 9, x y z = 2")),
          new Sentence(
              "sequence-by-recurrence",
              "a sequence given by a recurrence",
              "Let {condition}. Find {find}.",
              "",
              "{find} if {condition}",
              "_[{(]?[a-z]",
              Map.of(
                  "find", "member, remainder of a member, or closed form",
                  "condition", "first members and recurrence, with commas between them"),
              Map.of(
                  "find", "u_9",
                  "condition", "u_0 = 1, u_1 = 4, u_{k+2} = 3u_{k+1} + 2u_k")),
          new Sentence(
              "proof",
              "prove under a condition",
              "Prove that {claim} if {condition}.",
              "",
              "prove {claim} if {condition}",
              "",
              Map.of("claim", "equation that holds", "condition", CONDITIONS),
              Map.of(
                  "claim", "a^2 + b^2 + c^2 = -2 (a b + b c + c a)", "condition", "a + b + c = 0")),
          new Sentence(
              "remainder-of-polynomial",
              "the remainder of a polynomial",
              "Find the remainder when {dividend} is divided by {divisor}.",
              "",
              "remainder when {dividend} is divided by {divisor}",
              "",
              Map.of("dividend", "polynomial or power", "divisor", "polynomial of lower degree"),
              Map.of("dividend", "x^60 + 2x", "divisor", "x^2 - x + 1")),
          new Sentence(
              "partial-fractions-of-numbers",
              "partial fractions",
              "Write {fraction} as a sum of partial fractions.",
              "",
              "partial fractions of {fraction}",
              "",
              Map.of("fraction", "fraction in one letter"),
              Map.of("fraction", "(x^2 + 5)/((x - 1)^2 (x + 2))")),
          new Sentence(
              "numerators-of-numbers",
              "numerators of partial fractions",
              "Find {find} if {condition}.",
              "",
              "{find} if {condition}",
              "",
              Map.of(
                  "find", "letters above the strokes, or an expression in them",
                  "condition", "the fraction and its form with letters"),
              Map.of(
                  "find", "A, B, C",
                  "condition",
                      "(x + 4)/((x - 1)^2 (x + 2)) = A/(x - 1) + B/(x - 1)^2 + C/(x + 2)")),
          new Sentence(
              "identity",
              "prove or refute under a condition",
              "Prove or refute: if {condition}, then {claim}.",
              "",
              "prove or refute {claim} if {condition}",
              "",
              Map.of("claim", "equation that is claimed", "condition", CONDITIONS),
              Map.of("claim", "a^3 + b^3 + c^3 = 3 a b c", "condition", "a + b + c = 0")));

  private GivenSentences() {}
}
