package rootwright.working.integers;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import rootwright.algebra.stop.Stop;

/** The divisors of a whole number, and the ways to write it as a product. */
final class Divisors {

  /** Largest number whose divisors are sought. */
  static final BigInteger LARGEST = BigInteger.valueOf(1_000_000_000L);

  private Divisors() {}

  /**
   * All divisors, negative ones too, ascending.
   *
   * @param number not zero, at most {@link #LARGEST} in absolute value
   */
  static List<BigInteger> of(BigInteger number) {
    long size = number.abs().longValueExact();
    TreeSet<BigInteger> found = new TreeSet<>();
    for (long d = 1; d * d <= size; d++) {
      Stop.ifUnwanted();
      if (size % d == 0) {
        for (long each : new long[] {d, size / d}) {
          found.add(BigInteger.valueOf(each));
          found.add(BigInteger.valueOf(-each));
        }
      }
    }
    return List.copyOf(found);
  }

  /** All ascending lists of this many whole numbers with this product. */
  static List<List<BigInteger>> products(BigInteger number, int factors) {
    List<List<BigInteger>> found = new ArrayList<>();
    collect(number, factors, of(number), List.of(), found);
    return found;
  }

  private static void collect(
      BigInteger left,
      int factors,
      List<BigInteger> divisors,
      List<BigInteger> chosen,
      List<List<BigInteger>> found) {
    if (factors == 1) {
      if (chosen.isEmpty() || chosen.get(chosen.size() - 1).compareTo(left) <= 0) {
        List<BigInteger> all = new ArrayList<>(chosen);
        all.add(left);
        found.add(all);
      }
      return;
    }
    for (BigInteger divisor : divisors) {
      boolean ascending = chosen.isEmpty() || chosen.get(chosen.size() - 1).compareTo(divisor) <= 0;
      if (ascending && left.mod(divisor.abs()).signum() == 0) {
        List<BigInteger> longer = new ArrayList<>(chosen);
        longer.add(divisor);
        collect(left.divide(divisor), factors - 1, divisors, longer, found);
      }
    }
  }
}
