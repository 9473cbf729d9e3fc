package rootwright.composing.blueprint;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import rootwright.algebra.notation.FormulaNames;
import rootwright.algebra.number.Rational;
import rootwright.algebra.value.ExactValue;
import rootwright.algebra.value.RationalValue;
import rootwright.composing.family.Families;
import rootwright.composing.level.Level;
import rootwright.composing.level.NumbersWritten;
import rootwright.composing.option.Choices;
import rootwright.composing.pattern.AnswerSort;
import rootwright.working.answer.Answer;
import rootwright.working.route.Working;
import rootwright.working.solve.Solution;

/**
 * Whether a worked candidate is worth offering.
 *
 * @param solution the worked candidate
 * @param refusal why it is turned away, empty if it is not
 * @param good why it is worth setting
 */
record Judgement(Solution solution, Optional<String> refusal, List<String> good) {

  /**
   * Work of the longest route over work of the shortest from which an item counts as a surprise.
   */
  private static final BigDecimal SURPRISE = BigDecimal.valueOf(2);

  /** Numbers in a working up to here are borne without a question; by judgement. */
  private static final BigInteger LARGEST_CARRIED = BigInteger.valueOf(3_000);

  /** Different wrong answers of a value, unless the order says how many. */
  private static final int USUAL_SLIPS = 3;

  static Judgement of(Solution solution, Blueprint blueprint) {
    return new Judgement(solution, refusal(solution, blueprint), good(solution));
  }

  /**
   * The judgement of a statement of a pattern. The usual wish for whole numbers says nothing of
   * answers that are seldom whole, and a wrong answer is asked for only if the order says how many.
   */
  static Judgement ofStatement(Solution solution, Blueprint blueprint, AnswerSort sort) {
    boolean open = blueprint.answer() instanceof AnswerWish.Whole && sort != AnswerSort.WHOLE;
    Optional<String> refusal =
        sound(solution, 1)
            .or(() -> hollow(solution))
            .or(() -> unwieldy(solution))
            .or(() -> open ? Optional.empty() : answer(solution, blueprint.answer()))
            .or(() -> working(solution, blueprint.working(), 0));
    return new Judgement(solution, refusal, good(solution));
  }

  /**
   * Why a statement is none to be set though it is sound: what its shortest working has to carry is
   * out of proportion to what comes out.
   */
  private static Optional<String> unwieldy(Solution solution) {
    BigInteger answer =
        solution.answer().alternatives().stream()
            .map(NumbersWritten::largest)
            .reduce(BigInteger.ONE, BigInteger::max);
    return NumbersWritten.largest(solution.routes().get(0))
                .compareTo(answer.multiply(BigInteger.TEN).max(LARGEST_CARRIED))
            > 0
        ? Optional.of("the numbers in its shortest working are out of proportion")
        : Optional.empty();
  }

  /** Why the answer of a statement is nothing to ask for, though it is true. */
  private static Optional<String> hollow(Solution solution) {
    boolean none =
        (solution.answer() instanceof Answer.Solutions all && all.values().isEmpty())
            || (solution.answer() instanceof Answer.Items items && items.items().isEmpty());
    boolean free =
        solution.answer() instanceof Answer.FunctionOf function
            && solution.kind().equals("function")
            && FormulaNames.in(function.formula()).isEmpty();
    if (solution.kind().equals("function") && !solution.conditions().isEmpty()) {
      return Optional.of("the letter must not take some value, which the statement does not say");
    }
    return none
        ? Optional.of("no number satisfies the condition")
        : free ? Optional.of("the letter drops out of the answer") : Optional.empty();
  }

  private static Optional<String> refusal(Solution solution, Blueprint blueprint) {
    return sound(solution)
        .or(() -> answer(solution, blueprint.answer()))
        .or(() -> working(solution, blueprint.working(), isValue(solution) ? USUAL_SLIPS : 0));
  }

  /**
   * Why an answer is not sure or not single, if it is not. Every answer is found by the exact
   * normal form and confirmed by the second opinion; a value that is not just read off needs two
   * routes besides.
   */
  static Optional<String> sound(Solution solution) {
    boolean readOff = solution.routes().stream().anyMatch(working -> working.cost().ideas() == 0);
    return sound(solution, isValue(solution) && !readOff ? 2 : 1);
  }

  /** The same with a number of routes that must go through. */
  static Optional<String> sound(Solution solution, int routes) {
    if (solution.answer() instanceof Answer.None
        || solution.answer() instanceof Answer.Enclosed
        || solution.answer() instanceof Answer.Values
        || !solution.second().agrees()) {
      return Optional.of("the ask has no single answer here");
    }
    return solution.routes().size() < routes
        ? Optional.of(
            routes == 2 ? "fewer than two routes confirm the key" : "no route goes through")
        : Optional.empty();
  }

  /** Why an answer is not as wished, if it is not. */
  static Optional<String> answer(Solution solution, AnswerWish wish) {
    boolean holds =
        numbers(solution.answer())
            .map(numbers -> numbers.stream().allMatch(wish::holds))
            .orElse(wish instanceof AnswerWish.Any || isTruth(solution, wish));
    return holds ? Optional.empty() : Optional.of("the answer is not as wished");
  }

  /** The usual wish says nothing of an answer that is yes or no. */
  private static boolean isTruth(Solution solution, AnswerWish wish) {
    return solution.answer() instanceof Answer.Truth && wish instanceof AnswerWish.Whole;
  }

  /** The rational numbers an answer is made of; empty if it is made of others. */
  private static Optional<List<Rational>> numbers(Answer answer) {
    if (answer instanceof Answer.PolynomialIn in) {
      return Optional.of(in.polynomial().ascending());
    } else if (answer instanceof Answer.Count count) {
      return Optional.of(List.of(Rational.of(count.number())));
    } else if (answer instanceof Answer.Residue residue) {
      return Optional.of(List.of(Rational.of(residue.value())));
    } else if (answer instanceof Answer.Exact exact) {
      return rational(List.of(exact.value()));
    } else if (answer instanceof Answer.Solutions solutions) {
      return rational(solutions.values());
    }
    return Optional.empty();
  }

  private static Optional<List<Rational>> rational(List<ExactValue> values) {
    List<Rational> found = new ArrayList<>();
    for (ExactValue value : values) {
      if (!(value instanceof RationalValue number)) {
        return Optional.empty();
      }
      found.add(number.number());
    }
    return Optional.of(found);
  }

  private static Optional<String> working(Solution solution, WorkingWish wish, int usualSlips) {
    Set<String> routes = solution.routes().stream().map(Working::route).collect(Collectors.toSet());
    for (String route : wish.with()) {
      if (!routes.contains(route)) {
        return Optional.of("the required route %s does not go through".formatted(route));
      }
    }
    for (String route : wish.without()) {
      if (routes.contains(route)) {
        return Optional.of("the forbidden route %s goes through".formatted(route));
      }
    }
    for (ShorterRoute shorter : wish.shorter()) {
      if (!shorter.holds(solution)) {
        return Optional.of(
            "%s is not %s times as short as %s"
                .formatted(shorter.route(), shorter.times(), shorter.than()));
      }
    }
    int least = wish.slips().orElse(usualSlips);
    if (wrongAnswers(solution) < least) {
      return Optional.of("slips give fewer than %d wrong answers".formatted(least));
    }
    if (!TrapAnswers.of(solution, wish.traps()).areDistinct()) {
      return Optional.of("the slips wished do not each give a wrong answer of its own");
    }
    if (wish.level().isPresent()) {
      int level = Level.of(solution).map(Level::number).orElse(0);
      if (level != wish.level().getAsInt()) {
        return Optional.of("level %d, not %d".formatted(level, wish.level().getAsInt()));
      }
    }
    return Optional.empty();
  }

  /** Fewer options are offered, with the reason, where the slips of a kind give no more. */
  static Optional<String> options(Solution solution, Choices choices) {
    return isValue(solution)
            && wrongAnswers(solution) > 0
            && choices.options().size() < Choices.FEWEST
        ? Optional.of("too few believable wrong options")
        : Optional.empty();
  }

  private static boolean isValue(Solution solution) {
    return solution.kind().equals(Families.VALUE);
  }

  private static long wrongAnswers(Solution solution) {
    return solution.slips().stream().map(Solution.WrongTurning::value).distinct().count();
  }

  private static List<String> good(Solution solution) {
    List<String> good = new ArrayList<>();
    int routes = solution.routes().size();
    good.add(routes == 1 ? "a route and both checks agree" : "%d routes agree".formatted(routes));
    long wrong = wrongAnswers(solution);
    if (wrong > 0) {
      good.add(
          wrong == 1
              ? "one wrong answer from a slip"
              : "%d different wrong answers from slips".formatted(wrong));
    }
    if (routes > 1) {
      Working shortest = solution.routes().get(0);
      BigDecimal longest = solution.routes().get(routes - 1).cost().total();
      BigDecimal ratio = longest.divide(shortest.cost().total(), 1, RoundingMode.HALF_UP);
      if (ratio.compareTo(SURPRISE) >= 0) {
        good.add("the shortest route saves: the longest costs %s times as much".formatted(ratio));
      }
    }
    if (solution.warnings().isEmpty()) {
      good.add("no warning");
    }
    return good;
  }
}
