package rootwright.algebra.symmetric;

import java.math.BigInteger;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.symmetric.internal.DiscriminantMatrix;
import rootwright.algebra.symmetric.internal.PackedDiscriminant;

/**
 * The discriminant a_n^(2n−2)·∏ (r_i − r_j)² over the pairs i &lt; j of roots: zero exactly when a
 * root is repeated.
 */
public final class Discriminant {

  /** The greatest degree for {@link #universal}: there it has 5247 terms. */
  public static final int GREATEST_UNIVERSAL_DEGREE = 8;

  private Discriminant() {}

  /**
   * The product of the squared differences of n variables in e_1, …, e_n: the discriminant of the
   * general monic polynomial. It has 2, 5, 16, 59, 246, 1103, 5247 terms for n = 2, 3, ….
   *
   * @throws IllegalArgumentException if n is not 1 to {@value #GREATEST_UNIVERSAL_DEGREE}
   */
  public static ElementaryForm universal(int n) {
    if (n < 1 || n > GREATEST_UNIVERSAL_DEGREE) {
      throw new IllegalArgumentException(
          "no universal discriminant of degree %d: 1 to %d"
              .formatted(n, GREATEST_UNIVERSAL_DEGREE));
    }
    return n == 1
        ? ElementaryForm.of(1, MultivariatePolynomial.ONE)
        : ElementaryForm.packed(n, PackedDiscriminant.of(n), Rational.ONE);
  }

  /**
   * The discriminant of a polynomial, exactly; 1 for degree 1. O(n³) products of integers, by
   * fraction-free elimination (Bareiss, Mathematics of Computation 22, 1968).
   *
   * @throws IllegalArgumentException if the polynomial is constant
   */
  public static Rational of(Polynomial polynomial) {
    int degree = polynomial.degree();
    if (degree < 1) {
      throw new IllegalArgumentException("the constant " + polynomial + " has no discriminant");
    }
    BigInteger[][] matrix = new BigInteger[degree - 1][degree - 1];
    for (int row = 0; row < degree - 1; row++) {
      for (int column = 0; column < degree - 1; column++) {
        BigInteger sum = BigInteger.ZERO;
        for (DiscriminantMatrix.Product product : DiscriminantMatrix.entry(degree, row, column)) {
          sum =
              sum.add(
                  polynomial
                      .numerator(product.left())
                      .multiply(polynomial.numerator(product.right()))
                      .multiply(BigInteger.valueOf(product.factor())));
        }
        matrix[row][column] = sum;
      }
    }
    BigInteger scale = BigInteger.valueOf(degree).pow(Math.max(0, degree - 2));
    return new Rational(
        determinant(matrix).divide(scale), polynomial.denominator().pow(2 * degree - 2));
  }

  private static BigInteger determinant(BigInteger[][] matrix) {
    int size = matrix.length;
    BigInteger previous = BigInteger.ONE;
    boolean negative = false;
    for (int step = 0; step < size; step++) {
      int pivot = step;
      while (pivot < size && matrix[pivot][step].signum() == 0) {
        pivot++;
      }
      if (pivot == size) {
        return BigInteger.ZERO;
      }
      if (pivot != step) {
        BigInteger[] row = matrix[pivot];
        matrix[pivot] = matrix[step];
        matrix[step] = row;
        negative = !negative;
      }
      for (int row = step + 1; row < size; row++) {
        for (int column = step + 1; column < size; column++) {
          matrix[row][column] =
              matrix[row][column]
                  .multiply(matrix[step][step])
                  .subtract(matrix[row][step].multiply(matrix[step][column]))
                  .divide(previous);
        }
      }
      previous = matrix[step][step];
    }
    return negative ? previous.negate() : previous;
  }
}
