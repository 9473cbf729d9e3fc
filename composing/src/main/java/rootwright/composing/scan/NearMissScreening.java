package rootwright.composing.scan;

import java.util.ArrayList;
import java.util.List;
import rootwright.composing.scan.candidate.CoefficientBox;
import rootwright.composing.scan.candidate.Row;
import rootwright.composing.scan.candidate.Survivors;
import rootwright.composing.scan.filter.CandidateFilter;

/**
 * Drops a candidate at the second filter that rejects it. {@code missed.get(k)} holds the places
 * that so far fail filter k and no other.
 */
final class NearMissScreening extends Screening {

  private final List<Survivors> missed = new ArrayList<>();
  private final Survivors asked;

  NearMissScreening(CoefficientBox box, List<CandidateFilter> filters) {
    super(box, filters);
    asked = new Survivors(box.rowLength());
    for (int k = 0; k < filters.size(); k++) {
      missed.add(new Survivors(box.rowLength()));
    }
  }

  @Override
  Survivors screen(Row row, Tally tally) {
    passed.fill(row.length());
    int left = row.length();
    for (int k = 0; k < tests.size(); k++) {
      asked.set(passed);
      for (int j = 0; j < k; j++) {
        asked.add(missed.get(j));
      }
      tests.get(k).screen(row, asked);
      for (int j = 0; j < k; j++) {
        missed.get(j).retain(asked);
      }
      missed.get(k).set(passed);
      missed.get(k).remove(asked);
      passed.retain(asked);
      int after = passed.count();
      tally.seen[k] += left;
      tally.rejected[k] += left - after;
      left = after;
    }
    for (int k = 0; k < tests.size(); k++) {
      tally.enterAlone(k, row, missed.get(k));
    }
    tally.count(row.length(), left);
    return passed;
  }
}
