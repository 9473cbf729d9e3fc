package rootwright.desk.figure;

import java.util.List;

/**
 * Points through which the graph of a polynomial goes.
 *
 * @param given the points that are given
 * @param asked the point that was asked for
 * @param name the polynomial
 */
public record PointsPicture(List<Place> given, Place asked, String name) implements Picture {

  /** Keeps its own copy. */
  public PointsPicture {
    given = List.copyOf(given);
  }

  @Override
  public String kind() {
    return "points";
  }
}
