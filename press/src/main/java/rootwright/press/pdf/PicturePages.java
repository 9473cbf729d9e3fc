package rootwright.press.pdf;

import java.time.LocalDate;
import java.util.List;
import rootwright.press.markup.Markup;

/** Pictures as a PDF, one a page, each tagged with what it says. */
public final class PicturePages {

  /** The height of a page in points: seven and a half inches. */
  private static final double HEIGHT = 540;

  /** A hair less than the page, so that rounding never makes a second one. */
  private static final double FILLED = 0.998;

  private PicturePages() {}

  /**
   * A picture for a page.
   *
   * @param svg one {@code svg} element that refers to nothing
   * @param spoken what it says, in words
   */
  public record Sheet(String svg, String spoken) {}

  /**
   * The PDF.
   *
   * @param title kept in its properties
   * @param language of the words, a BCP 47 tag
   * @param shape the width of a page divided by its height
   * @param sheets in order
   * @param date that stands in its properties
   */
  public static byte[] print(
      String title, String language, double shape, List<Sheet> sheets, LocalDate date) {
    double width = HEIGHT * shape;
    Markup into = new Markup();
    into.open(
        "fo:root",
        "xmlns:fo",
        "http://www.w3.org/1999/XSL/Format",
        "xmlns:fox",
        "http://xmlgraphics.apache.org/fop/extensions",
        "xml:lang",
        language,
        "font-family",
        Typeface.SERIF.family());
    into.open("fo:layout-master-set");
    into.open(
        "fo:simple-page-master",
        "master-name",
        "slide",
        "page-width",
        Points.pt(width),
        "page-height",
        Points.pt(HEIGHT));
    into.empty("fo:region-body").close().close();
    Properties.write(title, language, into);
    into.open("fo:page-sequence", "master-reference", "slide");
    into.open("fo:flow", "flow-name", "xsl-region-body");
    for (int k = 0; k < sheets.size(); k++) {
      into.open(
          "fo:block",
          "line-height",
          "0",
          "font-size",
          "1pt",
          "break-before",
          k == 0 ? "auto" : "page");
      into.open(
          "fo:instream-foreign-object",
          "fox:alt-text",
          sheets.get(k).spoken(),
          "content-width",
          Points.pt(width * FILLED),
          "content-height",
          Points.pt(HEIGHT * FILLED));
      into.raw(sheets.get(k).svg());
      into.close().close();
    }
    into.close().close().close();
    return Pages.printed(into.finished(), date);
  }
}
