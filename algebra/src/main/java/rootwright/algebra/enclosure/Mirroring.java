package rootwright.algebra.enclosure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Makes guesses at the roots of a real polynomial symmetric to the real axis: each point is moved
 * onto the axis or paired with another and the two made mirror images. Only the upper point of a
 * pair is kept.
 *
 * <p>Nothing is proved here. The symmetry is what later lets isolated discs prove that a root is
 * real or not.
 */
final class Mirroring {

  private Mirroring() {}

  /** Points on the axis and upper points of pairs; together they stand for as many as came in. */
  static List<Point> of(List<Point> guesses) {
    List<Point> open = new ArrayList<>(guesses);
    open.sort(Comparator.comparing(Mirroring::height).reversed());
    List<Point> kept = new ArrayList<>();
    while (!open.isEmpty()) {
      Point first = open.remove(0);
      int partner = nearest(open, first);
      if (partner < 0) {
        kept.add(new Point(first.x(), java.math.BigInteger.ZERO, first.exponent()));
      } else {
        Point mirrored = open.remove(partner).conjugate();
        Point sum = first.plus(mirrored);
        Point middle = new Point(sum.x(), sum.y(), sum.exponent() - 1);
        kept.add(middle.y().signum() < 0 ? middle.conjugate() : middle);
      }
    }
    return kept;
  }

  private static Magnitude height(Point point) {
    return Magnitude.up(point.y(), point.exponent());
  }

  /** The place of the point nearest to the mirror image of the first; −1 if that is itself. */
  private static int nearest(List<Point> open, Point first) {
    Point image = first.conjugate();
    Magnitude least = first.minus(image).squaredUp();
    int place = -1;
    for (int j = 0; j < open.size(); j++) {
      // Two points on the same side cannot be a pair, unless the guesses are very poor.
      if (open.get(j).y().signum() * first.y().signum() <= 0) {
        Magnitude distance = open.get(j).minus(image).squaredUp();
        if (distance.compareTo(least) < 0) {
          least = distance;
          place = j;
        }
      }
    }
    return place;
  }
}
