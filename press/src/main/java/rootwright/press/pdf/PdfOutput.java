package rootwright.press.pdf;

import rootwright.press.document.Document;
import rootwright.press.formula.FormulaScripts;
import rootwright.press.output.Output;

/**
 * PDF 1.4 and above: tagged, with title and language, every formula and figure with a text
 * alternative, fonts embedded. It keeps the rules of PDF/UA-1 that a program can check; the tests
 * have a validator confirm that.
 *
 * <p>The bytes depend on the document alone, except that the time zone of the machine stands in two
 * dates.
 */
public final class PdfOutput implements Output {

  private final FormulaScripts scripts;

  /** With the ways to write formulas. */
  public PdfOutput(FormulaScripts scripts) {
    this.scripts = scripts;
  }

  @Override
  public String name() {
    return "pdf";
  }

  @Override
  public String title() {
    return "PDF, to print";
  }

  @Override
  public String extension() {
    return "pdf";
  }

  @Override
  public String mediaType() {
    return "application/pdf";
  }

  @Override
  public byte[] print(Document document) {
    return Pages.printed(PageSetter.set(document, scripts), document.identity().date());
  }
}
