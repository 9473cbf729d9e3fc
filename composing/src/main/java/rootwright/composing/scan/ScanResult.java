package rootwright.composing.scan;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.composing.scan.filter.CandidateFilter;

/**
 * What a scan found.
 *
 * @param scan the scan
 * @param state how far it came
 * @param ending why it ended
 */
public record ScanResult(Scan scan, ScanState state, Ending ending) {

  /**
   * A candidate that passed.
   *
   * @param index its number in the box
   * @param polynomial the candidate
   * @param value the exact value of the expression
   */
  public record Found(long index, Polynomial polynomial, Rational value) {}

  /**
   * What one filter did.
   *
   * @param name the name of the filter
   * @param explanation its sentence
   * @param seen how many candidates it was asked about
   * @param rejected how many of them it rejected
   * @param alone how many candidates only this filter rejected; empty if that was not counted
   */
  public record FilterCount(
      String name, String explanation, long seen, long rejected, OptionalLong alone) {}

  /** The candidates kept, in their order. */
  public List<Found> found() {
    return state.hits().stream().map(hit -> found(hit.index())).toList();
  }

  private Found found(long index) {
    long[] coefficients = scan.box().coefficientsAt(index);
    return new Found(
        index,
        scan.box().polynomialAt(index),
        scan.expression()
            .valueAt(coefficients)
            .orElseThrow(() -> new IllegalStateException("accepted without a value: " + index)));
  }

  /** How many candidates were examined. */
  public long examined() {
    return state.examined();
  }

  /** How many of them passed all filters, kept or not. */
  public long accepted() {
    return state.accepted();
  }

  /** Whether the whole box was examined: if nothing was found then, nothing is there. */
  public boolean isExhausted() {
    return ending == Ending.EXHAUSTED;
  }

  /** What each filter did, in the order they were asked. */
  public List<FilterCount> counts() {
    List<FilterCount> counts = new ArrayList<>();
    for (int k = 0; k < scan.filters().size(); k++) {
      CandidateFilter filter = scan.filters().get(k);
      ScanState.Count count = state.counts().get(k);
      counts.add(
          new FilterCount(
              filter.name(),
              filter.explanation(),
              count.seen(),
              count.rejected(),
              scan.counting() == Counting.LEAVE_ONE_OUT
                  ? OptionalLong.of(count.alone())
                  : OptionalLong.empty()));
    }
    return counts;
  }
}
