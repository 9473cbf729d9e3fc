package rootwright.composing.scan.filter;

import java.util.Arrays;
import rootwright.composing.scan.candidate.Row;
import rootwright.composing.scan.candidate.Survivors;

/**
 * Finds the candidates of a row with a rational root, not by testing them but by walking through
 * the possible roots: once the other coefficients are fixed, a root p/q fixes the constant term,
 *
 * <p>a₀ = −p·(a_n p^{n−1} + a_{n−1} p^{n−2} q + … + a₁ q^{n−1}) / qⁿ,
 *
 * <p>with q dividing a_n and, unless p = 0, p dividing a₀, so that |p| is at most the greatest |a₀|
 * of the row and, by Cauchy's bound, at most q·(1 + max |a_k / a_n|).
 */
final class RationalRootSieve {

  /** A row is sieved if that takes at most this many trials a candidate. */
  private static final long TRIALS_PER_CANDIDATE = 32;

  private static final long LIMIT = 1L << 62;

  private long lead;
  private long[] divisors = {};
  private long[] weighted = {};

  /** Whether sieving this row is exact in 64 bits and cheaper than testing its candidates. */
  boolean suits(Row row) {
    long size = row.largestConstant();
    for (int power = 1; power <= row.degree(); power++) {
      size = Math.max(size, Math.abs(row.coefficient(power)));
    }
    long leadSize = Math.abs(row.lead());
    long farthest = Math.min(row.largestConstant(), leadSize + size);
    if (leadSize > 1 << 20 || farthest > TRIALS_PER_CANDIDATE * row.length() + 64) {
      return false;
    }
    // |p|, q <= reach bounds every product below by (n + 1)·size·reach^n.
    long reach = Math.max(farthest, leadSize);
    long bound = row.degree() + 1L;
    for (int power = 0; power <= row.degree(); power++) {
      long factor = power == 0 ? size : reach;
      if (factor != 0 && bound > LIMIT / factor) {
        return false;
      }
      bound *= factor;
    }
    return true;
  }

  /** Takes out the candidates with a rational root. The row must {@linkplain #suits suit}. */
  void screen(Row row, Survivors alive) {
    if (lead != row.lead()) {
      lead = row.lead();
      divisors = divisorsOf(Math.abs(lead));
    }
    removeConstant(row, alive, 0);
    for (long q : divisors) {
      screen(row, alive, q);
    }
  }

  private void screen(Row row, Survivors alive, long q) {
    int degree = row.degree();
    if (weighted.length != degree) {
      weighted = new long[degree];
    }
    long power = 1;
    long size = row.largestConstant();
    for (int k = 1; k <= degree; k++) {
      size = Math.max(size, Math.abs(row.coefficient(k)));
    }
    // weighted[k] = a_{k+1}·q^{n-1-k}
    for (int k = degree - 1; k >= 0; k--) {
      weighted[k] = row.coefficient(k + 1) * power;
      power *= q;
    }
    long whole = power;
    long largest = row.largestConstant();
    long farthest = Math.min(largest, q + size * q / Math.abs(row.lead()));
    long limit = largest * whole;
    for (long p = 1; p <= farthest; p++) {
      long plus = 0;
      long minus = 0;
      for (int k = degree - 1; k >= 0; k--) {
        plus = plus * p + weighted[k];
        minus = weighted[k] - minus * p;
      }
      // Horner's rule at p and at -p.
      tryRoot(row, alive, -p * plus, whole, limit);
      tryRoot(row, alive, p * minus, whole, limit);
    }
  }

  private static void tryRoot(Row row, Survivors alive, long product, long whole, long limit) {
    if (product <= limit && -product <= limit && (whole == 1 || product % whole == 0)) {
      removeConstant(row, alive, product / whole);
    }
  }

  private static void removeConstant(Row row, Survivors alive, long constant) {
    long place = row.placeOf(constant);
    if (place >= 0 && place < row.length()) {
      alive.remove((int) place);
    }
  }

  private static long[] divisorsOf(long number) {
    long[] found = new long[64];
    int count = 0;
    for (long divisor = 1; divisor * divisor <= number; divisor++) {
      if (number % divisor == 0) {
        if (count + 2 > found.length) {
          found = Arrays.copyOf(found, 2 * count);
        }
        found[count++] = divisor;
        if (divisor * divisor != number) {
          found[count++] = number / divisor;
        }
      }
    }
    return Arrays.copyOf(found, count);
  }
}
