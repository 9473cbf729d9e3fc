package rootwright.composing.option;

import java.util.Comparator;
import rootwright.working.solve.Solution;

/**
 * Chooses the options of one problem after another so that the key stands in every place about
 * equally often: each key in its least used place so far, among equally used places the one with
 * the better wrong options. Belongs to one composition, and to one thread at a time.
 *
 * <p>Unlike {@link BalancedChoices}, which sees all problems of a paper at once, it settles the
 * options of a problem when it comes, so that they can be shown while others are still looked for.
 */
public final class KeyPlaces {

  private final int wanted;
  private final int[] used;

  /**
   * Nothing placed yet.
   *
   * @param wanted how many choices each problem is to have
   */
  public KeyPlaces(int wanted) {
    this.wanted = wanted;
    this.used = new int[wanted];
  }

  /**
   * The options of the next problem.
   *
   * @throws IllegalArgumentException if the number wanted is not from 3 to 5
   */
  public Choices place(Solution solution) {
    Choices choices =
        ChoiceSearch.of(solution, wanted).byPlace().stream()
            .min(Comparator.comparingInt(each -> used[each.keyIndex()]))
            .orElseThrow();
    if (choices.options().size() == wanted) {
      used[choices.keyIndex()]++;
    }
    return choices;
  }
}
