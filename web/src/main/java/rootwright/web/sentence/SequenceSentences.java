package rootwright.web.sentence;

import java.util.List;
import java.util.Map;

/** Sentences about the power sums of the roots as a sequence. */
final class SequenceSentences {

  private static final String POLYNOMIAL = "polynomial or equation";

  static final List<Sentence> ALL =
      List.of(
          Sentence.of(
              "last-digits",
              "last digits of a sum of powers",
              "Let {roots} be the roots of {polynomial}. Find the last {digits} digits of the sum"
                  + " of their powers with exponent {k}.",
              "last {digits} digits of S_({k})",
              Map.of("polynomial", POLYNOMIAL, "digits", "how many", "k", "exponent"),
              Map.of("polynomial", "x^3 - 2x - 3", "digits", "3", "k", "10^6")),
          Sentence.of(
              "recurrence",
              "the recurrence of the power sums",
              "Let {roots} be the roots of {polynomial}. Find the recurrence of their power sums.",
              "recurrence",
              Map.of("polynomial", POLYNOMIAL),
              Map.of("polynomial", "2x^3 - x^2 + 4x - 6")),
          Sentence.of(
              "generating-function",
              "the generating function of the power sums",
              "Let {roots} be the roots of {polynomial}. Find the generating function of their"
                  + " power sums.",
              "generating function of S_k",
              Map.of("polynomial", POLYNOMIAL),
              Map.of("polynomial", "x^3 - 2x^2 + 3x - 1")),
          Sentence.of(
              "period",
              "the period of the power sums for a modulus",
              "Let {roots} be the roots of {polynomial}. Find the period of their power sums modulo"
                  + " {m}.",
              "period of S_k mod {m}",
              Map.of("polynomial", POLYNOMIAL, "m", "modulus"),
              Map.of("polynomial", "x^3 - x^2 - 2", "m", "5")),
          Sentence.of(
              "divisibility",
              "whether every power sum is divisible by a number",
              "Let {roots} be the roots of {polynomial}. Are all their power sums divisible by {m}?",
              "are all power sums divisible by {m}",
              Map.of("polynomial", POLYNOMIAL, "m", "divisor"),
              Map.of("polynomial", "x^2 - 6x + 2", "m", "2")));

  private SequenceSentences() {}
}
