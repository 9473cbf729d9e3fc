package rootwright.composing.option;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;
import rootwright.algebra.number.Rational;
import rootwright.working.answer.Answer;
import rootwright.working.solve.Solution;
import rootwright.working.step.Idea;

/**
 * All sets of wrong options that the rules allow, and the best of them for each place of the key.
 *
 * <p>Best is the set with the largest sum of weights plus one half for every different step of the
 * shortest working on which one of its slips lurks (judgements of practice); a slip beside that
 * working has half its weight. At most {@value #MOST_CONSIDERED} wrong answers, the likeliest, are
 * combined, so there are at most 7315 sets.
 */
final class ChoiceSearch {

  /** Most wrong answers that are combined. */
  static final int MOST_CONSIDERED = 22;

  private final Solution solution;
  private final OptionRules rules;
  private final ShortestRoute route;
  private final List<Choices> byPlace;

  private ChoiceSearch(Solution solution, int wanted) {
    this.solution = solution;
    this.rules = new OptionRules(solution.answer());
    this.route = ShortestRoute.of(solution);
    this.byPlace = search(wanted);
  }

  /**
   * Searches.
   *
   * @throws IllegalArgumentException if {@code wanted} is not from 3 to 5
   */
  static ChoiceSearch of(Solution solution, int wanted) {
    if (wanted < Choices.FEWEST || wanted > Choices.MOST) {
      throw new IllegalArgumentException(
          "a problem has from %d to %d choices, not %d"
              .formatted(Choices.FEWEST, Choices.MOST, wanted));
    }
    return new ChoiceSearch(solution, wanted);
  }

  /** The best set wherever it puts the key. */
  Choices best() {
    return byPlace.get(0);
  }

  /** The best set for each place of the key that can be had, best first; never empty. */
  List<Choices> byPlace() {
    return byPlace;
  }

  private record Ranked(List<WrongValue> wrong, int unlike, boolean longest, Rational score) {
    static final Comparator<Ranked> BEST_FIRST =
        Comparator.comparingInt(Ranked::unlike)
            .thenComparing(Ranked::longest)
            .thenComparing(Ranked::score, Comparator.reverseOrder());
  }

  private List<Choices> search(int wanted) {
    List<WrongValue> all = WrongValues.of(solution);
    List<WrongValue> believable =
        all.stream().filter(rules::nearInSize).limit(MOST_CONSIDERED).toList();
    for (int count = wanted - 1; count >= 2; count--) {
      Map<Integer, Ranked> found = bestByPlace(believable, count, rules::allow);
      if (!found.isEmpty()) {
        return offered(found, wanted, all);
      }
    }
    for (int count = 2; count >= 1; count--) {
      Map<Integer, Ranked> found = bestByPlace(believable, count, rules::tolerate);
      if (!found.isEmpty()) {
        return offered(found, wanted, all);
      }
    }
    return offered(bestByPlace(List.of(), 0, rules::tolerate), wanted, all);
  }

  private Map<Integer, Ranked> bestByPlace(
      List<WrongValue> pool, int count, Predicate<List<WrongValue>> allowed) {
    Map<Integer, Ranked> best = new TreeMap<>();
    choose(pool, count, 0, new ArrayList<>(), allowed, best);
    return best;
  }

  private void choose(
      List<WrongValue> pool,
      int count,
      int from,
      List<WrongValue> chosen,
      Predicate<List<WrongValue>> allowed,
      Map<Integer, Ranked> best) {
    if (chosen.size() == count) {
      if (allowed.test(chosen)) {
        Ranked ranked = rank(List.copyOf(chosen));
        best.merge(
            rules.below(chosen),
            ranked,
            (old, fresh) -> Ranked.BEST_FIRST.compare(fresh, old) < 0 ? fresh : old);
      }
      return;
    }
    for (int k = from; k <= pool.size() - (count - chosen.size()); k++) {
      chosen.add(pool.get(k));
      choose(pool, count, k + 1, chosen, allowed, best);
      chosen.remove(chosen.size() - 1);
    }
  }

  private Ranked rank(List<WrongValue> wrong) {
    Set<Idea> covered = new HashSet<>();
    Rational weight = Rational.ZERO;
    for (WrongValue value : wrong) {
      covered.addAll(route.covered(value));
      weight = weight.plus(route.weight(value));
    }
    return new Ranked(
        wrong,
        rules.unlike(wrong),
        rules.keyIsLongest(wrong),
        weight.plus(Rational.of(covered.size(), 2)));
  }

  private List<Choices> offered(Map<Integer, Ranked> found, int wanted, List<WrongValue> all) {
    return found.values().stream()
        .sorted(Ranked.BEST_FIRST)
        .map(ranked -> choices(ranked.wrong(), wanted, all))
        .toList();
  }

  private Choices choices(List<WrongValue> wrong, int wanted, List<WrongValue> all) {
    List<Option> options = new ArrayList<>(wrong.stream().map(WrongValue::option).toList());
    options.add(new Option(solution.answer(), List.of()));
    options.sort(Comparator.comparing(Option::value, Numbers.ASCENDING));
    return new Choices(
        options,
        rules.below(wrong),
        options.size() < wanted ? Optional.of(why(options.size(), wanted, all)) : Optional.empty());
  }

  private String why(int offered, int wanted, List<WrongValue> all) {
    if (solution.answer() instanceof Answer.Truth) {
      return "the answer is yes or no, so there are no %d choices".formatted(wanted);
    }
    long far = all.stream().filter(wrong -> !rules.nearInSize(wrong)).count();
    String known =
        all.isEmpty()
            ? "no known wrong turning leads to a wrong answer here"
            : "the known wrong turnings lead to %d wrong answer%s"
                    .formatted(all.size(), all.size() == 1 ? "" : "s")
                + (far > 0 ? ", %d of them too far from the answer in size".formatted(far) : "")
                + (all.size() - far >= wanted - 1
                    ? ", and no %d of them are enough alike in form and sign".formatted(wanted - 1)
                    : "");
    return "%d of %d choices: %s; nothing is made up to fill the gap"
        .formatted(offered, wanted, known);
  }
}
