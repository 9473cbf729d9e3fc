package rootwright.composing.scan;

import java.util.ArrayList;
import java.util.List;
import rootwright.composing.scan.filter.CandidateFilter;

/**
 * Finds out which wishes of an empty scan are to blame: wishes that no candidate of the box meets
 * by themselves, and pairs of wishes that no candidate meets together.
 */
public final class Conflicts {

  private final Scan scan;
  private final long budget;
  private final ScanControl control;

  /**
   * The search.
   *
   * @param scan the scan that found nothing
   * @param budget of a box with more candidates than this a sample of so many is looked at; what is
   *     found then is true of the sample
   * @param control who does the work; where it stops a scan, nothing is claimed
   */
  public Conflicts(Scan scan, long budget, ScanControl control) {
    // One candidate is enough to clear a wish, and a seeded walk meets one soon if there are many.
    this.scan = scan.with(new ScanOrder.Seeded(1, 0)).with(Counting.CASCADE);
    this.budget = budget;
    this.control = control;
  }

  /** Whether every candidate is looked at, so that what is found is true of the whole box. */
  public boolean isOfAll() {
    return scan.box().candidates() <= budget;
  }

  /**
   * The smallest sets of wishes that no candidate of the box meets: single wishes, and pairs that
   * contain none of those. Takes a scan for each wish and for each pair.
   */
  public List<List<CandidateFilter>> find() {
    List<List<CandidateFilter>> found = new ArrayList<>();
    List<CandidateFilter> possible = new ArrayList<>();
    for (CandidateFilter filter : scan.filters()) {
      if (isImpossible(List.of(filter))) {
        found.add(List.of(filter));
      } else {
        possible.add(filter);
      }
    }
    for (int second = 1; second < possible.size(); second++) {
      for (int first = 0; first < second; first++) {
        List<CandidateFilter> pair = List.of(possible.get(first), possible.get(second));
        if (isImpossible(pair)) {
          found.add(pair);
        }
      }
    }
    return List.copyOf(found);
  }

  private boolean isImpossible(List<CandidateFilter> filters) {
    return Look.at(scan.with(filters), budget, control)
        .filter(look -> look.result().accepted() == 0)
        .isPresent();
  }
}
