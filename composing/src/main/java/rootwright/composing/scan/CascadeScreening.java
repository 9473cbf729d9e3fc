package rootwright.composing.scan;

import java.util.List;
import rootwright.composing.scan.candidate.CoefficientBox;
import rootwright.composing.scan.candidate.Row;
import rootwright.composing.scan.candidate.Survivors;
import rootwright.composing.scan.filter.CandidateFilter;

/** Drops a candidate at the first filter that rejects it, and a row when nothing is left of it. */
final class CascadeScreening extends Screening {

  CascadeScreening(CoefficientBox box, List<CandidateFilter> filters) {
    super(box, filters);
  }

  @Override
  Survivors screen(Row row, Tally tally) {
    passed.fill(row.length());
    int left = row.length();
    for (int k = 0; k < tests.size() && left > 0; k++) {
      tally.seen[k] += left;
      tests.get(k).screen(row, passed);
      int after = passed.count();
      tally.rejected[k] += left - after;
      left = after;
    }
    tally.count(row.length(), left);
    return passed;
  }
}
