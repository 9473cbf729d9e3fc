package rootwright.press.text;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import rootwright.press.document.Block;
import rootwright.press.document.KeyLine;
import rootwright.press.document.Language;
import rootwright.press.document.Piece;
import rootwright.press.document.Response;
import rootwright.press.formula.FormulaScripts;

/** Blocks in plain text. */
final class TextBlocks implements Block.Cases<TextLines>, Response.Cases<TextLines> {

  private final Language language;
  private final TextPieces pieces;
  private final TextLines lines;

  TextBlocks(Language language, FormulaScripts scripts, TextLines lines) {
    this.language = language;
    this.pieces = new TextPieces(language, scripts);
    this.lines = lines;
  }

  void all(List<Block> blocks) {
    for (int k = 0; k < blocks.size(); k++) {
      boolean begins = k == 0 || !(blocks.get(k - 1) instanceof Block.WorkedLine);
      if (begins && blocks.get(k) instanceof Block.WorkedLine) {
        lines.gap();
      }
      blocks.get(k).choose(this);
    }
  }

  @Override
  public TextLines heading(Block.Heading heading) {
    lines.gap();
    lines.empty(heading.level() == 1 ? 1 : 0);
    String text = pieces.all(heading.pieces());
    lines.wrapped(text);
    lines.line((heading.level() == 1 ? "-" : ".").repeat(underline(text)));
    return lines;
  }

  private int underline(String text) {
    return Math.min(lines.room(), TextLines.visible(text));
  }

  @Override
  public TextLines paragraph(Block.Paragraph paragraph) {
    lines.gap();
    lines.wrapped(pieces.all(paragraph.pieces()));
    return lines;
  }

  @Override
  public TextLines display(Block.Display display) {
    lines.gap();
    String text = pieces.mathematics(new Piece.Mathematics(display.formula()));
    lines.in("    ", () -> lines.wrapped(text));
    return lines;
  }

  @Override
  public TextLines item(Block.Item item) {
    lines.gap();
    String marker = "%3s ".formatted(item.number() + ".");
    lines.in(
        marker,
        () -> {
          beginning(item);
          if (item.scoring().isEmpty() || item.response() instanceof Response.Choices) {
            item.response().choose(this);
          }
          item.scoring()
              .ifPresent(
                  scoring -> {
                    lines.gap();
                    lines.wrapped(pieces.all(KeyLine.of(scoring, language)));
                  });
        });
    return lines;
  }

  /** The points stand on the line of the number, before the first paragraph. */
  private void beginning(Block.Item item) {
    String points = item.points().map(worth -> "(" + language.points(worth) + ") ").orElse("");
    List<Block> statement = item.statement();
    if (!statement.isEmpty() && statement.get(0) instanceof Block.Paragraph first) {
      lines.wrapped(points + pieces.all(first.pieces()));
      all(statement.subList(1, statement.size()));
    } else {
      lines.wrapped(points);
      all(statement);
    }
  }

  @Override
  public TextLines work(Response.Work work) {
    lines.empty(work.lines());
    return lines;
  }

  @Override
  public TextLines shortAnswer(Response.ShortAnswer answer) {
    lines.empty(answer.lines());
    lines.gap();
    lines.line(language.word("answer") + " " + "_".repeat(30));
    return lines;
  }

  @Override
  public TextLines choices(Response.Choices choices) {
    lines.gap();
    lines.wrapped(
        choices.choices().stream()
            .map(
                choice ->
                    ("(" + choice.letter() + ") " + pieces.all(choice.pieces()))
                        .replace(' ', TextLines.FIRM))
            .collect(Collectors.joining("    ")));
    return lines;
  }

  /** The reason stands at the line's end, or at the end of the next line. */
  @Override
  public TextLines workedLine(Block.WorkedLine line) {
    String claim = pieces.all(line.claim());
    String reason = line.reason().isEmpty() ? "" : "[" + pieces.all(line.reason()) + "]";
    int free = lines.room() - TextLines.visible(claim) - TextLines.visible(reason);
    if (free >= 2 || reason.isEmpty()) {
      lines.line(claim + " ".repeat(Math.max(0, free)) + reason);
      return lines;
    }
    lines.wrapped(claim);
    for (String part : TextLines.wrap(reason, lines.room() * 3 / 4)) {
      lines.line(" ".repeat(lines.room() - TextLines.visible(part)) + part);
    }
    return lines;
  }

  @Override
  public TextLines entries(Block.Entries entries) {
    boolean numbered = entries.marker() == Block.Entries.Marker.NUMBER;
    int number = 1;
    lines.gap();
    for (List<Piece> entry : entries.entries()) {
      String marker = numbered ? "%2d. ".formatted(number++) : "  - ";
      lines.in(marker, () -> lines.wrapped(pieces.all(entry)));
    }
    return lines;
  }

  @Override
  public TextLines table(Block.Table table) {
    lines.gap();
    if (!table.caption().isEmpty()) {
      lines.wrapped(pieces.all(table.caption()));
    }
    List<Integer> widths = widths(table);
    row(table, widths, table.columns().stream().map(Block.Table.Column::head).toList());
    lines.line(widths.stream().map("-"::repeat).collect(Collectors.joining("  ")));
    table.rows().forEach(row -> row(table, widths, row));
    return lines;
  }

  private List<Integer> widths(Block.Table table) {
    int shares = table.columns().stream().mapToInt(Block.Table.Column::share).sum();
    int free = lines.room() - 2 * (table.columns().size() - 1);
    return table.columns().stream()
        .map(column -> Math.max(4, free * column.share() / shares))
        .toList();
  }

  private void row(Block.Table table, List<Integer> widths, List<List<Piece>> row) {
    List<List<String>> cells = new ArrayList<>();
    for (int k = 0; k < row.size(); k++) {
      cells.add(TextLines.wrap(pieces.all(row.get(k)), widths.get(k)));
    }
    int height = cells.stream().mapToInt(List::size).max().orElse(1);
    for (int line = 0; line < height; line++) {
      StringBuilder text = new StringBuilder();
      for (int k = 0; k < cells.size(); k++) {
        String part = line < cells.get(k).size() ? cells.get(k).get(line) : "";
        int free = Math.max(0, widths.get(k) - TextLines.visible(part));
        int before = before(table.columns().get(k), free);
        text.append(k > 0 ? "  " : "").append(" ".repeat(before)).append(part);
        text.append(" ".repeat(free - before));
      }
      lines.line(text.toString());
    }
  }

  private static int before(Block.Table.Column column, int free) {
    return switch (column.placing()) {
      case START -> 0;
      case CENTRE -> free / 2;
      case END -> free;
    };
  }

  @Override
  public TextLines figure(Block.Figure figure) {
    lines.gap();
    lines.wrapped("[" + language.word("figure") + ": " + figure.alternative() + "]");
    if (!figure.caption().isEmpty()) {
      lines.wrapped(pieces.all(figure.caption()));
    }
    return lines;
  }

  @Override
  public TextLines frame(Block.Frame frame) {
    lines.gap();
    lines.full('-');
    lines.in(
        "  ",
        () -> {
          lines.wrapped(pieces.all(frame.title()));
          all(frame.blocks());
        });
    lines.full('-');
    return lines;
  }

  @Override
  public TextLines rule(Block.Rule rule) {
    lines.gap();
    lines.full('-');
    return lines;
  }

  @Override
  public TextLines nameLine(Block.NameLine line) {
    lines.gap();
    lines.wrapped(
        line.labels().stream()
            .map(label -> label + TextLines.FIRM + "_".repeat(18))
            .collect(Collectors.joining("  ")));
    return lines;
  }

  @Override
  public TextLines pageBreak(Block.PageBreak pageBreak) {
    lines.gap();
    return lines;
  }
}
