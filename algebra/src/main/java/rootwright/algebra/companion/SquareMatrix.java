package rootwright.algebra.companion;

import java.math.BigInteger;
import java.util.Arrays;
import java.util.Optional;
import rootwright.algebra.number.Rational;

/** A square matrix of whole numbers, never changed after construction. */
final class SquareMatrix {

  private final BigInteger[][] entries;

  SquareMatrix(BigInteger[][] entries) {
    this.entries = entries;
  }

  static SquareMatrix multipleOfOne(BigInteger factor, int size) {
    BigInteger[][] entries = new BigInteger[size][size];
    for (int row = 0; row < size; row++) {
      Arrays.fill(entries[row], BigInteger.ZERO);
      entries[row][row] = factor;
    }
    return new SquareMatrix(entries);
  }

  static BigInteger trace(SquareMatrix matrix) {
    BigInteger sum = BigInteger.ZERO;
    for (int k = 0; k < matrix.entries.length; k++) {
      sum = sum.add(matrix.entries[k][k]);
    }
    return sum;
  }

  SquareMatrix plus(SquareMatrix other) {
    int size = entries.length;
    BigInteger[][] sum = new BigInteger[size][size];
    for (int row = 0; row < size; row++) {
      for (int column = 0; column < size; column++) {
        sum[row][column] = entries[row][column].add(other.entries[row][column]);
      }
    }
    return new SquareMatrix(sum);
  }

  SquareMatrix times(BigInteger factor) {
    return times(multipleOfOne(factor, entries.length));
  }

  SquareMatrix times(SquareMatrix other) {
    int size = entries.length;
    BigInteger[][] product = new BigInteger[size][size];
    for (int row = 0; row < size; row++) {
      for (int column = 0; column < size; column++) {
        BigInteger sum = BigInteger.ZERO;
        for (int k = 0; k < size; k++) {
          if (entries[row][k].signum() != 0 && other.entries[k][column].signum() != 0) {
            sum = sum.add(entries[row][k].multiply(other.entries[k][column]));
          }
        }
        product[row][column] = sum;
      }
    }
    return new SquareMatrix(product);
  }

  SquareMatrix modulo(BigInteger modulus) {
    int size = entries.length;
    BigInteger[][] reduced = new BigInteger[size][size];
    for (int row = 0; row < size; row++) {
      for (int column = 0; column < size; column++) {
        reduced[row][column] = entries[row][column].mod(modulus);
      }
    }
    return new SquareMatrix(reduced);
  }

  /** The power, by repeated squaring from the highest bit. */
  SquareMatrix power(BigInteger exponent) {
    SquareMatrix result = multipleOfOne(BigInteger.ONE, entries.length);
    for (int bit = exponent.bitLength() - 1; bit >= 0; bit--) {
      result = result.times(result);
      if (exponent.testBit(bit)) {
        result = result.times(this);
      }
    }
    return result;
  }

  /** The power with every entry from 0 to m − 1. */
  SquareMatrix powerModulo(BigInteger exponent, BigInteger modulus) {
    SquareMatrix result = multipleOfOne(BigInteger.ONE, entries.length);
    for (int bit = exponent.bitLength() - 1; bit >= 0; bit--) {
      result = result.times(result).modulo(modulus);
      if (exponent.testBit(bit)) {
        result = result.times(this).modulo(modulus);
      }
    }
    return result;
  }

  BigInteger determinant() {
    BigInteger[][] rows = copy(entries.length);
    return eliminate(rows);
  }

  /** The trace of A·M⁻¹ for this M; nothing if M has no inverse. */
  Optional<Rational> traceOfQuotient(SquareMatrix numerator) {
    int size = entries.length;
    // Solve M·X = A side by side; A and M commute, so the trace of M⁻¹·A is the one wanted.
    BigInteger[][] rows = copy(2 * size);
    for (int row = 0; row < size; row++) {
      System.arraycopy(numerator.entries[row], 0, rows[row], size, size);
    }
    if (eliminate(rows).signum() == 0) {
      return Optional.empty();
    }
    Rational trace = Rational.ZERO;
    for (int column = 0; column < size; column++) {
      Rational[] solution = new Rational[size];
      for (int row = size - 1; row >= column; row--) {
        Rational sum = Rational.of(rows[row][size + column]);
        for (int k = row + 1; k < size; k++) {
          sum = sum.minus(solution[k].times(Rational.of(rows[row][k])));
        }
        solution[row] = sum.over(Rational.of(rows[row][row]));
      }
      trace = trace.plus(solution[column]);
    }
    return Optional.of(trace);
  }

  private BigInteger[][] copy(int width) {
    BigInteger[][] rows = new BigInteger[entries.length][];
    Arrays.setAll(rows, row -> Arrays.copyOf(entries[row], width));
    return rows;
  }

  /**
   * Brings the rows to upper triangular form without fractions and returns the determinant of the
   * left square (Bareiss, Mathematics of Computation 22 (1968) 565–578).
   */
  private static BigInteger eliminate(BigInteger[][] rows) {
    int size = rows.length;
    BigInteger before = BigInteger.ONE;
    boolean negative = false;
    for (int step = 0; step < size; step++) {
      int pivot = step;
      while (pivot < size && rows[pivot][step].signum() == 0) {
        pivot++;
      }
      if (pivot == size) {
        return BigInteger.ZERO;
      }
      if (pivot != step) {
        BigInteger[] swap = rows[pivot];
        rows[pivot] = rows[step];
        rows[step] = swap;
        negative = !negative;
      }
      for (int row = step + 1; row < size; row++) {
        for (int column = step + 1; column < rows[row].length; column++) {
          rows[row][column] =
              rows[step][step]
                  .multiply(rows[row][column])
                  .subtract(rows[row][step].multiply(rows[step][column]))
                  .divide(before);
        }
        rows[row][step] = BigInteger.ZERO;
      }
      before = rows[step][step];
    }
    return negative ? before.negate() : before;
  }
}
