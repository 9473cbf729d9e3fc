package rootwright.desk.figure;

import java.util.List;

/**
 * The graph of a value that depends on a letter.
 *
 * @param letter the letter
 * @param value what depends on it, in plain notation
 * @param allowed points of the graph where what is given holds
 * @param barred points of the graph where it does not
 * @param levels values that matter, such as the least one that is reached
 */
public record GraphPicture(
    String letter, String value, List<Place> allowed, List<Place> barred, List<Double> levels)
    implements Picture {

  /** Keeps its own copies. */
  public GraphPicture {
    allowed = List.copyOf(allowed);
    barred = List.copyOf(barred);
    levels = List.copyOf(levels);
  }

  @Override
  public String kind() {
    return "graph";
  }
}
