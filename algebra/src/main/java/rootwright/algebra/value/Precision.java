package rootwright.algebra.value;

/** How many bits a number of decimal digits needs. */
final class Precision {

  private Precision() {}

  /**
   * Bits that are at least as fine as this many significant digits, with a few to spare.
   *
   * @throws IllegalArgumentException if {@code digits} is not positive
   */
  static int bits(int digits) {
    if (digits < 1) {
      throw new IllegalArgumentException("number of digits must be positive: " + digits);
    }
    // 10 < 2^(3322/1000).
    return Math.toIntExact(digits * 3322L / 1000 + 8);
  }
}
