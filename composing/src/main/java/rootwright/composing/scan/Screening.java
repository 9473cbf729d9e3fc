package rootwright.composing.scan;

import java.util.List;
import rootwright.composing.scan.candidate.CoefficientBox;
import rootwright.composing.scan.candidate.Row;
import rootwright.composing.scan.candidate.Survivors;
import rootwright.composing.scan.candidate.Workspace;
import rootwright.composing.scan.filter.CandidateFilter;
import rootwright.composing.scan.filter.RowTest;

/** All filters of a scan at work on rows; belongs to one thread. */
abstract sealed class Screening permits CascadeScreening, NearMissScreening {

  final List<RowTest> tests;
  final Survivors passed;

  Screening(CoefficientBox box, List<CandidateFilter> filters) {
    Workspace workspace = new Workspace(box);
    tests = filters.stream().map(filter -> filter.rowTest(workspace)).toList();
    passed = new Survivors(box.rowLength());
  }

  /** The screening that counts what is asked for. */
  static Screening of(Scan scan) {
    return switch (scan.counting()) {
      case CASCADE -> new CascadeScreening(scan.box(), scan.filters());
      case LEAVE_ONE_OUT -> new NearMissScreening(scan.box(), scan.filters());
    };
  }

  /** Screens a row, counts, and returns those that passed; valid until the next call. */
  abstract Survivors screen(Row row, Tally tally);
}
