package rootwright.composing.scan;

import rootwright.composing.scan.candidate.CoefficientBox;
import rootwright.composing.scan.candidate.Row;
import rootwright.composing.scan.candidate.Survivors;

/**
 * The rows in an order drawn from a seed, without a table: a Feistel network of four rounds
 * permutes the numbers below a power of four, and numbers beyond the box are sent through again
 * until they fall into it. (M. Luby and C. Rackoff 1988; cycle walking: J. Black and P. Rogaway
 * 2002. The mixing function is the one of SplittableRandom: G. Steele, D. Lea and C. Flood 2014,
 * constants from memory.)
 */
final class SeededWalk implements Walk {

  private static final long CANDIDATES_PER_TASK = 1 << 13;
  private static final int ROUNDS = 4;

  private final CoefficientBox box;
  private final long seed;
  private final int halfBits;
  private final long halfMask;

  SeededWalk(CoefficientBox box, long seed) {
    this.box = box;
    this.seed = seed;
    int bits = 64 - Long.numberOfLeadingZeros(box.rows() - 1);
    halfBits = Math.max(1, (bits + 1) / 2);
    halfMask = (1L << halfBits) - 1;
  }

  @Override
  public long rowsPerTask() {
    return Math.max(1, CANDIDATES_PER_TASK / box.rowLength());
  }

  @Override
  public long rowAt(long position) {
    long number = position;
    do {
      number = permute(number);
    } while (Long.compareUnsigned(number, box.rows()) >= 0);
    return number;
  }

  private long permute(long number) {
    long left = number >>> halfBits;
    long right = number & halfMask;
    for (int round = 0; round < ROUNDS; round++) {
      long next = left ^ (mix(seed + mix(right * ROUNDS + round)) & halfMask);
      left = right;
      right = next;
    }
    return left << halfBits | right;
  }

  private static long mix(long value) {
    long mixed = value + 0x9E3779B97F4A7C15L;
    mixed = (mixed ^ (mixed >>> 30)) * 0xBF58476D1CE4E5B9L;
    mixed = (mixed ^ (mixed >>> 27)) * 0x94D049BB133111EBL;
    return mixed ^ (mixed >>> 31);
  }

  /** A row is read from a place drawn from the seed on, so that no constant term is preferred. */
  @Override
  public void enter(long position, Row row, Survivors survivors, Tally tally) {
    int start = (int) Math.floorMod(mix(seed ^ mix(row.number())), (long) row.length());
    long rank = 0;
    for (int pass = 0; pass < 2; pass++) {
      int end = pass == 0 ? row.length() : start;
      for (int place = survivors.next(pass == 0 ? start : 0);
          place >= 0 && place < end;
          place = survivors.next(place + 1)) {
        if (!tally.enter(new Hit(rank, position, row.index(place)))) {
          return;
        }
        rank++;
      }
    }
  }

  @Override
  public boolean isSettled(Tally tally) {
    return tally.isFullOfFirsts();
  }
}
