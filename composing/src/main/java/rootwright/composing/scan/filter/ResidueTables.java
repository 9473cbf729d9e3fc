package rootwright.composing.scan.filter;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ConcurrentHashMap;

/** The {@link ResidueTable}s of one degree, for the smallest primes; asked one after the other. */
final class ResidueTables {

  private static final int LARGEST_TABLE = 1 << 18;
  private static final int MOST_TABLES = 7;
  private static final int[] PRIMES = {2, 3, 5, 7, 11, 13, 17};
  private static final ConcurrentHashMap<Integer, ResidueTables> BY_DEGREE =
      new ConcurrentHashMap<>();

  private final List<ResidueTable> tables;

  private ResidueTables(int degree) {
    tables = new ArrayList<>();
    for (int prime : PRIMES) {
      long size = 1;
      for (int k = 0; k < degree && size <= LARGEST_TABLE; k++) {
        size *= prime;
      }
      if (size <= LARGEST_TABLE && tables.size() < MOST_TABLES) {
        tables.add(new ResidueTable(prime, degree));
      }
    }
  }

  /** The tables of a degree, made once; none above degree 18. */
  static ResidueTables of(int degree) {
    return BY_DEGREE.computeIfAbsent(degree, ResidueTables::new);
  }

  /** The tables, the smallest prime first. */
  List<ResidueTable> all() {
    return tables;
  }

  /** Whether some prime proves that no root is repeated. */
  boolean proveSquarefree(long[] ascending) {
    for (ResidueTable table : tables) {
      if (!table.isSilentOn(ascending) && ResidueTable.isSquarefree(table.entry(ascending))) {
        return true;
      }
    }
    return false;
  }

  /** Whether the primes together prove that there is no factor of any of these degrees (bits). */
  boolean proveNoDivisor(long[] ascending, int degrees) {
    int open = degrees;
    for (ResidueTable table : tables) {
      if (!table.isSilentOn(ascending)) {
        open &= ResidueTable.divisorDegrees(table.entry(ascending));
        if (open == 0) {
          return true;
        }
      }
    }
    return open == 0;
  }
}
