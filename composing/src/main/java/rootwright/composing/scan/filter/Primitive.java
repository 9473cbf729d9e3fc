package rootwright.composing.scan.filter;

import rootwright.composing.scan.candidate.Row;
import rootwright.composing.scan.candidate.Survivors;
import rootwright.composing.scan.candidate.Workspace;

/** The coefficients have no common divisor: of P, 2P, 3P, …, one is enough. */
public final class Primitive implements CandidateFilter {

  /** Common divisors up to this size are split into primes by trial. */
  private static final long SMALL = 1 << 16;

  @Override
  public String name() {
    return "primitive";
  }

  @Override
  public String explanation() {
    return "The coefficients have no common divisor.";
  }

  @Override
  public Stage stage() {
    return Stage.CONTENT;
  }

  @Override
  public boolean passes(long[] ascending) {
    long divisor = 0;
    for (long coefficient : ascending) {
      divisor = gcd(divisor, coefficient);
    }
    return divisor == 1;
  }

  @Override
  public RowTest rowTest(Workspace workspace) {
    return Primitive::screen;
  }

  private static void screen(Row row, Survivors alive) {
    long divisor = 0;
    for (int power = row.degree(); power > 0 && divisor != 1; power--) {
      divisor = gcd(divisor, row.coefficient(power));
    }
    if (divisor == 1) {
      return;
    }
    if (divisor > SMALL) {
      for (int place = alive.next(0); place >= 0; place = alive.next(place + 1)) {
        if (gcd(divisor, row.constant(place)) != 1) {
          alive.remove(place);
        }
      }
      return;
    }
    long rest = divisor;
    for (long prime = 2; prime * prime <= rest; prime++) {
      if (rest % prime == 0) {
        removeMultiples(row, alive, prime);
        while (rest % prime == 0) {
          rest /= prime;
        }
      }
    }
    if (rest > 1) {
      removeMultiples(row, alive, rest);
    }
  }

  private static void removeMultiples(Row row, Survivors alive, long divisor) {
    int first = (int) Math.floorMod(-row.firstConstant(), divisor);
    alive.removeEvery(first, divisor, row.length());
  }

  /** The greatest common divisor, not negative; of 0 and 0 it is 0. */
  static long gcd(long a, long b) {
    long left = Math.abs(a);
    long right = Math.abs(b);
    while (right != 0) {
      long rest = left % right;
      left = right;
      right = rest;
    }
    return left;
  }
}
