package rootwright.desk.figure;

import java.util.List;

/**
 * Pairs of positive integers that fit a condition.
 *
 * @param names what the two numbers are called
 * @param pairs the pairs up to a bound, by their size
 * @param bound the bound
 */
public record LatticePicture(List<String> names, List<Place> pairs, int bound) implements Picture {

  /** Keeps its own copies. */
  public LatticePicture {
    names = List.copyOf(names);
    pairs = List.copyOf(pairs);
  }

  @Override
  public String kind() {
    return "lattice";
  }
}
