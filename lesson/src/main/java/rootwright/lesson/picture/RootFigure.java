package rootwright.lesson.picture;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import rootwright.algebra.enclosure.EnclosedRoot;
import rootwright.algebra.enclosure.RootEnclosures;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;

/** The roots in the plane, and the curve. Drawn from certified roots; a drawing decides nothing. */
public final class RootFigure {

  /** The width and the height of a figure. */
  public static final double SIDE = 380;

  private static final int DIGITS = 15;
  private static final int STEPS = 240;

  private RootFigure() {}

  /** The roots as dots; a ring for each further time that a root occurs. */
  public static List<Mark> roots(Polynomial polynomial) {
    List<EnclosedRoot> roots = RootEnclosures.of(polynomial, DIGITS);
    double reach = reach(roots);
    List<Mark> marks = new ArrayList<>(axes(SIDE / 2));
    for (EnclosedRoot root : roots) {
      double x = SIDE / 2 + real(root) / reach * SIDE / 2;
      double y = SIDE / 2 - imaginary(root) / reach * SIDE / 2;
      for (int ring = root.multiplicity(); ring > 1; ring--) {
        marks.add(new Mark.Disc(x, y, 10 + 9 * (ring - 1), Mark.Fill.OPEN, Ink.FRESH));
      }
      marks.add(new Mark.Disc(x, y, 10, Mark.Fill.FULL, Ink.FRESH));
    }
    return marks;
  }

  /** The curve y = P(x) round its real roots, its height cut off where it leaves the figure. */
  public static List<Mark> curve(Polynomial polynomial) {
    List<EnclosedRoot> roots = RootEnclosures.of(polynomial, DIGITS);
    double reach = reach(roots);
    double[] values = new double[STEPS + 1];
    for (int k = 0; k <= STEPS; k++) {
      values[k] = at(polynomial, reach * (2.0 * k / STEPS - 1));
    }
    double tall = tall(values);
    List<Mark> marks = new ArrayList<>(axes(SIDE / 2));
    List<Mark.Point> run = new ArrayList<>();
    for (int k = 0; k <= STEPS; k++) {
      double y = SIDE / 2 - values[k] / tall * SIDE / 2;
      if (y >= 0 && y <= SIDE) {
        run.add(new Mark.Point(SIDE * k / STEPS, y));
      } else if (run.size() > 1) {
        marks.add(new Mark.Stroke(run, 5, Ink.INK));
        run = new ArrayList<>();
      } else {
        run = new ArrayList<>();
      }
    }
    if (run.size() > 1) {
      marks.add(new Mark.Stroke(run, 5, Ink.INK));
    }
    for (EnclosedRoot root : roots) {
      if (root.real()) {
        double x = SIDE / 2 + real(root) / reach * SIDE / 2;
        marks.add(new Mark.Disc(x, SIDE / 2, 10, Mark.Fill.FULL, Ink.FRESH));
      }
    }
    return marks;
  }

  private static List<Mark> axes(double middle) {
    return List.of(
        Mark.Stroke.line(0, middle, SIDE, middle, 3, Ink.QUIET),
        Mark.Stroke.line(middle, 0, middle, SIDE, 3, Ink.QUIET));
  }

  /** A third of the larger values may leave the figure, so that the middle is to be seen. */
  private static double tall(double[] values) {
    double[] sizes = Arrays.stream(values).map(Math::abs).sorted().toArray();
    return Math.max(1e-9, sizes[sizes.length * 2 / 3]);
  }

  private static double reach(List<EnclosedRoot> roots) {
    double reach = 1;
    for (EnclosedRoot root : roots) {
      reach = Math.max(reach, Math.max(Math.abs(real(root)), Math.abs(imaginary(root))));
    }
    return 1.25 * reach;
  }

  private static double at(Polynomial polynomial, double x) {
    double value = 0;
    for (int k = polynomial.degree(); k >= 0; k--) {
      value = value * x + decimal(polynomial.coefficient(k));
    }
    return value;
  }

  private static double real(EnclosedRoot root) {
    return decimal(root.disc().realCentre().toRational());
  }

  private static double imaginary(EnclosedRoot root) {
    return decimal(root.disc().imaginaryCentre().toRational());
  }

  private static double decimal(Rational value) {
    return new BigDecimal(value.numerator())
        .divide(new BigDecimal(value.denominator()), MathContext.DECIMAL64)
        .doubleValue();
  }
}
