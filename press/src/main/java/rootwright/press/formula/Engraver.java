package rootwright.press.formula;

import java.awt.Insets;
import java.awt.geom.PathIterator;
import java.util.LinkedHashMap;
import java.util.Map;
import org.scilab.forge.jlatexmath.ParseException;
import org.scilab.forge.jlatexmath.TeXConstants;
import org.scilab.forge.jlatexmath.TeXFormula;
import org.scilab.forge.jlatexmath.TeXIcon;
import rootwright.press.formula.internal.OutlineRecorder;

/**
 * Draws formulas given in LaTeX as outlines in Computer Modern.
 *
 * <p>This class alone knows the library that lays formulas out, so that it can be replaced. The
 * library keeps state between formulas, hence one formula at a time.
 */
public final class Engraver {

  private static final Object ONE_AT_A_TIME = new Object();

  /** Sheet, key and solutions have the same formulas; the latest drawings are kept. */
  private static final Map<Request, Drawing> LATEST =
      new LinkedHashMap<>(16, 0.75f, true) {
        @Override
        protected boolean removeEldestEntry(Map.Entry<Request, Drawing> eldest) {
          return size() > 2000;
        }
      };

  private record Request(String latex, Style style, double size) {}

  private Engraver() {}

  /**
   * The outline of a formula.
   *
   * @param latex mathematics without dollar signs
   * @param size of the surrounding text in points
   * @throws IllegalArgumentException if the LaTeX cannot be set
   */
  public static Drawing engrave(String latex, Style style, double size) {
    synchronized (ONE_AT_A_TIME) {
      return LATEST.computeIfAbsent(new Request(latex, style, size), Engraver::draw);
    }
  }

  private static Drawing draw(Request request) {
    try {
      TeXIcon icon =
          new TeXFormula(closed(request.latex())).new TeXIconBuilder()
              .setStyle(constant(request.style()))
              .setSize((float) request.size())
              .build();
      icon.setInsets(new Insets(0, 0, 0, 0), true);
      OutlineRecorder recorder = new OutlineRecorder();
      icon.paintIcon(null, recorder, 0, 0);
      return new Drawing(
          svg(recorder.outline().getPathIterator(null)),
          icon.getTrueIconWidth(),
          icon.getTrueIconHeight(),
          icon.getTrueIconDepth());
    } catch (ParseException unreadable) {
      throw new IllegalArgumentException(
          "cannot be set as a formula: " + request.latex(), unreadable);
    }
  }

  /**
   * The library puts room around a fraction as TeX's primitive does, unlike LaTeX, which sets it in
   * braces: {@code -\frac{1}{2}} would gape. This sets the braces.
   */
  private static String closed(String latex) {
    int fraction = latex.indexOf("\\frac{");
    if (fraction < 0) {
      return latex;
    }
    int over = fraction + "\\frac".length();
    int under = group(latex, over);
    int end = group(latex, under);
    return latex.substring(0, fraction)
        + "{\\frac"
        + closed(latex.substring(over, under))
        + closed(latex.substring(under, end))
        + "}"
        + closed(latex.substring(end));
  }

  /** The place after the group in braces that begins here, or this place if none does. */
  private static int group(String latex, int from) {
    int depth = 0;
    for (int k = from; k < latex.length(); k++) {
      char sign = latex.charAt(k);
      if (sign == '\\') {
        k++;
      } else if (sign == '{') {
        depth++;
      } else if (sign == '}' && --depth == 0) {
        return k + 1;
      } else if (depth == 0) {
        return from;
      }
    }
    return from;
  }

  private static int constant(Style style) {
    return switch (style) {
      case TEXT -> TeXConstants.STYLE_TEXT;
      case DISPLAY -> TeXConstants.STYLE_DISPLAY;
    };
  }

  /** The path with coordinates in thousandths of a point. */
  private static String svg(PathIterator path) {
    StringBuilder text = new StringBuilder();
    double[] points = new double[6];
    for (; !path.isDone(); path.next()) {
      int kind = path.currentSegment(points);
      text.append("MLQCZ".charAt(kind));
      for (int k = 0; k < coordinates(kind); k++) {
        if (k > 0) {
          text.append(' ');
        }
        decimal(points[k], text);
      }
    }
    return text.toString();
  }

  private static int coordinates(int kind) {
    return switch (kind) {
      case PathIterator.SEG_MOVETO, PathIterator.SEG_LINETO -> 2;
      case PathIterator.SEG_QUADTO -> 4;
      case PathIterator.SEG_CUBICTO -> 6;
      default -> 0;
    };
  }

  private static void decimal(double value, StringBuilder into) {
    long thousandths = Math.round(value * 1000);
    if (thousandths < 0) {
      into.append('-');
      thousandths = -thousandths;
    }
    into.append(thousandths / 1000);
    int rest = (int) (thousandths % 1000);
    if (rest != 0) {
      into.append('.').append((char) ('0' + rest / 100));
      if (rest % 100 != 0) {
        into.append((char) ('0' + rest / 10 % 10));
        if (rest % 10 != 0) {
          into.append((char) ('0' + rest % 10));
        }
      }
    }
  }
}
