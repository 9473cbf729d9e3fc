package rootwright.web.sentence;

import java.util.List;
import java.util.Map;

/** Sentences that ask for something made of the roots of one polynomial. */
final class AskSentences {

  private static final String POLYNOMIAL = "polynomial or equation";

  static final List<Sentence> ALL =
      List.of(
          Sentence.of(
              "value",
              "the value of an expression",
              "Let {roots} be the roots of {polynomial}. Find {find}.",
              "{find}",
              Map.of("polynomial", POLYNOMIAL, "find", "expression in the roots"),
              Map.of("polynomial", "3x^3 - 7x^2 + 2x - 5", "find", "Σ 1/(r-3)")),
          Sentence.of(
              "power-sum",
              "a sum of powers, near or far",
              "Let {roots} be the roots of {polynomial}. Find the sum of their powers with"
                  + " exponent {k}.",
              "S_({k})",
              Map.of("polynomial", POLYNOMIAL, "k", "exponent"),
              Map.of("polynomial", "x^3 - 2x^2 - x + 4", "k", "9")),
          Sentence.of(
              "power-sum-remainder",
              "the remainder of a sum of powers",
              "Let {roots} be the roots of {polynomial}. Find the remainder of the sum of their"
                  + " powers with exponent {k} when divided by {m}.",
              "S_({k}) mod {m}",
              Map.of("polynomial", POLYNOMIAL, "k", "exponent", "m", "modulus"),
              Map.of("polynomial", "x^3 - x - 5", "k", "10^12", "m", "1000")),
          Sentence.of(
              "reduce",
              "a high power of one root, reduced",
              "Let {root} be a root of {polynomial}. Write {expression} with the lowest powers of"
                  + " {root}.",
              "reduce({expression})",
              Map.of("polynomial", POLYNOMIAL, "expression", "expression in one root"),
              Map.of("polynomial", "x^3 - 3x + 7", "expression", "r^7")),
          Sentence.of(
              "new-polynomial",
              "a polynomial with new roots",
              "Let {roots} be the roots of {polynomial}. Find the polynomial whose roots are"
                  + " {map}.",
              "polynomial with roots ({map})",
              Map.of("polynomial", POLYNOMIAL, "map", "a root of the new polynomial"),
              Map.of("polynomial", "x^3 - 4x + 1", "map", "r + s")),
          Sentence.of(
              "resolvent",
              "the polynomial of all values under renaming",
              "Let {roots} be the roots of {polynomial}. Find the polynomial whose roots are all"
                  + " values that {expression} takes when the roots are renamed.",
              "resolvent({expression})",
              Map.of("polynomial", POLYNOMIAL, "expression", "expression in the roots"),
              Map.of("polynomial", "x^3 - 5x + 3", "expression", "r^2 s + s^2 t + t^2 r")),
          Sentence.of(
              "discriminant",
              "the discriminant",
              "Find the discriminant of {polynomial}.",
              "discriminant",
              Map.of("polynomial", POLYNOMIAL),
              Map.of("polynomial", "x^3 - 6x + 2")));

  private AskSentences() {}
}
