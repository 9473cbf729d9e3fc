package rootwright.press.pdf;

import java.util.List;
import rootwright.press.document.Block;
import rootwright.press.document.Piece;
import rootwright.press.markup.Markup;

/** Sets tables with lines above, below and under the heads, and none between columns. */
final class TableSetter {

  private final Setting setting;
  private final Markup into;
  private final double measure;

  TableSetter(Setting setting, Markup into, double measure) {
    this.setting = setting;
    this.into = into;
    this.measure = measure;
  }

  Markup table(Block.Table table) {
    if (!table.caption().isEmpty()) {
      into.open(
          "fo:block",
          "font-weight",
          "bold",
          "space-before",
          "0.9em",
          "keep-with-next.within-page",
          "always");
      into.raw(cell(table.caption(), measure, Typeface.Cut.BOLD)).close();
    }
    int shares = table.columns().stream().mapToInt(Block.Table.Column::share).sum();
    into.open(
        "fo:table",
        "table-layout",
        "fixed",
        "width",
        Points.pt(measure),
        "border-top",
        "0.8pt solid black",
        "border-bottom",
        "0.8pt solid black",
        "border-collapse",
        "separate",
        "space-before",
        "0.6em",
        "space-after",
        "0.8em");
    for (Block.Table.Column column : table.columns()) {
      into.empty("fo:table-column", "column-width", Points.pt(measure * column.share() / shares));
    }
    head(table, shares);
    into.open("fo:table-body");
    if (table.rows().isEmpty()) {
      // A table body must have a row.
      row(table, table.columns().stream().map(column -> List.<Piece>of()).toList(), shares);
    }
    table.rows().forEach(row -> row(table, row, shares));
    return into.close().close();
  }

  private void head(Block.Table table, int shares) {
    into.open("fo:table-header").open("fo:table-row");
    for (Block.Table.Column column : table.columns()) {
      into.open(
          "fo:table-cell",
          "role",
          "TH",
          "padding",
          padding(),
          "border-bottom",
          "0.4pt solid black",
          "display-align",
          "after");
      into.open(
          "fo:block",
          "start-indent",
          "0pt",
          "text-indent",
          "0pt",
          "font-weight",
          "bold",
          "text-align",
          align(column));
      into.raw(cell(column.head(), width(column, shares), Typeface.Cut.BOLD));
      into.close().close();
    }
    into.close().close();
  }

  private void row(Block.Table table, List<List<Piece>> row, int shares) {
    into.open("fo:table-row", "keep-together.within-page", "always");
    for (int k = 0; k < row.size(); k++) {
      Block.Table.Column column = table.columns().get(k);
      into.open("fo:table-cell", "padding", padding());
      into.open(
          "fo:block", "start-indent", "0pt", "text-indent", "0pt", "text-align", align(column));
      into.raw(cell(row.get(k), width(column, shares), Typeface.Cut.PLAIN));
      into.close().close();
    }
    into.close();
  }

  private double width(Block.Table.Column column, int shares) {
    return measure * column.share() / shares - 2 * side();
  }

  private double side() {
    return 0.35 * setting.page().size();
  }

  private String padding() {
    return Points.pt(0.22 * setting.page().size()) + " " + Points.pt(side());
  }

  private String cell(List<Piece> pieces, double width, Typeface.Cut cut) {
    return PieceSetter.set(pieces, setting, PieceSetter.Manner.alone(width), cut).objects();
  }

  private static String align(Block.Table.Column column) {
    return switch (column.placing()) {
      case START -> "start";
      case CENTRE -> "center";
      case END -> "end";
    };
  }
}
