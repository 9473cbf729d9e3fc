package rootwright.press.pdf;

import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.font.FontRenderContext;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.EnumMap;
import java.util.Map;
import rootwright.press.document.Layout;

/**
 * A family of type that is shipped with the program, and the measures of its letters. The serif
 * matches the formulas; large print is set without serifs.
 */
public enum Typeface {
  /** Matches the formulas. */
  SERIF("CMU Serif", "cmunrm", "cmunbx", "cmunti"),
  /** For large print. */
  SANS("CMU Sans Serif", "cmunss", "cmunsx", "cmunsi");

  /** One cut of the family. */
  public enum Cut {
    /** Upright. */
    PLAIN,
    /** Upright and bold. */
    BOLD,
    /** Slanted. */
    ITALIC
  }

  private static final FontRenderContext EXACT = new FontRenderContext(null, true, true);

  /** Where the typefaces lie among the resources. */
  static final String FOLDER = "/rootwright/press/fonts/";

  private final String family;
  private final Map<Cut, String> files;
  private final Map<Cut, Font> loaded = new EnumMap<>(Cut.class);

  Typeface(String family, String plain, String bold, String italic) {
    this.family = family;
    this.files = Map.of(Cut.PLAIN, plain, Cut.BOLD, bold, Cut.ITALIC, italic);
  }

  /** The family for a layout. */
  static Typeface of(Layout layout) {
    return layout.size().isLargePrint() ? SANS : SERIF;
  }

  /** The name by which pages refer to it. */
  String family() {
    return family;
  }

  /** The resource of a cut. */
  String resource(Cut cut) {
    return FOLDER + files.get(cut) + ".ttf";
  }

  /** The width of a text in points, without kerning. */
  public double width(String text, Cut cut, double size) {
    return font(cut).deriveFont((float) size).getStringBounds(text, EXACT).getWidth();
  }

  /** Whether the family has the character. */
  public boolean has(int codePoint) {
    return font(Cut.PLAIN).canDisplay(codePoint);
  }

  /** The font of a cut at one point, to be drawn with. */
  public synchronized Font font(Cut cut) {
    return loaded.computeIfAbsent(cut, this::load);
  }

  private Font load(Cut cut) {
    try (InputStream stream = Typeface.class.getResourceAsStream(resource(cut))) {
      if (stream == null) {
        throw new IllegalStateException("the typeface is not shipped: " + resource(cut));
      }
      return Font.createFont(Font.TRUETYPE_FONT, stream);
    } catch (FontFormatException unreadable) {
      throw new IllegalStateException("not a typeface: " + resource(cut), unreadable);
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }
}
