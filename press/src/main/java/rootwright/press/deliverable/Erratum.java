package rootwright.press.deliverable;

import static rootwright.press.document.Piece.line;

import java.util.ArrayList;
import java.util.List;
import rootwright.press.document.Audience;
import rootwright.press.document.Block;
import rootwright.press.document.Piece;
import rootwright.press.paper.Form;
import rootwright.press.paper.Paper;
import rootwright.press.paper.PaperItem;
import rootwright.press.paper.Task;
import rootwright.press.paper.Version;

/**
 * The sheets that correct a paper which is already out: what was wrong, and what holds now. One is
 * for the coach and holds the keys; the other goes to those who have the old sheet.
 */
public final class Erratum implements Deliverable {

  private final Paper before;
  private final String cause;
  private final Audience audience;

  private Erratum(Paper before, String cause, Audience audience) {
    this.before = before;
    this.cause = cause;
    this.audience = audience;
  }

  /**
   * Both sheets for the edition after a frozen paper.
   *
   * @param cause why there is a new edition, one sentence
   */
  public static List<Deliverable> sheets(Paper before, String cause) {
    return List.of(
        new Erratum(before, cause, Audience.COACH), new Erratum(before, cause, Audience.STUDENT));
  }

  @Override
  public String name() {
    return audience == Audience.COACH ? "erratum" : "notice";
  }

  @Override
  public String subtitle() {
    return audience == Audience.COACH ? "erratum" : "correction";
  }

  @Override
  public Audience audience() {
    return audience;
  }

  @Override
  public String shownMark(String mark) {
    return "";
  }

  @Override
  public List<Block> blocks(Paper after, Version any) {
    List<Block> blocks = new ArrayList<>();
    String said = audience == Audience.COACH ? " " + cause : "";
    blocks.add(
        Block.paragraph(
            "Edition %d (%s) corrects edition %d (%s).%s"
                .formatted(after.edition(), after.code(), before.edition(), before.code(), said)));
    for (Version version : after.content().versions()) {
      before.content().versions().stream()
          .filter(old -> old.mark().equals(version.mark()))
          .forEach(old -> differences(old, version, blocks));
    }
    return blocks;
  }

  private void differences(Version old, Version now, List<Block> blocks) {
    int common = Math.min(old.items().size(), now.items().size());
    for (int k = 0; k < Math.max(old.items().size(), now.items().size()); k++) {
      String where =
          (now.mark().isEmpty() ? "Item " : "Version " + now.mark() + ", item ") + (k + 1);
      if (k >= common) {
        blocks.add(
            Block.paragraph(where + (k < now.items().size() ? " is new." : " is taken out.")));
      } else if (!shownAs(old.items().get(k)).equals(shownAs(now.items().get(k)))) {
        blocks.add(Block.heading(where));
        blocks.add(table(old.items().get(k), now.items().get(k)));
      }
    }
  }

  private Block table(PaperItem old, PaperItem now) {
    List<Block.Table.Column> columns = new ArrayList<>();
    columns.add(new Block.Table.Column(List.of(), Block.Table.Placing.START, 2));
    columns.add(new Block.Table.Column(line("Statement"), Block.Table.Placing.START, 12));
    columns.add(new Block.Table.Column(line("Points"), Block.Table.Placing.END, 2));
    if (audience == Audience.COACH) {
      columns.add(new Block.Table.Column(line("Key"), Block.Table.Placing.START, 4));
    }
    return new Block.Table(List.of(), columns, List.of(row("before", old), row("now", now)));
  }

  private List<List<Piece>> row(String when, PaperItem item) {
    List<List<Piece>> row = new ArrayList<>();
    row.add(line(when));
    row.addAll(shownAs(item));
    return row;
  }

  /** What a reader of this sheet may see of an item. */
  private List<List<Piece>> shownAs(PaperItem item) {
    List<List<Piece>> shown = new ArrayList<>();
    shown.add(statement(item.task()));
    shown.add(line(String.valueOf(item.points())));
    if (audience == Audience.COACH) {
      shown.add(key(item.task()));
    }
    return shown;
  }

  /** The statement with its options, if it has any. */
  private static List<Piece> statement(Task task) {
    List<Piece> statement = new ArrayList<>(Wording.of(task));
    if (task instanceof Task.Find find && find.form() instanceof Form.Choice choice) {
      for (int k = 0; k < choice.options().size(); k++) {
        statement.add(Piece.words(" (" + Form.Choice.letter(k) + ") "));
        statement.addAll(AnswerPieces.exact(choice.options().get(k).value()));
      }
    }
    return statement;
  }

  private static List<Piece> key(Task task) {
    return task instanceof Task.Find find
        ? AnswerPieces.exact(find.current().solution().answer())
        : line("a proof");
  }
}
