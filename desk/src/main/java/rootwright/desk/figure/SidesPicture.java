package rootwright.desk.figure;

import java.util.List;

/**
 * Both sides of an equation as graphs; its solutions are where they meet.
 *
 * @param unknown the unknown
 * @param left points of the left side
 * @param right points of the right side
 * @param meetings where they meet
 */
public record SidesPicture(
    String unknown, List<Place> left, List<Place> right, List<Place> meetings) implements Picture {

  /** Keeps its own copies. */
  public SidesPicture {
    left = List.copyOf(left);
    right = List.copyOf(right);
    meetings = List.copyOf(meetings);
  }

  @Override
  public String kind() {
    return "sides";
  }
}
