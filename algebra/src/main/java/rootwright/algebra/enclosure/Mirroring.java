package rootwright.algebra.enclosure;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Makes guesses at the roots of a real polynomial symmetric to the real axis: each point is moved
 * onto the axis or paired with another and the two made mirror images. Only the upper point of a
 * pair is kept.
 *
 * <p>Nothing is proved here. The symmetry is what later lets isolated discs prove that a root is
 * real or not.
 *
 * @param points those on the axis and the upper ones of the pairs
 * @param sources for each point the places of the one or two guesses it was made of
 */
record Mirroring(List<Point> points, List<List<Integer>> sources) {

  static Mirroring of(List<Point> guesses) {
    List<Integer> open =
        new ArrayList<>(
            IntStream.range(0, guesses.size())
                .boxed()
                .sorted(Comparator.comparing((Integer i) -> height(guesses.get(i))).reversed())
                .toList());
    List<Point> points = new ArrayList<>();
    List<List<Integer>> sources = new ArrayList<>();
    while (!open.isEmpty()) {
      int first = open.remove(0);
      Point point = guesses.get(first);
      int partner = nearest(guesses, open, point);
      if (partner < 0) {
        points.add(new Point(point.x(), BigInteger.ZERO, point.exponent()));
        sources.add(List.of(first));
      } else {
        int second = open.remove(partner);
        Point sum = point.plus(guesses.get(second).conjugate());
        Point middle = new Point(sum.x(), sum.y(), sum.exponent() - 1);
        points.add(middle.y().signum() < 0 ? middle.conjugate() : middle);
        sources.add(List.of(first, second));
      }
    }
    return new Mirroring(points, sources);
  }

  private static Magnitude height(Point point) {
    return Magnitude.up(point.y(), point.exponent());
  }

  /** The place among the open ones nearest to the point's mirror image; −1 if that is itself. */
  private static int nearest(List<Point> guesses, List<Integer> open, Point point) {
    Point image = point.conjugate();
    Magnitude least = point.minus(image).squaredUp();
    int place = -1;
    for (int j = 0; j < open.size(); j++) {
      Point other = guesses.get(open.get(j));
      // Two points on the same side cannot be a pair, unless the guesses are very poor.
      if (other.y().signum() * point.y().signum() <= 0) {
        Magnitude distance = other.minus(image).squaredUp();
        if (distance.compareTo(least) < 0) {
          least = distance;
          place = j;
        }
      }
    }
    return place;
  }
}
