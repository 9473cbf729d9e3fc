package rootwright.press.html;

import java.util.List;
import rootwright.press.document.Block;
import rootwright.press.document.KeyLine;
import rootwright.press.document.Language;
import rootwright.press.document.Piece;
import rootwright.press.document.Response;
import rootwright.press.formula.FormulaScripts;
import rootwright.press.hypertext.Phrases;
import rootwright.press.markup.Markup;

/** Blocks as flow content. */
final class HtmlBlocks implements Block.Cases<Markup>, Response.Cases<Markup> {

  /** A formula up to this many signs fits on a narrow screen. */
  private static final int KEPT_WHOLE = 40;

  private final Language language;
  private final Markup into;
  private final Phrases pieces;

  HtmlBlocks(Language language, FormulaScripts scripts, Markup into) {
    this.language = language;
    this.into = into;
    this.pieces = new Phrases(language, scripts, KEPT_WHOLE, into);
  }

  void all(List<Block> blocks) {
    for (Block block : blocks) {
      block.choose(this);
      into.raw("\n");
    }
  }

  @Override
  public Markup heading(Block.Heading heading) {
    into.open(heading.level() == 1 ? "h2" : "h3");
    return pieces.all(heading.pieces()).close();
  }

  @Override
  public Markup paragraph(Block.Paragraph paragraph) {
    into.open("p");
    return pieces.all(paragraph.pieces()).close();
  }

  @Override
  public Markup display(Block.Display display) {
    into.open("p", "class", "display");
    return pieces.mathematics(new Piece.Mathematics(display.formula())).close();
  }

  @Override
  public Markup item(Block.Item item) {
    into.open("section", "class", "item");
    into.leaf("span", item.number() + ".", "class", "number");
    into.open("div");
    statement(item);
    if (item.scoring().isEmpty() || item.response() instanceof Response.Choices) {
      item.response().choose(this);
    }
    item.scoring()
        .ifPresent(
            scoring -> {
              into.open("p");
              pieces.all(KeyLine.of(scoring, language)).close();
            });
    return into.close().close();
  }

  /** The points stand on the first line, before the first paragraph. */
  private void statement(Block.Item item) {
    List<Block> statement = item.statement();
    boolean text = !statement.isEmpty() && statement.get(0) instanceof Block.Paragraph;
    into.open("p");
    item.points().ifPresent(points -> into.text("(" + language.points(points) + ") "));
    if (text && statement.get(0) instanceof Block.Paragraph first) {
      pieces.all(first.pieces());
    }
    into.close();
    all(text ? statement.subList(1, statement.size()) : statement);
  }

  @Override
  public Markup work(Response.Work work) {
    return room(work.lines());
  }

  @Override
  public Markup shortAnswer(Response.ShortAnswer answer) {
    room(answer.lines());
    into.open("p", "class", "answer").text(language.word("answer") + " ");
    return into.open("span", "class", "blank").close().close();
  }

  private Markup room(int lines) {
    return lines == 0
        ? into
        : into.open("span", "class", "work", "style", "height:" + 12 * lines + "mm").close();
  }

  @Override
  public Markup choices(Response.Choices choices) {
    into.open("ul", "class", "choices");
    for (Response.Choice choice : choices.choices()) {
      into.open("li").leaf("b", "(" + choice.letter() + ")").text(" ");
      pieces.all(choice.pieces()).close();
    }
    return into.close();
  }

  @Override
  public Markup workedLine(Block.WorkedLine line) {
    into.open("p", "class", "line").open("span");
    pieces.all(line.claim()).close();
    if (!line.reason().isEmpty()) {
      into.text(" ").open("em");
      pieces.all(line.reason()).close();
    }
    return into.close();
  }

  @Override
  public Markup entries(Block.Entries entries) {
    if (entries.marker() == Block.Entries.Marker.NUMBER) {
      into.open("ol");
    } else {
      into.open("ul", "class", "dash");
    }
    for (List<Piece> entry : entries.entries()) {
      into.open("li");
      pieces.all(entry).close();
    }
    return into.close();
  }

  @Override
  public Markup table(Block.Table table) {
    into.open("table");
    if (!table.caption().isEmpty()) {
      into.open("caption");
      pieces.all(table.caption()).close();
    }
    into.open("thead").open("tr");
    for (Block.Table.Column column : table.columns()) {
      into.open("th", "scope", "col", "class", placing(column));
      pieces.all(column.head()).close();
    }
    into.close().close().open("tbody");
    for (List<List<Piece>> row : table.rows()) {
      into.open("tr");
      for (int k = 0; k < row.size(); k++) {
        into.open("td", "class", placing(table.columns().get(k)));
        pieces.all(row.get(k)).close();
      }
      into.close();
    }
    return into.close().close();
  }

  private static String placing(Block.Table.Column column) {
    return switch (column.placing()) {
      case START -> "start";
      case CENTRE -> "centre";
      case END -> "end";
    };
  }

  @Override
  public Markup figure(Block.Figure figure) {
    into.open("figure");
    into.open(
        "div",
        "role",
        "img",
        "aria-label",
        figure.alternative(),
        "style",
        "width:" + figure.width() + "mm;max-width:100%;margin:0 auto");
    into.raw(figure.drawing().source()).close();
    if (!figure.caption().isEmpty()) {
      into.open("figcaption");
      pieces.all(figure.caption()).close();
    }
    return into.close();
  }

  @Override
  public Markup frame(Block.Frame frame) {
    into.open("section", "class", "frame").open("p").open("strong");
    pieces.all(frame.title()).close().close();
    all(frame.blocks());
    return into.close();
  }

  @Override
  public Markup rule(Block.Rule rule) {
    return into.empty("hr");
  }

  @Override
  public Markup nameLine(Block.NameLine line) {
    into.open("p", "class", "name");
    for (String label : line.labels()) {
      into.open("span").text(label).open("i").close().close();
    }
    return into.close();
  }

  @Override
  public Markup pageBreak(Block.PageBreak pageBreak) {
    return into.open("div", "class", "break").close();
  }
}
