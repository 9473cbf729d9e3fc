package rootwright.desk.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rootwright.algebra.notation.Formula;
import rootwright.working.solve.Given;

/** Pictures of an equation by its two sides. */
final class Sides {

  private static final int SEARCHED = 8000;
  private static final double FAR = 40;
  private static final int SAMPLES = 240;

  private Sides() {}

  /** Both sides near where they meet; nothing if they are not seen to. */
  static Optional<Picture> of(Given given) {
    if (!(given.polynomial() instanceof Formula.Relation equation)
        || equation.sides().size() != 2) {
      return Optional.empty();
    }
    Formula left = equation.sides().get(0);
    Formula right = equation.sides().get(1);
    List<Place> meetings = meetings(left, right, given.unknown());
    if (meetings.isEmpty() || meetings.size() > 12) {
      return Optional.empty();
    }
    double first = meetings.get(0).x();
    double last = meetings.get(meetings.size() - 1).x();
    double room = Math.max(1.5, 0.5 * (last - first));
    return Optional.of(
        new SidesPicture(
            given.unknown(),
            sampled(left, given.unknown(), first - room, last + room),
            sampled(right, given.unknown(), first - room, last + room),
            meetings));
  }

  /** Where the difference changes its sign without a jump, or is nought. */
  private static List<Place> meetings(Formula left, Formula right, String unknown) {
    List<Place> found = new ArrayList<>();
    double step = 2 * FAR / SEARCHED;
    double before = Double.NaN;
    for (int k = 0; k <= SEARCHED; k++) {
      double x = -FAR + k * step;
      double now = Sampled.of(left, unknown, x) - Sampled.of(right, unknown, x);
      if (now == 0) {
        found.add(new Place(x, Sampled.of(right, unknown, x)));
      } else if (before * now < 0) {
        double at = halved(left, right, unknown, x - step, x);
        double rest = Sampled.of(left, unknown, at) - Sampled.of(right, unknown, at);
        if (Math.abs(rest) < Math.min(Math.abs(before), Math.abs(now)) + 1e-9) {
          found.add(new Place(at, Sampled.of(right, unknown, at)));
        }
      }
      before = now;
    }
    return found;
  }

  private static double halved(
      Formula left, Formula right, String unknown, double from, double to) {
    double low = from;
    double high = to;
    double atLow = Sampled.of(left, unknown, low) - Sampled.of(right, unknown, low);
    for (int turn = 0; turn < 60; turn++) {
      double middle = (low + high) / 2;
      double there = Sampled.of(left, unknown, middle) - Sampled.of(right, unknown, middle);
      if (atLow * there <= 0) {
        high = middle;
      } else {
        low = middle;
        atLow = there;
      }
    }
    return (low + high) / 2;
  }

  private static List<Place> sampled(Formula side, String unknown, double from, double to) {
    List<Place> places = new ArrayList<>();
    for (int k = 0; k <= SAMPLES; k++) {
      double x = from + k * (to - from) / SAMPLES;
      double y = Sampled.of(side, unknown, x);
      if (Double.isFinite(y)) {
        places.add(new Place(x, y));
      }
    }
    return places;
  }
}
