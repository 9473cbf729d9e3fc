package rootwright.composing.scan;

/** How much a scan finds out about its filters. */
public enum Counting {
  /** A candidate is dropped at the first filter that rejects it. */
  CASCADE,
  /**
   * A candidate is dropped at the second filter that rejects it, so that for each filter it is
   * known how many candidates fail that one alone. Slower.
   */
  LEAVE_ONE_OUT
}
