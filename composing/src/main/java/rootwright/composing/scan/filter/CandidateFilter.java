package rootwright.composing.scan.filter;

import java.util.List;
import rootwright.composing.scan.candidate.CoefficientBox;
import rootwright.composing.scan.candidate.Workspace;

/**
 * One wish about a candidate. A filter is immutable and exact: it never lets a wrong candidate pass
 * and never rejects a right one.
 */
public interface CandidateFilter {

  /**
   * A short hyphenated name that tells this filter, with its numbers, from every other: {@code
   * answer-between-0-and-999}.
   */
  String name();

  /** What is asked of a candidate, as a sentence a coach understands. */
  String explanation();

  /** When to ask: cheaper stages come first. */
  Stage stage();

  /** Whether the polynomial with these coefficients, constant term first, meets the wish. */
  boolean passes(long[] ascending);

  /**
   * The test of whole rows for one thread. It agrees with {@link #passes}; a filter that can settle
   * a row faster than candidate by candidate says so here.
   */
  default RowTest rowTest(Workspace workspace) {
    return new EachCandidate(workspace.box().degree(), this::passes);
  }

  /** The same wish in another box, for the few wishes that depend on what else is offered. */
  default CandidateFilter within(CoefficientBox box) {
    return this;
  }

  /** Wishes that ask for less than this one, the nearest first, for an empty result. */
  default List<CandidateFilter> weaker() {
    return List.of();
  }
}
