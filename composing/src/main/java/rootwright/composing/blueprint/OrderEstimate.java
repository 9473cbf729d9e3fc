package rootwright.composing.blueprint;

import java.math.BigInteger;
import java.util.List;
import rootwright.composing.scan.ScanEstimate;

/**
 * What a sample tells about an order before it is started: how many candidates each wish leaves,
 * and how long the scan may take.
 *
 * @param asks the estimates for the asks of the order
 */
public record OrderEstimate(List<OfAsk> asks) {

  /** Keeps its own copy. */
  public OrderEstimate {
    asks = List.copyOf(asks);
  }

  /**
   * The estimate for one ask.
   *
   * @param ask the ask
   * @param scan what the sample tells about its scan
   * @param worked how many candidates that pass are worked at most
   */
  public record OfAsk(String ask, ScanEstimate scan, int worked) {

    /**
     * How long its scan takes at most on so many threads, in nanoseconds: until enough candidates
     * pass, at the rate of the sample, or through the whole box.
     */
    BigInteger nanosecondsAtMost(int threads) {
      BigInteger all = scan.nanosecondsForAll(threads);
      if (scan.accepted() == 0) {
        return all;
      }
      BigInteger enough =
          BigInteger.valueOf(scan.nanoseconds())
              .multiply(BigInteger.valueOf(worked))
              .divide(BigInteger.valueOf(scan.accepted()).multiply(BigInteger.valueOf(threads)));
      return enough.min(all);
    }
  }

  /** How many candidates there are, all asks together. */
  public BigInteger candidates() {
    return asks.stream()
        .map(ask -> BigInteger.valueOf(ask.scan().candidates()))
        .reduce(BigInteger.ZERO, BigInteger::add);
  }

  /** How many candidates the sample has, all asks together. */
  public long sampled() {
    return asks.stream().mapToLong(ask -> ask.scan().examined()).sum();
  }

  /** How many candidates meet every wish of the scan, by proportion; 0 may mean few. */
  public BigInteger passing() {
    return asks.stream()
        .map(ask -> ask.scan().expectedAccepted())
        .reduce(BigInteger.ZERO, BigInteger::add);
  }

  /** How long the scans take at most on so many threads, in nanoseconds, if each got a core. */
  public BigInteger nanosecondsAtMost(int threads) {
    return asks.stream()
        .map(ask -> ask.nanosecondsAtMost(threads))
        .reduce(BigInteger.ZERO, BigInteger::add);
  }
}
