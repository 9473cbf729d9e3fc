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
   * The options for a problem that put its key in the least used place; nothing is used by asking.
   *
   * @throws IllegalArgumentException if the number wanted is not from 3 to 5
   */
  public Choices best(Solution solution) {
    return ChoiceSearch.of(solution, wanted).byPlace().stream()
        .min(Comparator.comparingInt(each -> used[each.keyIndex()]))
        .orElseThrow();
  }

  /** Uses the place of a key; options that are fewer than wanted do not count. */
  public void take(Choices choices) {
    if (choices.options().size() == wanted) {
      used[choices.keyIndex()]++;
    }
  }
}
