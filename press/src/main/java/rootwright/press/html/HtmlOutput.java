package rootwright.press.html;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import rootwright.press.document.Document;
import rootwright.press.formula.FormulaScripts;
import rootwright.press.markup.Markup;
import rootwright.press.output.Output;

/** One self-contained HTML file (HTML Living Standard with MathML Core), readable offline. */
public final class HtmlOutput implements Output {

  private final FormulaScripts scripts;

  /** With the ways to write formulas. */
  public HtmlOutput(FormulaScripts scripts) {
    this.scripts = scripts;
  }

  @Override
  public String name() {
    return "html";
  }

  @Override
  public String title() {
    return "HTML, one file to read on a screen";
  }

  @Override
  public String extension() {
    return "html";
  }

  @Override
  public String mediaType() {
    return "text/html";
  }

  @Override
  public byte[] print(Document document) {
    Markup into = new Markup();
    into.raw("<!DOCTYPE html>\n");
    into.open("html", "lang", document.language().tag());
    head(document, into);
    into.open("body").open("main");
    into.leaf("h1", document.title());
    foot(document, into);
    new HtmlBlocks(document.language(), scripts, into).all(document.blocks());
    into.close().close().close();
    return (into.finished() + "\n").getBytes(StandardCharsets.UTF_8);
  }

  private static void head(Document document, Markup into) {
    into.open("head").empty("meta", "charset", "utf-8");
    into.empty("meta", "name", "viewport", "content", "width=device-width, initial-scale=1");
    into.leaf("title", document.title());
    into.open("style").raw(style(document)).close();
    into.close();
  }

  /** Code and version stand below the title, since a page on a screen has no foot. */
  private static void foot(Document document, Markup into) {
    String code = document.identity().paperCode();
    String version = document.identity().version();
    into.open("p", "class", "identity");
    into.text(code.isEmpty() ? document.language().word("draft") : code);
    if (!version.isEmpty()) {
      into.text(" · " + document.language().word("version", version));
    }
    into.close();
  }

  private static String style(Document document) {
    String sheet =
        switch (document.layout().format()) {
          case A4 -> "A4";
          case LETTER -> "letter";
        };
    String own =
        "@page{size:%s;margin:20mm}:root{font-size:%dpt}"
            .formatted(sheet, document.layout().size().points());
    String face = document.layout().size().isLargePrint() ? "body{font-family:sans-serif}" : "";
    return shipped() + own + face;
  }

  private static String shipped() {
    try (InputStream stream = HtmlOutput.class.getResourceAsStream("paper.css")) {
      if (stream == null) {
        throw new IllegalStateException("the style of the papers is not shipped");
      }
      return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }
}
