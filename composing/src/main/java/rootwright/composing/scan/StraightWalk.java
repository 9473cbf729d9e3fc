package rootwright.composing.scan;

import rootwright.composing.scan.candidate.CoefficientBox;
import rootwright.composing.scan.candidate.Row;
import rootwright.composing.scan.candidate.Survivors;

/** The rows as they come; the hits that come first are kept, and every row is visited. */
record StraightWalk(CoefficientBox box) implements Walk {

  private static final long CANDIDATES_PER_TASK = 1 << 17;

  @Override
  public long rowsPerTask() {
    return Math.max(1, CANDIDATES_PER_TASK / box.rowLength());
  }

  @Override
  public long rowAt(long position) {
    return position;
  }

  @Override
  public void enter(long position, Row row, Survivors survivors, Tally tally) {
    for (int place = survivors.next(0);
        place >= 0 && tally.enter(new Hit(0, row.index(place), row.index(place)));
        place = survivors.next(place + 1)) {}
  }

  @Override
  public boolean isSettled(Tally tally) {
    return false;
  }
}
