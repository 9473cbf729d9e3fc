package rootwright.algebra.enclosure;

/** How many bits a number of decimal digits needs. */
public final class Precision {

  /** Bits that a few roundings on the way may cost. */
  private static final int SPARE = 8;

  private Precision() {}

  /**
   * Bits that are at least as fine as this many significant digits, with a few to spare.
   *
   * @throws IllegalArgumentException if {@code digits} is not positive
   */
  public static int bits(int digits) {
    return bits(digits, SPARE);
  }

  /**
   * Bits that are at least as fine as this many significant digits, and so many more.
   *
   * @throws IllegalArgumentException if {@code digits} is not positive
   */
  static int bits(int digits, int spare) {
    if (digits < 1) {
      throw new IllegalArgumentException("number of digits must be positive: " + digits);
    }
    // 10 < 2^(3322/1000).
    return Math.toIntExact(digits * 3322L / 1000 + spare);
  }
}
