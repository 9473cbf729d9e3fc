package rootwright.cli;

import java.util.OptionalInt;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import rootwright.algebra.number.Rational;
import rootwright.composing.blueprint.AnswerWish;
import rootwright.composing.blueprint.Blueprint;
import rootwright.composing.blueprint.RootsWish;

/** The order of a coach as options of a command. */
final class BlueprintOptions {

  @Option(names = "--ask", paramLabel = "TEXT", description = "The expression in the roots.")
  String ask = "Σ r^2";

  @Option(names = "--degree", description = "The degree (${DEFAULT-VALUE}).", defaultValue = "3")
  int degree;

  @Option(
      names = "--size",
      description = "The largest coefficient by size (${DEFAULT-VALUE}).",
      defaultValue = "12")
  int size;

  @Option(
      names = "--lead",
      description = "The largest lead; 1 for monic (${DEFAULT-VALUE}).",
      defaultValue = "3")
  int lead;

  @Option(
      names = "--answer",
      paramLabel = "WISH",
      description = "whole, 0..999, /12 (denominator up to 12) or =2026 (${DEFAULT-VALUE}).",
      defaultValue = "whole")
  String answer = "whole";

  @Option(
      names = "--roots",
      paramLabel = "WISH",
      description = "any, distinct, no-rational or irreducible (${DEFAULT-VALUE}).",
      defaultValue = "no-rational")
  String roots = "no-rational";

  @Option(names = "--real", paramLabel = "N", description = "How many real roots.")
  @Nullable Integer real;

  @Option(names = "--with", split = ",", description = "Routes that must go through.")
  Set<String> with = Set.of();

  @Option(names = "--without", split = ",", description = "Routes that must not.")
  Set<String> without = Set.of();

  @Option(
      names = "--slips",
      description = "The least number of wrong answers from slips (${DEFAULT-VALUE}).",
      defaultValue = "3")
  int slips;

  @Option(names = "--level", description = "The estimated level, 1 to 5.")
  @Nullable Integer level;

  @Option(
      names = "--choices",
      description = "Choices of a multiple-choice item, 3 to 5 (${DEFAULT-VALUE}).",
      defaultValue = "4")
  int choices;

  @Option(names = "--many", description = "How many (${DEFAULT-VALUE}).", defaultValue = "5")
  int many;

  @Option(
      names = "--seed",
      description = "What chance starts from (${DEFAULT-VALUE}).",
      defaultValue = "1")
  long seed;

  /**
   * The order.
   *
   * @throws IllegalArgumentException if a wish cannot be read; says which and what would do
   */
  Blueprint blueprint() {
    return new Blueprint(
        ask,
        degree,
        size,
        Math.min(lead, size),
        answer(answer),
        roots(roots),
        real == null ? OptionalInt.empty() : OptionalInt.of(real),
        with,
        without,
        slips,
        level == null ? OptionalInt.empty() : OptionalInt.of(level),
        choices,
        many,
        seed);
  }

  private static AnswerWish answer(String wish) {
    try {
      if (wish.equals("whole")) {
        return new AnswerWish.Whole();
      } else if (wish.startsWith("/")) {
        return new AnswerWish.Fraction(Long.parseLong(wish.substring(1)));
      } else if (wish.startsWith("=")) {
        return new AnswerWish.Wanted(Rational.parse(wish.substring(1)));
      }
      int dots = wish.indexOf("..");
      if (dots > 0) {
        return new AnswerWish.Between(
            Long.parseLong(wish.substring(0, dots)), Long.parseLong(wish.substring(dots + 2)));
      }
    } catch (NumberFormatException noNumber) {
      // Falls through to the refusal below, which names the wish and what would do.
    }
    throw new IllegalArgumentException(
        "the answer cannot be wished as “%s”; write whole, 0..999, /12 or =2026".formatted(wish));
  }

  private static RootsWish roots(String wish) {
    return switch (wish) {
      case "any" -> RootsWish.ANY;
      case "distinct" -> RootsWish.DISTINCT;
      case "no-rational" -> RootsWish.NO_RATIONAL_ROOT;
      case "irreducible" -> RootsWish.IRREDUCIBLE;
      default ->
          throw new IllegalArgumentException(
              "the roots cannot be wished as “%s”; write any, distinct, no-rational or irreducible"
                  .formatted(wish));
    };
  }
}
