package rootwright.composing.scan;

import java.util.Comparator;

/**
 * A candidate that passed, with its claim to be kept: first the lower rank in its row, then the
 * earlier position. No two hits of a scan have the same claim.
 *
 * @param rank how many candidates of the same row have a better claim
 * @param position where the walk met it
 * @param index its number in the box
 */
public record Hit(long rank, long position, long index) implements Comparable<Hit> {

  private static final Comparator<Hit> ORDER =
      Comparator.comparingLong(Hit::rank).thenComparingLong(Hit::position);

  @Override
  public int compareTo(Hit other) {
    return ORDER.compare(this, other);
  }
}
