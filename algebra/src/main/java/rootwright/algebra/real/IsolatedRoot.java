package rootwright.algebra.real;

import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;

/**
 * A real root of a polynomial, known by an interval that holds no other.
 *
 * @param polynomial squarefree, has the root
 * @param low below the root, or the root itself
 * @param high above the root, or the root itself; equal to {@code low} exactly if the root is known
 *     to be that number
 * @param multiplicity how often the root occurs in the polynomial it was isolated for
 */
public record IsolatedRoot(Polynomial polynomial, Rational low, Rational high, int multiplicity)
    implements Comparable<IsolatedRoot> {

  private static final Rational HALF = Rational.of(1, 2);

  /**
   * Checks that the interval brackets a root.
   *
   * @throws IllegalArgumentException if it does not, or the multiplicity is not positive
   */
  public IsolatedRoot {
    int below = SturmSequence.signAt(polynomial, low);
    int above = SturmSequence.signAt(polynomial, high);
    boolean exact = low.equals(high) && below == 0;
    if (multiplicity < 1 || !(exact || (low.compareTo(high) < 0 && below * above < 0))) {
      throw new IllegalArgumentException(
          "no change of sign of %s from %s to %s".formatted(polynomial, low, high));
    }
  }

  /** Whether the root is known to be {@code low}. */
  public boolean isExact() {
    return low.equals(high);
  }

  /** The length of the interval. */
  public Rational width() {
    return high.minus(low);
  }

  /** The same root in one half of the interval. */
  public IsolatedRoot halved() {
    if (isExact()) {
      return this;
    }
    Rational middle = low.plus(high).times(HALF);
    int sign = SturmSequence.signAt(polynomial, middle);
    if (sign == 0) {
      return new IsolatedRoot(polynomial, middle, middle, multiplicity);
    }
    return sign == SturmSequence.signAt(polynomial, low)
        ? new IsolatedRoot(polynomial, middle, high, multiplicity)
        : new IsolatedRoot(polynomial, low, middle, multiplicity);
  }

  /**
   * The same root in an interval not longer than {@code width}, by bisection.
   *
   * @throws IllegalArgumentException if the width is not positive
   */
  public IsolatedRoot refinedTo(Rational width) {
    if (width.signum() <= 0) {
      throw new IllegalArgumentException("width of an interval must be positive: " + width);
    }
    IsolatedRoot root = this;
    while (root.width().compareTo(width) > 0) {
      root = root.halved();
    }
    return root;
  }

  /**
   * The sign of another polynomial at the root, exactly: it is zero if the greatest common divisor
   * has the root; otherwise the interval is halved until the other polynomial has no root in it.
   */
  public int signOf(Polynomial other) {
    if (other.isZero() || isRootOf(other)) {
      return 0;
    }
    if (isExact()) {
      return SturmSequence.signAt(other, low);
    }
    SturmSequence sturm = SturmSequence.of(other);
    IsolatedRoot root = this;
    while (sturm.countIn(root.low, root.high) > 0 || SturmSequence.signAt(other, root.low) == 0) {
      root = root.halved();
      if (root.isExact()) {
        return SturmSequence.signAt(other, root.low);
      }
    }
    return SturmSequence.signAt(other, root.low);
  }

  /** Whether the number is also a root of another polynomial. */
  public boolean isRootOf(Polynomial other) {
    Polynomial common = polynomial.gcd(other);
    if (common.degree() < 1) {
      return false;
    }
    return isExact()
        ? SturmSequence.signAt(common, low) == 0
        : SturmSequence.signAt(common, low) * SturmSequence.signAt(common, high) < 0;
  }

  /** Compares the root with a rational number. */
  public int compareTo(Rational number) {
    return signOf(Polynomial.X.minus(Polynomial.constant(number)));
  }

  /** Compares two roots by size; roots of different polynomials may be equal. */
  @Override
  public int compareTo(IsolatedRoot other) {
    if (isRootOf(other.polynomial) && isEqualTo(other)) {
      return 0;
    }
    IsolatedRoot one = this;
    IsolatedRoot two = other;
    while (true) {
      if (one.high.compareTo(two.low) <= 0) {
        return -1;
      }
      if (two.high.compareTo(one.low) <= 0) {
        return 1;
      }
      one = one.halved();
      two = two.halved();
    }
  }

  /** For a root of both polynomials: whether it is the one in the other's interval. */
  private boolean isEqualTo(IsolatedRoot other) {
    if (isExact()) {
      return other.isExact()
          ? low.equals(other.low)
          : other.low.compareTo(low) < 0 && low.compareTo(other.high) < 0;
    }
    return compareTo(other.low) >= 0 && compareTo(other.high) <= 0;
  }
}
