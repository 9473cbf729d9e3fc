package rootwright.press.pdf;

import rootwright.press.document.Document;
import rootwright.press.document.Language;
import rootwright.press.formula.FormulaScripts;

/** What everything on the pages of one document shares. */
record Setting(Language language, Page page, Typeface typeface, FormulaSetter formulas) {

  static Setting of(Document document, FormulaScripts scripts) {
    Page page = Page.of(document.layout());
    return new Setting(
        document.language(),
        page,
        Typeface.of(document.layout()),
        new FormulaSetter(scripts, page.size()));
  }

  /** The same with text so many times the size. */
  Setting scaled(double factor) {
    Page scaled = page.withSize(page.size() * factor);
    return new Setting(language, scaled, typeface, formulas.withSize(scaled.size()));
  }

  /** The width of words in the size of the running text. */
  double width(String words, Typeface.Cut cut) {
    return typeface.width(words, cut, page.size());
  }
}
