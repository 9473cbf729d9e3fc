package rootwright.press.deliverable;

import static rootwright.press.document.Piece.line;

import java.util.ArrayList;
import java.util.List;
import rootwright.press.document.Audience;
import rootwright.press.document.Block;
import rootwright.press.document.Document;
import rootwright.press.document.Identity;
import rootwright.press.document.Layout;
import rootwright.press.document.Piece;
import rootwright.press.paper.BlockedException;
import rootwright.press.paper.Paper;
import rootwright.press.paper.PaperItem;
import rootwright.press.paper.Task;
import rootwright.press.paper.Version;

/** The sheet that corrects a paper which is already out: what was wrong, and what holds now. */
public final class Erratum {

  private Erratum() {}

  /**
   * The differences between a frozen paper and a later edition of it.
   *
   * @param cause why there is a new edition, one sentence
   * @throws BlockedException if a key of either is stale
   */
  public static Document document(Paper before, Paper after, String cause, Layout layout)
      throws BlockedException {
    before.requirePrintable();
    after.requirePrintable();
    List<Block> blocks = new ArrayList<>();
    blocks.add(
        Block.paragraph(
            "Edition %d (%s) corrects edition %d (%s). %s"
                .formatted(after.edition(), after.code(), before.edition(), before.code(), cause)));
    for (Version version : after.content().versions()) {
      before.content().versions().stream()
          .filter(old -> old.mark().equals(version.mark()))
          .forEach(old -> differences(old, version, blocks));
    }
    return new Document(
        after.content().title() + ": erratum",
        after.content().language(),
        Audience.COACH,
        layout,
        new Identity(after.code(), "", after.content().date()),
        blocks);
  }

  private static void differences(Version old, Version now, List<Block> blocks) {
    int common = Math.min(old.items().size(), now.items().size());
    for (int k = 0; k < Math.max(old.items().size(), now.items().size()); k++) {
      String where =
          (now.mark().isEmpty() ? "" : "Version " + now.mark() + ", ") + "item " + (k + 1);
      if (k >= common) {
        blocks.add(
            Block.paragraph(where + (k < now.items().size() ? " is new." : " is taken out.")));
      } else if (!same(old.items().get(k), now.items().get(k))) {
        blocks.add(Block.heading(where));
        blocks.add(table(old.items().get(k), now.items().get(k)));
      }
    }
  }

  private static boolean same(PaperItem old, PaperItem now) {
    return old.points() == now.points()
        && Wording.of(old.task()).equals(Wording.of(now.task()))
        && key(old.task()).equals(key(now.task()));
  }

  private static Block table(PaperItem old, PaperItem now) {
    return new Block.Table(
        List.of(),
        List.of(
            new Block.Table.Column(List.of(), Block.Table.Placing.START, 2),
            new Block.Table.Column(line("Statement"), Block.Table.Placing.START, 12),
            new Block.Table.Column(line("Key"), Block.Table.Placing.START, 4),
            new Block.Table.Column(line("Points"), Block.Table.Placing.END, 2)),
        List.of(row("before", old), row("now", now)));
  }

  private static List<List<Piece>> row(String when, PaperItem item) {
    return List.of(
        line(when), Wording.of(item.task()), key(item.task()), line(String.valueOf(item.points())));
  }

  private static List<Piece> key(Task task) {
    return task instanceof Task.Find find
        ? AnswerPieces.exact(find.current().solution().answer())
        : line("a proof");
  }
}
