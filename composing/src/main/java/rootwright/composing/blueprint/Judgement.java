package rootwright.composing.blueprint;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import rootwright.composing.level.Level;
import rootwright.composing.option.Choices;
import rootwright.working.answer.Answer;
import rootwright.working.gate.Warning;
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

  static Judgement of(Solution solution, Blueprint blueprint) {
    return new Judgement(solution, refusal(solution, blueprint), good(solution));
  }

  private static Optional<String> refusal(Solution solution, Blueprint blueprint) {
    Set<String> routes = solution.routes().stream().map(Working::route).collect(Collectors.toSet());
    if (!(solution.answer() instanceof Answer.Exact)) {
      return Optional.of("the ask has no single answer here");
    }
    if (routes.size() < 2) {
      return Optional.of("fewer than two routes confirm the key");
    }
    if (!routes.containsAll(blueprint.mustHave())) {
      return Optional.of("a required route does not go through");
    }
    if (blueprint.mustLack().stream().anyMatch(routes::contains)) {
      return Optional.of("a forbidden route goes through");
    }
    long wrong = wrongAnswers(solution);
    if (wrong < blueprint.slips()) {
      return Optional.of("slips give fewer than %d wrong answers".formatted(blueprint.slips()));
    }
    if (Choices.of(solution, blueprint.choices()).options().size() < Choices.FEWEST) {
      return Optional.of("too few believable wrong options");
    }
    if (blueprint.level().isPresent()
        && Level.of(solution)
            .map(Level::number)
            .filter(n -> n == blueprint.level().getAsInt())
            .isEmpty()) {
      return Optional.of("another level");
    }
    return Optional.empty();
  }

  private static long wrongAnswers(Solution solution) {
    return solution.slips().stream().map(Solution.WrongTurning::value).distinct().count();
  }

  private static List<String> good(Solution solution) {
    List<String> good = new ArrayList<>();
    good.add("%d routes agree".formatted(solution.routes().size()));
    good.add("%d different wrong answers from slips".formatted(wrongAnswers(solution)));
    Working shortest = solution.routes().isEmpty() ? null : solution.routes().get(0);
    if (shortest != null) {
      BigDecimal longest = solution.routes().get(solution.routes().size() - 1).cost().total();
      BigDecimal ratio = longest.divide(shortest.cost().total(), 1, RoundingMode.HALF_UP);
      if (ratio.compareTo(SURPRISE) >= 0) {
        good.add("the shortest route saves: the longest costs %s times as much".formatted(ratio));
      }
    }
    if (solution.warnings().stream().map(Warning::code).findAny().isEmpty()) {
      good.add("no warning");
    }
    return good;
  }
}
