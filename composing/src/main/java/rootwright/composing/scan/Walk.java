package rootwright.composing.scan;

import rootwright.composing.scan.candidate.CoefficientBox;
import rootwright.composing.scan.candidate.Row;
import rootwright.composing.scan.candidate.Survivors;

/** A way through all rows of a box, cut into tasks; immutable. */
sealed interface Walk permits StraightWalk, SeededWalk {

  /** The way through a box in an order. */
  static Walk of(CoefficientBox box, ScanOrder order) {
    return order instanceof ScanOrder.Seeded seeded
        ? new SeededWalk(box, seeded.seed())
        : new StraightWalk(box);
  }

  /** How many positions make a task: fixed by the box, not by the number of threads. */
  long rowsPerTask();

  /** The number of the row at a position. */
  long rowAt(long position);

  /** Enters the survivors of the row at a position as hits, at most as many as the tally keeps. */
  void enter(long position, Row row, Survivors survivors, Tally tally);

  /** Whether the hits so far cannot be bettered by later rows. */
  boolean isSettled(Tally tally);
}
