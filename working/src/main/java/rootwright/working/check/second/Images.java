package rootwright.working.check.second;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import rootwright.algebra.enclosure.ComplexBall;
import rootwright.algebra.enclosure.Dyadic;
import rootwright.algebra.enclosure.RealBall;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.number.Rational;
import rootwright.algebra.stop.Stop;
import rootwright.working.step.Setting;

/**
 * The renamings of the roots that give distinct images of a formula, one for each image.
 *
 * <p>Two images are taken for the same when they agree to many digits at one random point of large
 * whole numbers; a coincidence there is less likely than a failing machine, and could only make
 * this check refuse what is right.
 */
final class Images {

  /** Most renamings that are gone through: all of eight roots. */
  private static final int MOST = 40_320;

  private static final long SEED = 0x526F6F74L;

  private static final int BITS = 400;

  /** Binary places to which images are compared; rounding errors stay far below the last. */
  private static final int PLACES = 200;

  /** The points for degrees that are met every day. */
  private static final List<ComplexBall> POINTS =
      IntStream.range(0, 8).mapToObj(Images::nearTheUnitCircle).toList();

  private Images() {}

  /** Each array says which root every name stands for, as {@link Labelling#permuted} takes it. */
  static List<int[]> of(Formula body, Setting setting) {
    int n = setting.polynomial().degree();
    List<Integer> occurring = new ArrayList<>();
    for (int k = 0; k < setting.roots().size(); k++) {
      if (occurs(setting.roots().get(k), body, setting)) {
        occurring.add(k);
      }
    }
    List<int[]> injections = injections(occurring, n);
    if (occurring.isEmpty()) {
      return injections;
    }
    SplittableRandom random = new SplittableRandom(SEED);
    List<ComplexBall> point = new ArrayList<>();
    for (int k = 0; k < n; k++) {
      point.add(k < POINTS.size() ? POINTS.get(k) : nearTheUnitCircle(k));
    }
    Map<String, Rational> letters = new HashMap<>();
    for (String letter : setting.free()) {
      letters.put(letter, Rational.of(random.nextLong(1L << 40, 1L << 41), 1L << 40));
    }
    Map<Formula, ComplexBall> nameless = new HashMap<>();
    Map<List<Dyadic>, int[]> byValue = new LinkedHashMap<>();
    for (int[] injection : injections) {
      Stop.ifUnwanted();
      if (occurring.size() == 1 && byValue.size() == 2) {
        // A function of one root that is not constant has another image for every root.
        return injections;
      }
      ComplexBall value =
          new BallEvaluation(
                  setting, new Labelling(point).permuted(injection), letters, BITS, nameless)
              .of(body);
      byValue.putIfAbsent(fingerprint(value), injection);
    }
    return List.copyOf(byValue.values());
  }

  /**
   * A point whose powers neither grow nor shrink, so that r¹⁰⁰/(r¹⁰⁰ + 3) and s¹⁰⁰/(s¹⁰⁰ + 3) stay
   * far apart; not on the circle, where r + 1/r has no imaginary part to speak of.
   */
  private static ComplexBall nearTheUnitCircle(int number) {
    SplittableRandom random = new SplittableRandom(SEED + number);
    Rational t = Rational.of(random.nextLong(1L << 40), 1L << 40);
    Rational distance = Rational.of((1L << 60) + random.nextLong(1L << 40), 1L << 60);
    Rational scale = distance.over(Rational.ONE.plus(t.times(t)));
    return ComplexBall.of(
        RealBall.of(Rational.ONE.minus(t.times(t)).times(scale), BITS),
        RealBall.of(t.times(2).times(scale), BITS));
  }

  /** To the nearest, so that values such as 2 or 0 do not lie where the rounding jumps. */
  private static List<Dyadic> fingerprint(ComplexBall value) {
    return List.of(rounded(value.realCentre()), rounded(value.imaginaryCentre()));
  }

  private static Dyadic rounded(Dyadic number) {
    return number.plus(Dyadic.powerOfTwo(-PLACES - 1)).roundedTo(-PLACES, Dyadic.Rounding.FLOOR);
  }

  private static boolean occurs(String root, Formula formula, Setting setting) {
    return formula.contains(
        part ->
            part instanceof Formula.Name name
                && (name.spelling().equals(root)
                    || (setting.definitions().containsKey(name.spelling())
                        && occurs(root, setting.definitions().get(name.spelling()), setting))));
  }

  private static List<int[]> injections(List<Integer> occurring, int n) {
    List<int[]> found = new ArrayList<>();
    int[] identity = new int[n];
    for (int k = 0; k < n; k++) {
      identity[k] = k;
    }
    extend(occurring, 0, identity, new boolean[n], found);
    return found;
  }

  private static void extend(
      List<Integer> occurring, int next, int[] chosen, boolean[] used, List<int[]> found) {
    if (found.size() > MOST) {
      throw new Unbounded("there are more than " + MOST + " ways to choose the roots");
    }
    if (next == occurring.size()) {
      found.add(completed(occurring, chosen, used));
      return;
    }
    for (int root = 0; root < used.length; root++) {
      if (!used[root]) {
        used[root] = true;
        chosen[occurring.get(next)] = root;
        extend(occurring, next + 1, chosen, used, found);
        used[root] = false;
      }
    }
  }

  /** The names that do not occur get the roots that are left, so that every root is named once. */
  private static int[] completed(List<Integer> occurring, int[] chosen, boolean[] used) {
    int[] all = chosen.clone();
    int left = 0;
    for (int name = 0; name < all.length; name++) {
      if (!occurring.contains(name)) {
        while (used[left]) {
          left++;
        }
        all[name] = left++;
      }
    }
    return all;
  }
}
