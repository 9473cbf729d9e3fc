package rootwright.composing.option;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import rootwright.working.solve.Solution;

/**
 * The choices for the problems of one paper, the place of the key balanced by picking which wrong
 * values lie below and above it; the order stays ascending (Haladyna, Downing and Rodriguez 2002).
 */
public final class BalancedChoices {

  private BalancedChoices() {}

  /**
   * The choices of each problem, in the order of the problems. Those whose key can stand in few
   * places are placed first, each in its least used place so far; among equally used places the one
   * with the better wrong options is taken.
   *
   * @param wanted how many choices each, from {@link Choices#FEWEST} to {@link Choices#MOST}
   * @throws IllegalArgumentException if {@code wanted} is outside that range
   */
  public static List<Choices> of(List<Solution> solutions, int wanted) {
    List<List<Choices>> possible =
        solutions.stream().map(solution -> ChoiceSearch.of(solution, wanted).byPlace()).toList();
    int[] used = new int[wanted];
    Choices[] taken = new Choices[possible.size()];
    IntStream.range(0, possible.size())
        .boxed()
        .sorted(Comparator.comparingInt(item -> possible.get(item).size()))
        .forEach(
            item -> {
              Choices choices =
                  possible.get(item).stream()
                      .min(Comparator.comparingInt(each -> used[each.keyIndex()]))
                      .orElseThrow();
              taken[item] = choices;
              if (choices.options().size() == wanted) {
                used[choices.keyIndex()]++;
              }
            });
    return new ArrayList<>(Arrays.asList(taken));
  }
}
