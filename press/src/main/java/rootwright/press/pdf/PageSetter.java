package rootwright.press.pdf;

import java.util.List;
import rootwright.press.document.Block;
import rootwright.press.document.Document;
import rootwright.press.document.Piece;
import rootwright.press.formula.FormulaScripts;
import rootwright.press.markup.Markup;

/** A whole document as formatting objects: sheets, heads and feet of the pages, and the flow. */
final class PageSetter {

  private final Document document;
  private final Setting setting;
  private final Markup into = new Markup();

  private PageSetter(Document document, FormulaScripts scripts) {
    this.document = document;
    this.setting = Setting.of(document, scripts);
  }

  /** The formatting objects of a document, as XML. */
  static String set(Document document, FormulaScripts scripts) {
    return new PageSetter(document, scripts).root();
  }

  private String root() {
    into.open(
        "fo:root",
        "xmlns:fo",
        "http://www.w3.org/1999/XSL/Format",
        "xmlns:fox",
        "http://xmlgraphics.apache.org/fop/extensions",
        "xml:lang",
        document.language().primary(),
        "font-family",
        setting.typeface().family(),
        "font-size",
        Points.pt(setting.page().size()),
        "line-height",
        "1.35",
        "text-align",
        "start");
    sheets();
    Properties.write(document.title(), document.language().tag(), into);
    into.open("fo:page-sequence", "master-reference", "sheets");
    head();
    foot();
    into.open("fo:flow", "flow-name", "xsl-region-body");
    title();
    new BlockSetter(setting, into, setting.page().measure()).all(document.blocks());
    into.empty("fo:block", "id", "end");
    into.close().close().close();
    return into.finished();
  }

  private void sheets() {
    into.open("fo:layout-master-set");
    sheet("first");
    sheet("rest");
    into.open("fo:page-sequence-master", "master-name", "sheets");
    into.open("fo:repeatable-page-master-alternatives");
    into.empty(
        "fo:conditional-page-master-reference",
        "master-reference",
        "first",
        "page-position",
        "first");
    into.empty("fo:conditional-page-master-reference", "master-reference", "rest");
    into.close().close().close();
  }

  private void sheet(String name) {
    Page page = setting.page();
    String edge = Points.pt(page.end() / 2);
    String body = Points.pt(page.end() - page.end() / 2);
    into.open(
        "fo:simple-page-master",
        "master-name",
        name,
        "page-width",
        Points.pt(page.width()),
        "page-height",
        Points.pt(page.height()),
        "margin-left",
        Points.pt(page.side()),
        "margin-right",
        Points.pt(page.side()),
        "margin-top",
        edge,
        "margin-bottom",
        edge);
    into.empty("fo:region-body", "margin-top", body, "margin-bottom", body);
    into.empty("fo:region-before", "region-name", "head-" + name, "extent", body);
    into.empty("fo:region-after", "region-name", "foot", "extent", body, "display-align", "after");
    into.close();
  }

  /** From the second page on, the title stands at the head. */
  private void head() {
    into.open("fo:static-content", "flow-name", "head-rest", "role", "Artifact");
    into.open(
        "fo:block", "font-size", small(), "text-align-last", "justify", "wrap-option", "no-wrap");
    into.raw(words(document.title()));
    Leaders.rest(into);
    into.text(version());
    into.close().close();
  }

  private void foot() {
    into.open("fo:static-content", "flow-name", "foot", "role", "Artifact");
    into.open("fo:block", "font-size", small(), "text-align-last", "justify");
    String code = document.identity().paperCode();
    into.text(code.isEmpty() ? document.language().word("draft") : code);
    if (!version().isEmpty()) {
      into.text("  ·  " + version());
    }
    Leaders.rest(into);
    String[] around = document.language().word("page", "\u0000", "\u0000").split("\u0000", -1);
    into.text(around[0]).empty("fo:page-number");
    into.text(around[1]).empty("fo:page-number-citation-last", "ref-id", "end");
    into.text(around[2]);
    into.close().close();
  }

  private void title() {
    into.open(
        "fo:block",
        "role",
        "H1",
        "font-size",
        "1.55em",
        "font-weight",
        "bold",
        "line-height",
        "1.2",
        "space-after",
        "0.5em",
        "text-align-last",
        version().isEmpty() ? "start" : "justify");
    into.raw(
        PieceSetter.set(
                List.of(Piece.words(document.title())),
                setting.scaled(1.55),
                PieceSetter.Manner.running(setting.page().measure()),
                Typeface.Cut.BOLD)
            .objects());
    if (!version().isEmpty()) {
      Leaders.rest(into);
      into.leaf("fo:inline", version(), "font-size", "0.75em");
    }
    into.close();
    new BlockSetter(setting, into, setting.page().measure()).rule(new Block.Rule());
  }

  private String version() {
    String version = document.identity().version();
    return version.isEmpty() ? "" : document.language().word("version", version);
  }

  private String words(String text) {
    return PieceSetter.set(
            List.of(Piece.words(text)),
            setting.scaled(0.82),
            PieceSetter.Manner.alone(setting.page().measure()),
            Typeface.Cut.PLAIN)
        .objects();
  }

  /** Heads and feet do not grow with the text beyond 14 points. */
  private String small() {
    return Points.pt(Math.min(14, setting.page().size() * 0.82));
  }
}
