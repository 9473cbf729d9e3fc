package rootwright.working.recurrence;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rootwright.algebra.number.Rational;
import rootwright.algebra.stop.Stop;

/**
 * The remainders of a sequence of whole numbers.
 *
 * @param sequence coefficients and first members are whole
 * @param modulus at least 2
 */
record Residues(Recurrence sequence, BigInteger modulus) {

  /** The remainder of a member, by powers of x modulo the polynomial: O(d² log N) products. */
  BigInteger byPowers(BigInteger wanted) {
    Recurrence plain = sequence.homogeneous();
    int d = plain.order();
    BigInteger exponent = wanted.subtract(BigInteger.valueOf(plain.start()));
    BigInteger[] power = new BigInteger[d];
    Arrays.fill(power, BigInteger.ZERO);
    power[0] = BigInteger.ONE.mod(modulus);
    for (int bit = exponent.bitLength() - 1; bit >= 0; bit--) {
      power = times(plain, power, power);
      if (exponent.testBit(bit)) {
        power = shifted(plain, power);
      }
    }
    BigInteger value = BigInteger.ZERO;
    for (int k = 0; k < d; k++) {
      value = value.add(power[k].multiply(whole(plain.first().get(k))));
    }
    return value.mod(modulus);
  }

  /** The same by squaring the matrix that takes d neighbouring members to the next d. */
  BigInteger byMatrices(BigInteger wanted) {
    Recurrence plain = sequence.homogeneous();
    int d = plain.order();
    BigInteger[][] step = new BigInteger[d][d];
    BigInteger[][] power = new BigInteger[d][d];
    for (int row = 0; row < d; row++) {
      for (int column = 0; column < d; column++) {
        boolean last = row == d - 1;
        step[row][column] =
            last
                ? whole(plain.coefficients().get(d - 1 - column)).mod(modulus)
                : column == row + 1 ? BigInteger.ONE : BigInteger.ZERO;
        power[row][column] = row == column ? BigInteger.ONE.mod(modulus) : BigInteger.ZERO;
      }
    }
    BigInteger exponent = wanted.subtract(BigInteger.valueOf(plain.start()));
    for (int bit = 0; bit < exponent.bitLength(); bit++) {
      if (exponent.testBit(bit)) {
        power = times(power, step);
      }
      step = times(step, step);
    }
    BigInteger value = BigInteger.ZERO;
    for (int k = 0; k < d; k++) {
      value = value.add(power[0][k].multiply(whole(plain.first().get(k))));
    }
    return value.mod(modulus);
  }

  /** The remainders from the first member on. */
  List<BigInteger> table(int count) {
    List<BigInteger> table = new ArrayList<>();
    for (Rational member : sequence.first()) {
      table.add(whole(member).mod(modulus));
    }
    while (table.size() < count) {
      BigInteger next = whole(sequence.constant());
      for (int k = 0; k < sequence.order(); k++) {
        next =
            next.add(
                whole(sequence.coefficients().get(k)).multiply(table.get(table.size() - 1 - k)));
      }
      table.add(next.mod(modulus));
    }
    return List.copyOf(table.subList(0, count));
  }

  /**
   * Where the remainders begin to return, and after how many places.
   *
   * @param before how many come only once
   * @param length the least period
   */
  record Cycle(int before, int length) {}

  /** The cycle, if it is found within so many places. */
  Optional<Cycle> cycle(int most) {
    int d = sequence.order();
    List<BigInteger> window = new ArrayList<>(table(d));
    Map<List<BigInteger>, Integer> seen = new HashMap<>();
    for (int k = 0; k <= most; k++) {
      Stop.ifUnwanted();
      Integer earlier = seen.putIfAbsent(List.copyOf(window), k);
      if (earlier != null) {
        return Optional.of(new Cycle(earlier, k - earlier));
      }
      BigInteger next = whole(sequence.constant());
      for (int j = 0; j < d; j++) {
        next = next.add(whole(sequence.coefficients().get(j)).multiply(window.get(d - 1 - j)));
      }
      window.remove(0);
      window.add(next.mod(modulus));
    }
    return Optional.empty();
  }

  private BigInteger[] times(Recurrence plain, BigInteger[] left, BigInteger[] right) {
    int d = plain.order();
    BigInteger[] product = new BigInteger[2 * d - 1];
    Arrays.fill(product, BigInteger.ZERO);
    for (int i = 0; i < d; i++) {
      for (int j = 0; j < d; j++) {
        product[i + j] = product[i + j].add(left[i].multiply(right[j])).mod(modulus);
      }
    }
    for (int top = 2 * d - 2; top >= d; top--) {
      for (int k = 0; k < d; k++) {
        int at = top - 1 - k;
        product[at] =
            product[at].add(product[top].multiply(whole(plain.coefficients().get(k)))).mod(modulus);
      }
    }
    return Arrays.copyOf(product, d);
  }

  private BigInteger[] shifted(Recurrence plain, BigInteger[] element) {
    int d = plain.order();
    BigInteger[] shifted = new BigInteger[d];
    for (int k = 0; k < d; k++) {
      BigInteger lower = k == 0 ? BigInteger.ZERO : element[k - 1];
      BigInteger carried = element[d - 1].multiply(whole(plain.coefficients().get(d - 1 - k)));
      shifted[k] = lower.add(carried).mod(modulus);
    }
    return shifted;
  }

  private BigInteger[][] times(BigInteger[][] left, BigInteger[][] right) {
    int d = left.length;
    BigInteger[][] product = new BigInteger[d][d];
    for (int i = 0; i < d; i++) {
      for (int j = 0; j < d; j++) {
        BigInteger sum = BigInteger.ZERO;
        for (int k = 0; k < d; k++) {
          sum = sum.add(left[i][k].multiply(right[k][j]));
        }
        product[i][j] = sum.mod(modulus);
      }
    }
    return product;
  }

  private static BigInteger whole(Rational number) {
    if (!number.isInteger()) {
      throw new IllegalArgumentException("not whole: " + number);
    }
    return number.numerator();
  }
}
