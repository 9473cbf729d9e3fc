package rootwright.composing.scan;

import java.math.BigInteger;
import java.util.List;
import java.util.function.LongSupplier;
import rootwright.composing.scan.candidate.Row;

/**
 * What a short sample of a scan tells about the whole, before it is started. A first sample on a
 * cold machine makes the scan look slower than it will be.
 *
 * @param examined how many candidates the sample has
 * @param accepted how many of them passed
 * @param nanoseconds how long the sample took on one thread, at least 1
 * @param candidates how many candidates the box has
 * @param counts how many of the sample each filter saw and rejected
 */
public record ScanEstimate(
    long examined,
    long accepted,
    long nanoseconds,
    long candidates,
    List<ScanResult.FilterCount> counts) {

  /** Keeps its own copy. */
  public ScanEstimate {
    counts = List.copyOf(counts);
  }

  /**
   * Screens rows drawn from a seed for about so long, on the calling thread.
   *
   * @param scan the scan to be estimated
   * @param seed what the rows are drawn from
   * @param clock a clock in nanoseconds; only differences are used
   * @param budget how many nanoseconds the sample may take; at least one row is screened
   */
  public static ScanEstimate of(Scan scan, long seed, LongSupplier clock, long budget) {
    Scan sampled = scan.with(new ScanOrder.Seeded(1, seed)).with(Counting.CASCADE);
    Walk walk = Walk.of(sampled.box(), sampled.order());
    Screening screening = Screening.of(sampled);
    Row row = new Row(sampled.box());
    Tally tally = sampled.newTally();
    long start = clock.getAsLong();
    long spent = 0;
    for (long position = 0;
        position < sampled.box().rows() && (position == 0 || spent < budget);
        position++) {
      row.moveTo(walk.rowAt(position));
      screening.screen(row, tally);
      spent = clock.getAsLong() - start;
    }
    ScanState state = tally.state(0, "");
    return new ScanEstimate(
        state.examined(),
        state.accepted(),
        Math.max(1, spent),
        sampled.box().candidates(),
        sampled.countsIn(state));
  }

  /** How long the whole box would take on so many threads, in nanoseconds, if each got a core. */
  public BigInteger nanosecondsForAll(int threads) {
    return BigInteger.valueOf(nanoseconds)
        .multiply(BigInteger.valueOf(candidates))
        .divide(BigInteger.valueOf(examined).multiply(BigInteger.valueOf(threads)));
  }

  /** How many candidates of the whole box would pass, by proportion; 0 may mean few. */
  public BigInteger expectedAccepted() {
    return BigInteger.valueOf(accepted)
        .multiply(BigInteger.valueOf(candidates))
        .divide(BigInteger.valueOf(examined));
  }
}
