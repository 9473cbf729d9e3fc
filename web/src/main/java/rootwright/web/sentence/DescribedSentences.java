package rootwright.web.sentence;

import java.util.List;
import java.util.Map;

/** Sentences about numbers that are described instead of being given by their polynomial. */
final class DescribedSentences {

  private static final String ANGLES = "(cos|sin|tan|cot|sec|csc)";

  static final List<Sentence> ALL =
      List.of(
          new Sentence(
              "at-angles",
              "numbers at angles",
              "Let {roots} be the numbers {numbers}. Find {find}.",
              "{numbers}",
              "{find}",
              ANGLES,
              Map.of(
                  "numbers", "numbers at angles, with commas between them",
                  "find", "expression in these numbers"),
              Map.of("numbers", "2cos(π/7), 2cos(3π/7), 2cos(5π/7)", "find", "Σ 1/r")),
          new Sentence(
              "roots-of-unity",
              "roots of unity",
              "Let {roots} be {numbers}. Find {find}.",
              "{numbers}",
              "{find}",
              "unity",
              Map.of("numbers", "which roots of unity", "find", "expression in these numbers"),
              Map.of("numbers", "the 7th roots of unity other than 1", "find", "Π (2 - r)")),
          new Sentence(
              "value-at-angles",
              "the value of an expression with angles",
              "Find the exact value of {find}.",
              "",
              "{find}",
              "",
              Map.of("find", "expression with sines, cosines and the like"),
              Map.of("find", "cos(π/9) cos(2π/9) cos(4π/9)")),
          new Sentence(
              "whole-part",
              "last digits of the whole part of a power",
              "Find {what} of the whole part of {power}.",
              "",
              "{what} of floor({power})",
              "",
              Map.of(
                  "what", "which digits, in words", "power", "power of a sum with a square root"),
              Map.of("what", "the last digit", "power", "(5 + sqrt(19))^30")));

  private DescribedSentences() {}
}
