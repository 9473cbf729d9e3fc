package rootwright.lesson.picture;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.Map;
import java.util.StringTokenizer;
import java.util.concurrent.ConcurrentHashMap;
import rootwright.press.pdf.Typeface;

/** Paints pictures in pixels. */
public final class Painter {

  private static final Map<String, Path2D> PATHS = new ConcurrentHashMap<>();

  private Painter() {}

  /** The picture with everything that it shows. */
  public static BufferedImage paint(Picture picture) {
    BufferedImage image =
        new BufferedImage(Picture.WIDTH, Picture.HEIGHT, BufferedImage.TYPE_INT_RGB);
    Graphics2D onto = image.createGraphics();
    onto.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    onto.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    onto.setRenderingHint(
        RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
    onto.setColor(colour(Ink.PAPER));
    onto.fillRect(0, 0, Picture.WIDTH, Picture.HEIGHT);
    picture.layers().forEach(layer -> layer.marks().forEach(mark -> paint(mark, onto)));
    onto.dispose();
    return image;
  }

  private static void paint(Mark mark, Graphics2D onto) {
    if (mark instanceof Mark.Letters letters) {
      onto.setColor(colour(letters.ink()));
      onto.setFont(Typeface.SERIF.font(letters.cut()).deriveFont((float) letters.size()));
      onto.fill(
          onto.getFont()
              .createGlyphVector(onto.getFontRenderContext(), letters.text())
              .getOutline((float) letters.x(), (float) letters.baseline()));
    } else if (mark instanceof Mark.Outline outline) {
      onto.setColor(colour(outline.ink()));
      Path2D path = PATHS.computeIfAbsent(outline.drawing().path(), Painter::path);
      onto.fill(
          AffineTransform.getTranslateInstance(outline.x(), outline.y())
              .createTransformedShape(path));
    } else if (mark instanceof Mark.Stroke stroke) {
      onto.setColor(colour(stroke.ink()));
      onto.setStroke(round(stroke.width()));
      Path2D path = new Path2D.Double();
      for (Mark.Point point : stroke.points()) {
        if (path.getCurrentPoint() == null) {
          path.moveTo(point.x(), point.y());
        } else {
          path.lineTo(point.x(), point.y());
        }
      }
      onto.draw(path);
    } else if (mark instanceof Mark.Disc disc) {
      shape(
          new Ellipse2D.Double(
              disc.x() - disc.radius(),
              disc.y() - disc.radius(),
              2 * disc.radius(),
              2 * disc.radius()),
          disc.fill(),
          disc.ink(),
          onto);
    } else if (mark instanceof Mark.Box box) {
      shape(
          new Rectangle2D.Double(box.x(), box.y(), box.width(), box.height()),
          box.fill(),
          box.ink(),
          onto);
    }
  }

  private static void shape(Shape shape, Mark.Fill fill, Ink ink, Graphics2D onto) {
    if (fill == Mark.Fill.FULL || shape instanceof Ellipse2D) {
      onto.setColor(colour(fill == Mark.Fill.FULL ? ink : Ink.PAPER));
      onto.fill(shape);
    }
    onto.setColor(colour(ink));
    onto.setStroke(round(4));
    onto.draw(shape);
  }

  private static BasicStroke round(double width) {
    return new BasicStroke((float) width, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND);
  }

  private static Color colour(Ink ink) {
    return Color.decode(ink.colour());
  }

  /** Reads the path of a formula: absolute M, L, Q, C and Z. */
  private static Path2D path(String text) {
    Path2D path = new Path2D.Double();
    StringTokenizer tokens = new StringTokenizer(text, "MLQCZ ", true);
    double[] at = new double[6];
    int filled = 0;
    char command = 'M';
    while (tokens.hasMoreTokens()) {
      String token = tokens.nextToken();
      if (token.equals(" ")) {
        continue;
      }
      if ("MLQCZ".contains(token)) {
        command = token.charAt(0);
        filled = 0;
        if (command == 'Z') {
          path.closePath();
        }
        continue;
      }
      at[filled++] = Double.parseDouble(token);
      if (filled == wanted(command)) {
        append(path, command, at);
        filled = 0;
      }
    }
    return path;
  }

  private static int wanted(char command) {
    return switch (command) {
      case 'Q' -> 4;
      case 'C' -> 6;
      default -> 2;
    };
  }

  private static void append(Path2D path, char command, double[] at) {
    switch (command) {
      case 'M' -> path.moveTo(at[0], at[1]);
      case 'L' -> path.lineTo(at[0], at[1]);
      case 'Q' -> path.quadTo(at[0], at[1], at[2], at[3]);
      default -> path.curveTo(at[0], at[1], at[2], at[3], at[4], at[5]);
    }
  }
}
