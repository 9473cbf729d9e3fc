package rootwright.algebra.symmetric;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;

/**
 * A partition: whole numbers above zero in descending order, its parts. It names an orbit of
 * monomials under renaming the variables: 3.1.1 is the orbit of x³yz.
 *
 * <p>Ordered lexicographically by parts; an absent part counts as zero.
 */
public final class Partition implements Comparable<Partition> {

  /** The partition without parts, of weight zero. */
  public static final Partition EMPTY = new Partition(new int[0]);

  private final int[] parts;

  private Partition(int[] descending) {
    parts = descending;
  }

  /**
   * The partition with these parts, in any order; zeros are dropped.
   *
   * @throws IllegalArgumentException if a part is negative
   */
  public static Partition of(int... parts) {
    int[] sorted = parts.clone();
    for (int k = 1; k < sorted.length; k++) {
      int part = sorted[k];
      int place = k;
      while (place > 0 && sorted[place - 1] < part) {
        sorted[place] = sorted[place - 1];
        place--;
      }
      sorted[place] = part;
    }
    int length = sorted.length;
    if (length > 0 && sorted[length - 1] < 0) {
      throw new IllegalArgumentException("negative part in " + Arrays.toString(parts));
    }
    while (length > 0 && sorted[length - 1] == 0) {
      length--;
    }
    return length == 0 ? EMPTY : new Partition(Arrays.copyOf(sorted, length));
  }

  /** The partition of k into ones, {@code 1.1.….1}: the orbit of e_k. */
  public static Partition column(int k) {
    int[] ones = new int[k];
    Arrays.fill(ones, 1);
    return of(ones);
  }

  /**
   * Reads what {@link #toString()} writes.
   *
   * @throws NumberFormatException if the text is not a row of whole numbers with dots between
   */
  public static Partition parse(String text) {
    return of(Arrays.stream(text.split("\\.", -1)).mapToInt(Integer::parseInt).toArray());
  }

  /**
   * All partitions of a weight into at most so many parts, lexicographically descending.
   *
   * @throws IllegalArgumentException if the weight or the number of parts is negative
   */
  public static List<Partition> all(int weight, int mostParts) {
    if (weight < 0 || mostParts < 0) {
      throw new IllegalArgumentException(
          "no partitions of %d into at most %d parts".formatted(weight, mostParts));
    }
    List<Partition> all = new ArrayList<>();
    collect(all, new int[mostParts], 0, weight, weight);
    return List.copyOf(all);
  }

  /**
   * How many partitions {@link #all} would list: the number of terms of p_k in e_1, …, e_n for
   * weight k and n parts, and a bound for the size of every form of that weight. O(weight·parts).
   *
   * @throws IllegalArgumentException if the weight or the number of parts is negative
   */
  public static BigInteger count(int weight, int mostParts) {
    if (weight < 0 || mostParts < 0) {
      throw new IllegalArgumentException(
          "no partitions of %d into at most %d parts".formatted(weight, mostParts));
    }
    // At most n parts: as many as with parts not above n (conjugates).
    BigInteger[] ways = new BigInteger[weight + 1];
    Arrays.fill(ways, BigInteger.ZERO);
    ways[0] = BigInteger.ONE;
    for (int part = 1; part <= mostParts; part++) {
      for (int sum = part; sum <= weight; sum++) {
        ways[sum] = ways[sum].add(ways[sum - part]);
      }
    }
    return ways[weight];
  }

  private static void collect(List<Partition> all, int[] parts, int place, int left, int largest) {
    if (left == 0) {
      all.add(of(Arrays.copyOf(parts, place)));
      return;
    }
    int places = parts.length - place;
    for (int part = Math.min(left, largest); (long) part * places >= left; part--) {
      parts[place] = part;
      collect(all, parts, place + 1, left - part, part);
    }
  }

  /** The parts, descending. */
  public List<Integer> parts() {
    return Arrays.stream(parts).boxed().toList();
  }

  /** The part with this number, counted from 0; zero beyond the last. */
  public int part(int place) {
    return place < parts.length ? parts[place] : 0;
  }

  /** The number of parts. */
  public int length() {
    return parts.length;
  }

  /** The sum of the parts: the degree of the monomials. */
  public int weight() {
    int weight = 0;
    for (int part : parts) {
      weight += part;
    }
    return weight;
  }

  /** The partition of the columns: part k counts the parts of this one that are at least k. */
  public Partition conjugate() {
    int[] columns = new int[part(0)];
    for (int part : parts) {
      for (int column = 0; column < part; column++) {
        columns[column]++;
      }
    }
    return of(columns);
  }

  /**
   * The number of monomials in this orbit: n! over the factorials of the multiplicities, the
   * multiplicity of zero included; 0 if there are more parts than variables.
   */
  public BigInteger orbitSize(int variables) {
    if (parts.length > variables) {
      return BigInteger.ZERO;
    }
    BigInteger size = BigInteger.ONE;
    int run = 0;
    for (int k = 0; k < parts.length; k++) {
      run = k > 0 && parts[k] == parts[k - 1] ? run + 1 : 1;
      size = size.multiply(BigInteger.valueOf(variables - k)).divide(BigInteger.valueOf(run));
    }
    return size;
  }

  /** The parts as an array with zeros up to this length. */
  int[] padded(int length) {
    return Arrays.copyOf(parts, length);
  }

  @Override
  public int compareTo(Partition other) {
    int last = Math.max(parts.length, other.parts.length);
    for (int k = 0; k < last; k++) {
      int order = Integer.compare(part(k), other.part(k));
      if (order != 0) {
        return order;
      }
    }
    return 0;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Partition that && Arrays.equals(parts, that.parts);
  }

  @Override
  public int hashCode() {
    return Arrays.hashCode(parts);
  }

  /** {@code 3.1.1}, and {@code 0} for the empty partition. */
  @Override
  public String toString() {
    return parts.length == 0
        ? "0"
        : Arrays.stream(parts).mapToObj(Integer::toString).collect(Collectors.joining("."));
  }
}
