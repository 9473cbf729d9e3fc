package rootwright.press.deliverable;

import static rootwright.press.document.Piece.line;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import rootwright.press.document.Audience;
import rootwright.press.document.Block;
import rootwright.press.document.Piece;
import rootwright.press.paper.Form;
import rootwright.press.paper.Paper;
import rootwright.press.paper.PaperItem;
import rootwright.press.paper.Task;
import rootwright.press.paper.Version;

/**
 * All versions side by side, item by item: statement, key and level, so that nobody marks version B
 * with the key of version A.
 */
final class ComparisonSheet implements Deliverable {

  @Override
  public String name() {
    return "compare";
  }

  @Override
  public String subtitle() {
    return "versions compared";
  }

  @Override
  public Audience audience() {
    return Audience.COACH;
  }

  @Override
  public String shownMark(String mark) {
    return "";
  }

  @Override
  public List<Block> blocks(Paper paper, Version version) {
    List<Version> versions = paper.content().versions();
    List<Block> blocks = new ArrayList<>();
    for (int k = 0; k < version.items().size(); k++) {
      blocks.add(Items.heading(k + 1));
      blocks.add(item(versions, k));
    }
    for (Version one : versions) {
      Map<String, Integer> letters = letters(one);
      if (!letters.isEmpty()) {
        blocks.add(
            Block.paragraph(
                "Key letters%s: %s."
                    .formatted(
                        one.mark().isEmpty() ? "" : " in version " + one.mark(),
                        letters.toString().replaceAll("[{}]", "").replace('=', ' '))));
      }
    }
    return blocks;
  }

  private static Block item(List<Version> versions, int place) {
    List<List<List<Piece>>> rows = new ArrayList<>();
    for (Version version : versions) {
      PaperItem item = version.items().get(place);
      rows.add(
          List.of(
              line(version.mark()),
              Wording.of(item.task()),
              key(item.task()),
              item.level().map(level -> line(new Piece.Decimal(level))).orElse(List.of())));
    }
    return new Block.Table(
        List.of(),
        List.of(
            new Block.Table.Column(line("Version"), Block.Table.Placing.CENTRE, 2),
            new Block.Table.Column(line("Statement"), Block.Table.Placing.START, 12),
            new Block.Table.Column(line("Key"), Block.Table.Placing.START, 4),
            new Block.Table.Column(line("Level"), Block.Table.Placing.END, 2)),
        rows);
  }

  private static List<Piece> key(Task task) {
    if (!(task instanceof Task.Find find)) {
      return line("a proof");
    }
    List<Piece> key = new ArrayList<>();
    if (find.form() instanceof Form.Choice choice) {
      key.add(
          Piece.strong(
              Piece.words(Items.letter(choice, find.current().solution().answer()) + " ")));
    }
    key.addAll(AnswerPieces.exact(find.current().solution().answer()));
    return key;
  }

  private static Map<String, Integer> letters(Version version) {
    Map<String, Integer> letters = new TreeMap<>();
    for (PaperItem item : version.items()) {
      if (item.task() instanceof Task.Find find && find.form() instanceof Form.Choice choice) {
        for (int k = 0; k < choice.options().size(); k++) {
          letters.merge(Form.Choice.letter(k), 0, Integer::sum);
        }
        letters.merge(Items.letter(choice, find.current().solution().answer()), 1, Integer::sum);
      }
    }
    return letters;
  }
}
