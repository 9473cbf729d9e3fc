package rootwright.press.pdf;

import java.util.List;
import rootwright.press.document.Block;
import rootwright.press.document.Piece;
import rootwright.press.markup.Markup;

/** Sets tables with lines above, below and under the heads, and none between columns. */
final class TableSetter {

  /** Tables of up to so many rows are kept on one page. */
  private static final int KEPT_WHOLE = 8;

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
    double[] widths = widths(table);
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
        "keep-together.within-page",
        table.rows().size() <= KEPT_WHOLE ? "100" : "auto",
        "space-before",
        "0.6em",
        "space-after",
        "0.8em");
    for (double width : widths) {
      into.empty("fo:table-column", "column-width", Points.pt(width));
    }
    head(table, widths);
    into.open("fo:table-body");
    if (table.rows().isEmpty()) {
      // A table body must have a row.
      row(table, table.columns().stream().map(column -> List.<Piece>of()).toList(), widths);
    }
    table.rows().forEach(row -> row(table, row, widths));
    return into.close().close();
  }

  private void head(Block.Table table, double[] widths) {
    into.open("fo:table-header").open("fo:table-row");
    for (int k = 0; k < widths.length; k++) {
      Block.Table.Column column = table.columns().get(k);
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
      into.raw(cell(column.head(), widths[k] - 2 * side(), Typeface.Cut.BOLD));
      into.close().close();
    }
    into.close().close();
  }

  private void row(Block.Table table, List<List<Piece>> row, double[] widths) {
    into.open("fo:table-row", "keep-together.within-page", "always");
    for (int k = 0; k < row.size(); k++) {
      Block.Table.Column column = table.columns().get(k);
      into.open("fo:table-cell", "padding", padding(), "display-align", "center");
      into.open(
          "fo:block", "start-indent", "0pt", "text-indent", "0pt", "text-align", align(column));
      into.raw(cell(row.get(k), widths[k] - 2 * side(), Typeface.Cut.PLAIN));
      into.close().close();
    }
    into.close();
  }

  /**
   * The widths by the shares, but no column narrower than its longest word; what such columns take
   * is taken from the others.
   */
  private double[] widths(Block.Table table) {
    int count = table.columns().size();
    double[] widths = new double[count];
    double fixed = 0;
    int open = table.columns().stream().mapToInt(Block.Table.Column::share).sum();
    boolean[] held = new boolean[count];
    for (int round = 0; round < count; round++) {
      for (int k = 0; k < count; k++) {
        if (!held[k]) {
          int share = table.columns().get(k).share();
          widths[k] = (measure - fixed) * share / open;
          double least = longestWord(table, k) + 2 * side() + 0.5;
          if (widths[k] < least && fixed + least < measure && open > share) {
            widths[k] = least;
            held[k] = true;
            fixed += least;
            open -= share;
            break;
          }
        }
      }
    }
    for (int k = 0; k < count; k++) {
      if (!held[k]) {
        widths[k] = (measure - fixed) * table.columns().get(k).share() / open;
      }
    }
    return widths;
  }

  private double longestWord(Block.Table table, int column) {
    double longest = longestWord(table.columns().get(column).head(), Typeface.Cut.BOLD);
    for (List<List<Piece>> row : table.rows()) {
      longest = Math.max(longest, longestWord(row.get(column), Typeface.Cut.PLAIN));
    }
    return longest;
  }

  private double longestWord(List<Piece> pieces, Typeface.Cut cut) {
    double longest = 0;
    for (Piece piece : pieces) {
      if (piece instanceof Piece.Words words) {
        for (String word : words.text().split(" ")) {
          longest = Math.max(longest, setting.width(word, cut));
        }
      }
    }
    return longest;
  }

  private double side() {
    return 0.6 * setting.page().size();
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
