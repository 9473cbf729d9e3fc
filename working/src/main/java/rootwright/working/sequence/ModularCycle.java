package rootwright.working.sequence;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import rootwright.algebra.number.Rational;
import rootwright.algebra.stop.Stop;

/**
 * The remainders of whole power sums with whole recurrence: they return once n neighbours have
 * returned together.
 *
 * @param before how many come before the part that repeats
 * @param length after how many places they return
 * @param remainders those of one period, the first of the sequence if nothing comes before; at most
 *     {@value #LONGEST_SHOWN} of them
 */
record ModularCycle(long before, long length, List<BigInteger> remainders) {

  /** No period. */
  static final ModularCycle NONE = new ModularCycle(0, 0, List.of());

  private static final int LONGEST_SHOWN = 400;

  /** Found by Brent's way (1980): the state moves on, a mark jumps to it at powers of two. */
  static Optional<ModularCycle> of(SumSequence sequence, BigInteger modulus, long most) {
    State start = State.start(sequence, modulus);
    State mark = start;
    State state = start.next();
    long power = 1;
    long length = 1;
    long steps = 0;
    while (!state.equals(mark)) {
      if (steps++ > most + start.values().length * 4L) {
        return Optional.empty();
      }
      if (length == power) {
        mark = state;
        power *= 2;
        length = 0;
      }
      state = state.next();
      length++;
    }
    State ahead = start;
    for (long k = 0; k < length; k++) {
      ahead = ahead.next();
    }
    State behind = start;
    long before = 0;
    while (!behind.equals(ahead)) {
      behind = behind.next();
      ahead = ahead.next();
      before++;
    }
    List<BigInteger> remainders = new ArrayList<>();
    for (long k = 0; k < Math.min(length, LONGEST_SHOWN); k++) {
      remainders.add(BigInteger.valueOf(behind.values()[0]));
      behind = behind.next();
    }
    return Optional.of(new ModularCycle(before, length, List.copyOf(remainders)));
  }

  /** n neighbours, and the factors of the recurrence, modulo m; never changed, never given out. */
  @SuppressWarnings("ArrayRecordComponent")
  private record State(long[] values, long[] factors, long modulus) {

    static State start(SumSequence sequence, BigInteger modulus) {
      int n = sequence.degree();
      long m = modulus.longValueExact();
      List<Rational> sums = sequence.upTo(Math.max(0, n - 1));
      long[] values = new long[n];
      long[] factors = new long[n];
      for (int k = 0; k < n; k++) {
        values[k] = sums.get(k).numerator().mod(modulus).longValueExact();
        factors[k] = sequence.factor(n - k).numerator().mod(modulus).longValueExact();
      }
      return new State(values, factors, m);
    }

    State next() {
      Stop.ifUnwanted();
      long[] moved = new long[values.length];
      long sum = 0;
      for (int k = 0; k < values.length; k++) {
        sum = (sum + factors[k] * values[k]) % modulus;
        if (k > 0) {
          moved[k - 1] = values[k];
        }
      }
      moved[values.length - 1] = sum;
      return new State(moved, factors, modulus);
    }

    @Override
    public boolean equals(Object other) {
      return other instanceof State state && Arrays.equals(values, state.values);
    }

    @Override
    public int hashCode() {
      return Arrays.hashCode(values);
    }
  }
}
