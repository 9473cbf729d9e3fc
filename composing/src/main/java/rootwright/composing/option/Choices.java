package rootwright.composing.option;

import java.util.List;
import java.util.Optional;
import rootwright.working.solve.Solution;

/**
 * The choices of one problem: the key among wrong options, ascending.
 *
 * @param options what is offered, numbers in ascending order; all different under exact equality
 * @param keyIndex where the key stands, from 0
 * @param fewer if there are fewer choices than were wanted: why, one sentence for the coach
 */
public record Choices(List<Option> options, int keyIndex, Optional<String> fewer) {

  /** Fewest choices that can be ordered: a key and two wrong options (Rodriguez 2005). */
  public static final int FEWEST = 3;

  /** Most choices that can be ordered. */
  public static final int MOST = 5;

  /** How many choices a problem has unless its paper's form says otherwise. */
  public static final int USUAL = 4;

  /**
   * Checks that exactly the option at the key's place is the key.
   *
   * @throws IllegalArgumentException if it is not
   */
  public Choices {
    options = List.copyOf(options);
    for (int k = 0; k < options.size(); k++) {
      if (options.get(k).isKey() != (k == keyIndex)) {
        throw new IllegalArgumentException(
            "the key is said to be choice %d of %s".formatted(keyIndex, options));
      }
    }
    if (keyIndex < 0 || keyIndex >= options.size()) {
      throw new IllegalArgumentException(
          "the key cannot be choice %d of %d".formatted(keyIndex, options.size()));
    }
  }

  /**
   * The best choices for one problem, wherever that puts the key. For the problems of one paper use
   * {@link BalancedChoices}, which also balances the place of the key.
   *
   * @param wanted how many choices, the key included, from {@link #FEWEST} to {@link #MOST}
   * @throws IllegalArgumentException if {@code wanted} is outside that range
   */
  public static Choices of(Solution solution, int wanted) {
    return ChoiceSearch.of(solution, wanted).best();
  }

  /**
   * The best choices for each place that the key can have, the best of all first; never empty.
   *
   * @param wanted how many choices, the key included, from {@link #FEWEST} to {@link #MOST}
   * @throws IllegalArgumentException if {@code wanted} is outside that range
   */
  public static List<Choices> byPlace(Solution solution, int wanted) {
    return ChoiceSearch.of(solution, wanted).byPlace();
  }

  /**
   * Everything wrong that known wrong turnings, alone or two together, lead to on a problem,
   * likeliest first: where the wrong options come from, and what an answer can be compared with to
   * see what went wrong.
   */
  public static List<Option> everyWrong(Solution solution) {
    return WrongValues.of(solution).stream().map(WrongValue::option).toList();
  }

  /** The right answer. */
  public Option key() {
    return options.get(keyIndex);
  }

  /** The wrong options, ascending. */
  public List<Option> wrong() {
    return options.stream().filter(option -> !option.isKey()).toList();
  }
}
