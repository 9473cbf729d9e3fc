package rootwright.lesson.picture;

import java.awt.Font;
import java.awt.font.FontRenderContext;
import java.awt.font.GlyphVector;
import java.awt.geom.PathIterator;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import rootwright.press.pdf.Typeface;

/** Letters as outlines, a hundred pixels high. */
final class GlyphPath {

  private static final FontRenderContext EXACT = new FontRenderContext(null, true, true);
  private static final Map<String, List<Placed>> KNOWN = new ConcurrentHashMap<>();

  private static final Map<String, String> WHOLE = new ConcurrentHashMap<>();

  private GlyphPath() {}

  /** A glyph with its distance from the beginning of the text; no path for a blank. */
  record Placed(String path, double x) {}

  static List<Placed> of(String text, Typeface.Cut cut) {
    return KNOWN.computeIfAbsent(cut + text, fresh -> outlined(text, cut));
  }

  /** The whole text as one outline. */
  static String whole(String text, Typeface.Cut cut) {
    return WHOLE.computeIfAbsent(
        cut + text,
        fresh ->
            path(
                Typeface.SERIF
                    .font(cut)
                    .deriveFont(100f)
                    .createGlyphVector(EXACT, text)
                    .getOutline()
                    .getPathIterator(null)));
  }

  private static List<Placed> outlined(String text, Typeface.Cut cut) {
    Font font = Typeface.SERIF.font(cut).deriveFont(100f);
    GlyphVector glyphs = font.createGlyphVector(EXACT, text);
    List<Placed> placed = new ArrayList<>();
    for (int k = 0; k < glyphs.getNumGlyphs(); k++) {
      double x = glyphs.getGlyphPosition(k).getX();
      placed.add(
          new Placed(path(glyphs.getGlyphOutline(k, (float) -x, 0).getPathIterator(null)), x));
    }
    return List.copyOf(placed);
  }

  private static String path(PathIterator path) {
    StringBuilder text = new StringBuilder();
    double[] points = new double[6];
    for (; !path.isDone(); path.next()) {
      int kind = path.currentSegment(points);
      text.append("MLQCZ".charAt(kind));
      int coordinates = new int[] {2, 2, 4, 6, 0}[kind];
      for (int k = 0; k < coordinates; k++) {
        text.append(k > 0 ? " " : "").append(SvgWriter.number(points[k]));
      }
    }
    return text.toString();
  }
}
