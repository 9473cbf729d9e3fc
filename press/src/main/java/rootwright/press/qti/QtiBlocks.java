package rootwright.press.qti;

import java.util.List;
import rootwright.press.document.Block;
import rootwright.press.document.Language;
import rootwright.press.document.Piece;
import rootwright.press.formula.FormulaScripts;
import rootwright.press.hypertext.Phrases;
import rootwright.press.markup.Markup;
import rootwright.press.output.UnprintableException;

/** The blocks of a statement in the part of HTML that the specification allows. */
final class QtiBlocks implements Block.Cases<Markup> {

  private final Markup into;
  private final Phrases phrases;

  QtiBlocks(Language language, FormulaScripts scripts, Markup into) {
    this.into = into;
    this.phrases = new Phrases(language, scripts, Integer.MAX_VALUE, into);
  }

  void all(List<Block> blocks) {
    blocks.forEach(block -> block.choose(this));
  }

  @Override
  public Markup heading(Block.Heading heading) {
    into.open(heading.level() == 1 ? "h2" : "h3");
    return phrases.all(heading.pieces()).close();
  }

  @Override
  public Markup paragraph(Block.Paragraph paragraph) {
    into.open("p");
    return phrases.all(paragraph.pieces()).close();
  }

  @Override
  public Markup display(Block.Display display) {
    into.open("p");
    return phrases.mathematics(new Piece.Mathematics(display.formula())).close();
  }

  @Override
  public Markup item(Block.Item item) {
    throw new UnprintableException(
        "Item %d stands inside another item: a package cannot hold that.".formatted(item.number()));
  }

  @Override
  public Markup workedLine(Block.WorkedLine line) {
    into.open("p");
    phrases.all(line.claim());
    if (!line.reason().isEmpty()) {
      into.text(" ").open("em");
      phrases.all(line.reason()).close();
    }
    return into.close();
  }

  @Override
  public Markup entries(Block.Entries entries) {
    into.open(entries.marker() == Block.Entries.Marker.NUMBER ? "ol" : "ul");
    for (List<Piece> entry : entries.entries()) {
      into.open("li");
      phrases.all(entry).close();
    }
    return into.close();
  }

  @Override
  public Markup table(Block.Table table) {
    into.open("table");
    if (!table.caption().isEmpty()) {
      into.open("caption");
      phrases.all(table.caption()).close();
    }
    into.open("thead");
    row("th", table.columns().stream().map(Block.Table.Column::head).toList());
    into.close().open("tbody");
    table.rows().forEach(row -> row("td", row));
    return into.close().close();
  }

  private void row(String cell, List<List<Piece>> row) {
    into.open("tr");
    for (List<Piece> pieces : row) {
      into.open(cell);
      phrases.all(pieces).close();
    }
    into.close();
  }

  @Override
  public Markup figure(Block.Figure figure) {
    into.open("figure");
    into.open("div", "role", "img", "aria-label", figure.alternative());
    into.raw(figure.drawing().source()).close();
    if (!figure.caption().isEmpty()) {
      into.open("figcaption");
      phrases.all(figure.caption()).close();
    }
    return into.close();
  }

  @Override
  public Markup frame(Block.Frame frame) {
    into.open("div").open("p").open("strong");
    phrases.all(frame.title()).close().close();
    all(frame.blocks());
    return into.close();
  }

  @Override
  public Markup rule(Block.Rule rule) {
    return into.empty("hr");
  }

  /** A testing program knows who answers. */
  @Override
  public Markup nameLine(Block.NameLine line) {
    return into;
  }

  @Override
  public Markup pageBreak(Block.PageBreak pageBreak) {
    return into;
  }
}
