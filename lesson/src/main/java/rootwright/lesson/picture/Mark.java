package rootwright.lesson.picture;

import java.util.List;
import rootwright.press.formula.Drawing;
import rootwright.press.pdf.Typeface;

/** Something drawn on a slide; lengths are pixels of a slide 1920 wide. */
public sealed interface Mark {

  /** Letters on a baseline. */
  record Letters(String text, double x, double baseline, double size, Typeface.Cut cut, Ink ink)
      implements Mark {}

  /** A formula with its upper left corner here. */
  record Outline(Drawing drawing, double x, double y, Ink ink) implements Mark {}

  /** A line through points. */
  record Stroke(List<Point> points, double width, Ink ink) implements Mark {
    public Stroke {
      points = List.copyOf(points);
    }

    /** A straight line. */
    public static Stroke line(double x1, double y1, double x2, double y2, double width, Ink ink) {
      return new Stroke(List.of(new Point(x1, y1), new Point(x2, y2)), width, ink);
    }
  }

  /** A disc, filled or open. */
  record Disc(double x, double y, double radius, Fill fill, Ink ink) implements Mark {}

  /** A rectangle, filled or open. */
  record Box(double x, double y, double width, double height, Fill fill, Ink ink) implements Mark {}

  /** Whether a shape is filled. */
  enum Fill {
    FULL,
    OPEN
  }

  /** A point. */
  record Point(double x, double y) {}
}
