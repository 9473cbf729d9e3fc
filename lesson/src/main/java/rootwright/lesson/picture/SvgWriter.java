package rootwright.lesson.picture;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Collectors;
import rootwright.press.markup.Markup;

/**
 * Writes pictures as SVG 1.1. Letters are outlines, so that a slide looks the same everywhere; each
 * glyph is kept once and used where it stands. What a layer says is its label.
 */
public final class SvgWriter {

  /** How glyphs that occur often are kept. */
  public enum Glyphs {
    /** Once, and used where they stand. */
    SHARED,
    /** Where they stand, for readers that follow no reference. */
    INLINE
  }

  private final Map<String, String> glyphs = new LinkedHashMap<>();
  private final Glyphs kept;

  /** With the way to keep glyphs. */
  public SvgWriter(Glyphs kept) {
    this.kept = kept;
  }

  /** One picture as a file of its own. */
  public static String file(Picture picture) {
    return file(picture, Glyphs.SHARED);
  }

  /** One picture as a file of its own, glyphs kept in this way. */
  public static String file(Picture picture, Glyphs kept) {
    SvgWriter writer = new SvgWriter(kept);
    String body = writer.layers(picture);
    Markup into = new Markup();
    into.open(
        "svg",
        "xmlns",
        "http://www.w3.org/2000/svg",
        "xmlns:xlink",
        "http://www.w3.org/1999/xlink",
        "width",
        Integer.toString(Picture.WIDTH),
        "height",
        Integer.toString(Picture.HEIGHT),
        "viewBox",
        "0 0 %d %d".formatted(Picture.WIDTH, Picture.HEIGHT),
        "role",
        "img",
        "aria-label",
        picture.description());
    into.leaf("title", picture.title());
    into.raw(writer.definitions());
    into.raw(body);
    return into.close().finished() + "\n";
  }

  /** The glyphs used so far, to stand once before or after all pictures that use them. */
  public String definitions() {
    Markup into = new Markup();
    into.open("defs");
    glyphs.forEach((path, name) -> into.empty("path", "id", name, "d", path));
    return into.close().finished();
  }

  /** The layers of a picture, each a group with the reveal at which it appears. */
  public String layers(Picture picture) {
    Markup into = new Markup();
    into.empty(
        "rect",
        "width",
        Integer.toString(Picture.WIDTH),
        "height",
        Integer.toString(Picture.HEIGHT),
        "fill",
        Ink.PAPER.colour());
    for (Layer layer : picture.layers()) {
      if (layer.label().isEmpty()) {
        into.open("g", "data-from", Integer.toString(layer.from()), "aria-hidden", "true");
      } else {
        into.open(
            "g",
            "data-from",
            Integer.toString(layer.from()),
            "role",
            "img",
            "aria-label",
            layer.label());
      }
      layer.marks().forEach(mark -> mark(mark, into));
      into.close();
    }
    return into.finished();
  }

  private void mark(Mark mark, Markup into) {
    if (mark instanceof Mark.Letters letters) {
      letters(letters, into);
    } else if (mark instanceof Mark.Outline outline) {
      into.empty(
          "path",
          "transform",
          "translate(%s %s)".formatted(number(outline.x()), number(outline.y())),
          "fill",
          outline.ink().colour(),
          "d",
          outline.drawing().path());
    } else if (mark instanceof Mark.Stroke stroke) {
      into.empty(
          "polyline",
          "points",
          stroke.points().stream()
              .map(point -> number(point.x()) + "," + number(point.y()))
              .collect(Collectors.joining(" ")),
          "fill",
          "none",
          "stroke",
          stroke.ink().colour(),
          "stroke-width",
          number(stroke.width()),
          "stroke-linecap",
          "round",
          "stroke-linejoin",
          "round");
    } else if (mark instanceof Mark.Disc disc) {
      into.empty(
          "circle",
          "cx",
          number(disc.x()),
          "cy",
          number(disc.y()),
          "r",
          number(disc.radius()),
          "fill",
          disc.fill() == Mark.Fill.FULL ? disc.ink().colour() : Ink.PAPER.colour(),
          "stroke",
          disc.ink().colour(),
          "stroke-width",
          "4");
    } else if (mark instanceof Mark.Box box) {
      into.empty(
          "rect",
          "x",
          number(box.x()),
          "y",
          number(box.y()),
          "width",
          number(box.width()),
          "height",
          number(box.height()),
          "fill",
          box.fill() == Mark.Fill.FULL ? box.ink().colour() : "none",
          "stroke",
          box.ink().colour(),
          "stroke-width",
          "3");
    }
  }

  private void letters(Mark.Letters letters, Markup into) {
    into.open(
        "g",
        "transform",
        "translate(%s %s) scale(%s)"
            .formatted(
                number(letters.x()), number(letters.baseline()), number(letters.size() / 100)),
        "fill",
        letters.ink().colour());
    if (kept == Glyphs.INLINE) {
      into.empty("path", "d", GlyphPath.whole(letters.text(), letters.cut()));
    } else {
      for (GlyphPath.Placed glyph : GlyphPath.of(letters.text(), letters.cut())) {
        if (!glyph.path().isEmpty()) {
          String name = glyphs.computeIfAbsent(glyph.path(), path -> "g" + glyphs.size());
          into.empty("use", "xlink:href", "#" + name, "href", "#" + name, "x", number(glyph.x()));
        }
      }
    }
    into.close();
  }

  /** A number with at most two decimals. Drawings have very many, so no formatter is asked. */
  static String number(double value) {
    long hundredths = Math.round(value * 100);
    String sign = hundredths < 0 ? "-" : "";
    long whole = Math.abs(hundredths) / 100;
    long rest = Math.abs(hundredths) % 100;
    if (rest == 0) {
      return sign + whole;
    }
    String decimals = rest % 10 == 0 ? Long.toString(rest / 10) : (rest < 10 ? "0" : "") + rest;
    return sign + whole + "." + decimals;
  }
}
