package rootwright.working.agreement;

import java.math.BigInteger;
import org.hipparchus.fraction.BigFraction;
import org.hipparchus.fraction.BigFractionField;
import org.hipparchus.linear.Array2DRowFieldMatrix;
import org.hipparchus.linear.FieldLUDecomposition;
import org.hipparchus.linear.FieldMatrix;
import rootwright.algebra.number.Rational;

/**
 * The companion matrix of a polynomial in Hipparchus: its eigenvalues are the roots, so that a sum
 * over the roots is a trace and a product a determinant.
 */
record Companion(FieldMatrix<BigFraction> matrix) {

  /** Of the polynomial with these coefficients, the highest power first. */
  static Companion of(long... descending) {
    int n = descending.length - 1;
    FieldMatrix<BigFraction> matrix =
        new Array2DRowFieldMatrix<>(BigFractionField.getInstance(), n, n);
    for (int k = 0; k + 1 < n; k++) {
      matrix.setEntry(k + 1, k, BigFraction.ONE);
    }
    for (int k = 0; k < n; k++) {
      matrix.setEntry(
          k, n - 1, new BigFraction(-descending[n - k]).divide(new BigFraction(descending[0])));
    }
    return new Companion(matrix);
  }

  private int size() {
    return matrix.getRowDimension();
  }

  /** The image of the matrix under a polynomial, the highest power first. */
  Companion image(long... descending) {
    FieldMatrix<BigFraction> value = identity().scalarMultiply(BigFraction.ZERO);
    for (long coefficient : descending) {
      value = value.multiply(matrix).add(identity().scalarMultiply(new BigFraction(coefficient)));
    }
    return new Companion(value);
  }

  /** A power, also with a negative exponent. */
  Companion power(int exponent) {
    FieldMatrix<BigFraction> base = exponent < 0 ? inverse().matrix() : matrix;
    FieldMatrix<BigFraction> value = identity();
    for (int k = 0; k < Math.abs(exponent); k++) {
      value = value.multiply(base);
    }
    return new Companion(value);
  }

  Companion times(Companion other) {
    return new Companion(matrix.multiply(other.matrix()));
  }

  Companion inverse() {
    return new Companion(new FieldLUDecomposition<>(matrix).getSolver().getInverse());
  }

  /** The sum over the roots. */
  Rational trace() {
    return rational(matrix.getTrace());
  }

  /** The product over the roots. */
  Rational determinant() {
    return rational(new FieldLUDecomposition<>(matrix).getDeterminant());
  }

  private FieldMatrix<BigFraction> identity() {
    FieldMatrix<BigFraction> identity =
        new Array2DRowFieldMatrix<>(BigFractionField.getInstance(), size(), size());
    for (int k = 0; k < size(); k++) {
      identity.setEntry(k, k, BigFraction.ONE);
    }
    return identity;
  }

  private static Rational rational(BigFraction fraction) {
    BigInteger over = fraction.getNumerator();
    return Rational.of(over).over(Rational.of(fraction.getDenominator()));
  }
}
