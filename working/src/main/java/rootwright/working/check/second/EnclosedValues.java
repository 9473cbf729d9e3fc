package rootwright.working.check.second;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import rootwright.algebra.enclosure.BallContainsZeroException;
import rootwright.algebra.enclosure.ComplexBall;
import rootwright.algebra.enclosure.Dyadic;
import rootwright.algebra.enclosure.EnclosedRoot;
import rootwright.algebra.enclosure.RootEnclosures;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.stop.Stop;
import rootwright.working.step.Setting;

/** Discs that hold the values of an expression with too many images to be told apart exactly. */
public final class EnclosedValues {

  /** Decimal digits to which the roots are enclosed. */
  private static final int DIGITS = 30;

  /** Most images that are all looked at, so that the real values are known. */
  private static final int MOST_SORTED = 2_000;

  /** Most values that are shown. */
  private static final int MOST_SHOWN = 24;

  private EnclosedValues() {}

  /**
   * A few of the values: the real ones ascending first, if there are not too many images to look at
   * all of them; otherwise those of the first ways to choose the roots. Empty if a denominator
   * cannot be told from zero or there are too many ways to choose the roots.
   */
  public static List<ComplexBall> of(Formula expression, Setting setting) {
    try {
      List<int[]> images = Images.of(expression, setting);
      boolean all = images.size() <= MOST_SORTED;
      List<ComplexBall> values =
          values(expression, setting, all ? images : images.subList(0, MOST_SHOWN));
      List<ComplexBall> shown = all ? realFirst(values) : values;
      return List.copyOf(shown.subList(0, Math.min(MOST_SHOWN, shown.size())));
    } catch (Unbounded | BallContainsZeroException unknown) {
      return List.of();
    }
  }

  private static List<ComplexBall> values(Formula expression, Setting setting, List<int[]> images) {
    List<ComplexBall> roots = new ArrayList<>();
    for (EnclosedRoot root : RootEnclosures.of(setting.polynomial(), DIGITS)) {
      for (int k = 0; k < root.multiplicity(); k++) {
        roots.add(root.disc());
      }
    }
    Labelling labelling = new Labelling(roots);
    Map<Formula, ComplexBall> nameless = new HashMap<>();
    List<ComplexBall> values = new ArrayList<>();
    for (int[] image : images) {
      Stop.ifUnwanted();
      values.add(
          new BallEvaluation(
                  setting, labelling.permuted(image), Map.of(), DIGITS * 10 / 3 + 32, nameless)
              .of(expression));
    }
    return values;
  }

  /**
   * The conjugate of a value is a value; if only discs that hold the value itself can hold its
   * conjugate, it is real, and its disc may be drawn to the real axis.
   */
  private static List<ComplexBall> realFirst(List<ComplexBall> values) {
    List<ComplexBall> real = new ArrayList<>();
    List<ComplexBall> others = new ArrayList<>();
    for (ComplexBall value : values) {
      if (value.meetsRealAxis()
          && values.stream().filter(other -> other.overlaps(value.conjugate())).count() == 1) {
        real.add(ComplexBall.of(value.real()));
      } else {
        others.add(value);
      }
    }
    Comparator<ComplexBall> byRealPart =
        Comparator.comparing(ComplexBall::realCentre, Dyadic::compareTo);
    real.sort(byRealPart);
    others.sort(byRealPart);
    real.addAll(others);
    return real;
  }
}
