package rootwright.composing.scan.candidate;

/**
 * A window on neighbouring candidates: all coefficients but the constant term are the same, and the
 * constant term runs upwards by 1. It is moved from row to row and belongs to one thread.
 */
public final class Row {

  private final CoefficientBox box;
  final long[] coefficients;
  private long number = -1;
  private long firstIndex;
  private int length;

  /** A window that has not been moved to a row yet. */
  public Row(CoefficientBox box) {
    this.box = box;
    coefficients = new long[box.degree() + 1];
  }

  /**
   * Moves the window.
   *
   * @throws IndexOutOfBoundsException if the box has no such row
   */
  public void moveTo(long number) {
    box.decode(number, this);
  }

  void place(long number, long firstIndex, int length) {
    this.number = number;
    this.firstIndex = firstIndex;
    this.length = length;
  }

  /** The number of the row; −1 before the first move. */
  public long number() {
    return number;
  }

  /** How many candidates the row has. */
  public int length() {
    return length;
  }

  /** The number of a candidate in its box. */
  public long index(int place) {
    return firstIndex + place;
  }

  /** The degree of the candidates. */
  public int degree() {
    return coefficients.length - 1;
  }

  /** The common coefficient of x^power, for a power above 0. */
  public long coefficient(int power) {
    return coefficients[power];
  }

  /** The common lead coefficient. */
  public long lead() {
    return coefficients[coefficients.length - 1];
  }

  /** The constant term of the first candidate. */
  public long firstConstant() {
    return coefficients[0];
  }

  /** The constant term of the candidate at a place. */
  public long constant(int place) {
    return coefficients[0] + place;
  }

  /** The place of the candidate with this constant term; outside 0..length−1 if there is none. */
  public long placeOf(long constant) {
    return constant - coefficients[0];
  }

  /** The greatest absolute value of a constant term in this row. */
  public long largestConstant() {
    return Math.max(Math.abs(coefficients[0]), Math.abs(coefficients[0] + length - 1));
  }

  /** Copies the coefficients of the candidate at a place, constant term first. */
  public void copyTo(int place, long[] ascending) {
    System.arraycopy(coefficients, 1, ascending, 1, coefficients.length - 1);
    ascending[0] = coefficients[0] + place;
  }
}
