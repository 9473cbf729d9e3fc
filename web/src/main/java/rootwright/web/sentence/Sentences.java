package rootwright.web.sentence;

import java.util.List;
import java.util.Map;

/** All sentences, the commonest first; a kind of ask joins the page by joining this list. */
public final class Sentences {

  private static final String POLYNOMIAL = "polynomial or equation";

  /** The sentences in the order of the list on the page. */
  public static final List<Sentence> ALL =
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
              "Let {root} be a root of {polynomial}. Write {expression} with the lowest powers of {root}.",
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
              "roots",
              "the roots themselves",
              "Find the roots of {polynomial}.",
              "roots",
              Map.of("polynomial", POLYNOMIAL),
              Map.of("polynomial", "2x^3 - 3x^2 - 11x + 6")),
          Sentence.of(
              "real-roots",
              "how many roots are real",
              "How many roots of {polynomial} are real?",
              "real roots",
              Map.of("polynomial", POLYNOMIAL),
              Map.of("polynomial", "x^4 - 5x^2 + x + 2")),
          Sentence.of(
              "discriminant",
              "the discriminant",
              "Find the discriminant of {polynomial}.",
              "discriminant",
              Map.of("polynomial", POLYNOMIAL),
              Map.of("polynomial", "x^3 - 6x + 2")));

  private Sentences() {}
}
