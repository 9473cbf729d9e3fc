package rootwright.composing.pattern;

/**
 * How large a drawn statement is to be.
 *
 * @param degree the degree of its polynomial, one that the pattern has
 * @param size bound for the numbers that are drawn; coefficients multiplied out of them are larger
 */
public record Scale(int degree, int size) {

  /** Checks the size. */
  public Scale {
    if (size < 1) {
      throw new IllegalArgumentException("no number is drawn from a size of " + size);
    }
  }

  /** A bound for numbers that are multiplied with one another, such as roots: half the size. */
  int roots() {
    return Math.max(2, size / 2);
  }

  /**
   * Whether a coefficient that came out is still fit to be printed: up to twenty times the size.
   */
  boolean bears(long coefficient) {
    return Math.abs(coefficient) <= 20L * size;
  }
}
