package rootwright.composing.scan.candidate;

/**
 * The whole numbers from {@code low} to {@code high}, both included: what one coefficient may be.
 *
 * @param low the least value
 * @param high the greatest value, not less than {@code low}
 */
public record CoefficientRange(long low, long high) {

  /**
   * Checks the order and that the number of values is a {@code long}.
   *
   * @throws IllegalArgumentException if the range is empty or has more than 2⁶³ − 1 values
   */
  public CoefficientRange {
    if (low > high) {
      throw new IllegalArgumentException("empty range of a coefficient: " + low + ".." + high);
    }
    // -2^63 has no absolute value among the longs.
    if (low < -Long.MAX_VALUE || high - low < 0 || high - low == Long.MAX_VALUE) {
      throw new IllegalArgumentException(
          "range of a coefficient is too wide: " + low + ".." + high);
    }
  }

  /** The range −size..size. */
  public static CoefficientRange upTo(long size) {
    return new CoefficientRange(Math.negateExact(size), size);
  }

  /** The range of one value. */
  public static CoefficientRange only(long value) {
    return new CoefficientRange(value, value);
  }

  /** How many values there are. */
  public long size() {
    return high - low + 1;
  }

  /** Whether the value lies in the range. */
  public boolean contains(long value) {
    return low <= value && value <= high;
  }

  /** The greatest absolute value. */
  public long largest() {
    return Math.max(Math.abs(low), Math.abs(high));
  }

  /**
   * The range that allows sizes greater by {@code step}. A single value stays as it is, and a range
   * on one side of zero stays on that side: they were asked for on purpose.
   *
   * @throws ArithmeticException if a bound no longer fits
   */
  public CoefficientRange widened(long step) {
    if (low == high) {
      return this;
    }
    return new CoefficientRange(
        low > 0 ? low : Math.subtractExact(low, low == 0 ? 0 : step),
        high < 0 ? high : Math.addExact(high, high == 0 ? 0 : step));
  }

  /** {@code -3..3}: what {@link #parse} reads. */
  @Override
  public String toString() {
    return low + ".." + high;
  }

  /**
   * Reads what {@link #toString()} writes.
   *
   * @throws IllegalArgumentException if the text is not two whole numbers joined by two points
   */
  public static CoefficientRange parse(String text) {
    int points = text.indexOf("..");
    if (points < 0) {
      throw new IllegalArgumentException("not a range of whole numbers: " + text);
    }
    return new CoefficientRange(
        Long.parseLong(text.substring(0, points)), Long.parseLong(text.substring(points + 2)));
  }
}
