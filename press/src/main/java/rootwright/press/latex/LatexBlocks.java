package rootwright.press.latex;

import java.util.List;
import java.util.stream.Collectors;
import rootwright.press.document.Block;
import rootwright.press.document.KeyLine;
import rootwright.press.document.Language;
import rootwright.press.document.Piece;
import rootwright.press.document.Response;
import rootwright.press.formula.FormulaScripts;

/** Blocks in LaTeX. */
final class LatexBlocks implements Block.Cases<StringBuilder>, Response.Cases<StringBuilder> {

  /** Rows of one table; more might not fit a page. */
  private static final int ROWS = 16;

  private final Language language;
  private final LatexPieces pieces;
  private final StringBuilder into;

  LatexBlocks(Language language, FormulaScripts scripts, StringBuilder into) {
    this.language = language;
    this.pieces = new LatexPieces(language, scripts);
    this.into = into;
  }

  void all(List<Block> blocks) {
    blocks.forEach(block -> block.choose(this));
  }

  @Override
  public StringBuilder heading(Block.Heading heading) {
    String command = heading.level() == 1 ? "section" : "subsection";
    return into.append("\\%s*{%s}\n\n".formatted(command, pieces.all(heading.pieces())));
  }

  @Override
  public StringBuilder paragraph(Block.Paragraph paragraph) {
    return into.append(pieces.all(paragraph.pieces())).append("\n\n");
  }

  @Override
  public StringBuilder display(Block.Display display) {
    return into.append("{\\leftskip=2em ")
        .append(pieces.mathematics(new Piece.Mathematics(display.formula())))
        .append("\\par}\n\n");
  }

  /** A page is left early rather than broken inside an item. */
  @Override
  public StringBuilder item(Block.Item item) {
    into.append(
        "\\filbreak\n\\begin{enumerate}\\setcounter{enumi}{%d}\n\\item "
            .formatted(item.number() - 1));
    item.points()
        .ifPresent(
            points -> into.append("(").append(LatexText.of(language.points(points))).append(") "));
    all(item.statement());
    if (item.scoring().isEmpty() || item.response() instanceof Response.Choices) {
      item.response().choose(this);
    }
    item.scoring()
        .ifPresent(
            scoring -> into.append(pieces.all(KeyLine.of(scoring, language))).append("\n\n"));
    return into.append("\\end{enumerate}\n");
  }

  @Override
  public StringBuilder work(Response.Work work) {
    return room(work.lines());
  }

  @Override
  public StringBuilder shortAnswer(Response.ShortAnswer answer) {
    room(answer.lines());
    return into.append("\\hspace*{\\fill}")
        .append(LatexText.of(language.word("answer")))
        .append(" \\rule{60mm}{0.4pt}\n\n");
  }

  private StringBuilder room(int lines) {
    return lines == 0 ? into : into.append("\\vspace*{%dmm}\n\n".formatted(12 * lines));
  }

  @Override
  public StringBuilder choices(Response.Choices choices) {
    return into.append(
            choices.choices().stream()
                .map(
                    choice ->
                        "\\mbox{\\textbf{(%s)}~%s}"
                            .formatted(choice.letter(), pieces.all(choice.pieces())))
                .collect(Collectors.joining("\\qquad\n")))
        .append("\n\n");
  }

  @Override
  public StringBuilder workedLine(Block.WorkedLine line) {
    into.append(pieces.all(line.claim()));
    if (!line.reason().isEmpty()) {
      into.append("\\reason{").append(pieces.all(line.reason())).append('}');
    }
    return into.append("\n\n");
  }

  @Override
  public StringBuilder entries(Block.Entries entries) {
    boolean numbered = entries.marker() == Block.Entries.Marker.NUMBER;
    into.append(numbered ? "\\begin{enumerate}\n" : "\\begin{itemize}\n");
    for (List<Piece> entry : entries.entries()) {
      into.append(numbered ? "\\item " : "\\item[--] ").append(pieces.all(entry)).append('\n');
    }
    return into.append(numbered ? "\\end{enumerate}\n\n" : "\\end{itemize}\n\n");
  }

  @Override
  public StringBuilder table(Block.Table table) {
    if (!table.caption().isEmpty()) {
      into.append("\\textbf{").append(pieces.all(table.caption())).append("}\n\n");
    }
    // TeX does not break a table over pages, so a long one is several.
    int from = 0;
    do {
      int to = Math.min(table.rows().size(), from + ROWS);
      part(table, table.rows().subList(from, to));
      from = to;
    } while (from < table.rows().size());
    return into;
  }

  private void part(Block.Table table, List<List<List<Piece>>> rows) {
    int shares = table.columns().stream().mapToInt(Block.Table.Column::share).sum();
    into.append("\\begin{tabular}{@{}");
    for (Block.Table.Column column : table.columns()) {
      // Hundredths of the line, less the room between columns.
      int width = Math.max(5, 92 * column.share() / shares);
      into.append(">{%s\\arraybackslash}p{0.%02d\\linewidth}".formatted(placing(column), width));
    }
    into.append("@{}}\n\\hline\n");
    row(table.columns().stream().map(Block.Table.Column::head).toList());
    into.append("\\hline\n");
    rows.forEach(this::row);
    into.append("\\hline\n\\end{tabular}\n\n");
  }

  private static String placing(Block.Table.Column column) {
    return switch (column.placing()) {
      case START -> "\\raggedright";
      case CENTRE -> "\\centering";
      case END -> "\\raggedleft";
    };
  }

  private void row(List<List<Piece>> cells) {
    into.append(cells.stream().map(pieces::all).collect(Collectors.joining(" & ")))
        .append(" \\\\\n");
  }

  @Override
  public StringBuilder figure(Block.Figure figure) {
    into.append("\\begin{center}\\fbox{\\parbox{0.7\\linewidth}{")
        .append(LatexText.of(language.word("figure") + ": " + figure.alternative()))
        .append("}}");
    if (!figure.caption().isEmpty()) {
      into.append("\\\\\n{\\small ").append(pieces.all(figure.caption())).append('}');
    }
    return into.append("\\end{center}\n\n");
  }

  @Override
  public StringBuilder frame(Block.Frame frame) {
    into.append("\\fbox{\\parbox{0.95\\linewidth}{\\raggedright\\parskip=0.4em\n\\textbf{")
        .append(pieces.all(frame.title()))
        .append("}\n\n");
    all(frame.blocks());
    return into.append("}}\n\n");
  }

  @Override
  public StringBuilder rule(Block.Rule rule) {
    return into.append("\\hrule\n\n");
  }

  @Override
  public StringBuilder nameLine(Block.NameLine line) {
    return into.append(
            line.labels().stream()
                .map(label -> LatexText.of(label) + "~\\hrulefill")
                .collect(Collectors.joining("\\quad ")))
        .append("\\null\n\n");
  }

  @Override
  public StringBuilder pageBreak(Block.PageBreak pageBreak) {
    return into.append("\\newpage\n");
  }
}
