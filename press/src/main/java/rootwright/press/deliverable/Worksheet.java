package rootwright.press.deliverable;

import java.util.ArrayList;
import java.util.List;
import rootwright.press.document.Audience;
import rootwright.press.document.Block;
import rootwright.press.document.Piece;
import rootwright.press.paper.Paper;
import rootwright.press.paper.PaperItem;
import rootwright.press.paper.Version;

/** The sheet that students work on. */
final class Worksheet implements Deliverable {

  @Override
  public String name() {
    return "sheet";
  }

  @Override
  public String subtitle() {
    return "";
  }

  @Override
  public Audience audience() {
    return Audience.STUDENT;
  }

  @Override
  public List<Block> blocks(Paper paper, Version version) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Block.NameLine(List.of("Name", "Class")));
    blocks.add(Block.paragraph(occasion(paper, version)));
    blocks.addAll(instruction(paper));
    blocks.addAll(Items.unscored(version));
    return blocks;
  }

  /** The day, how many items there are, and what they are worth together. */
  private static String occasion(Paper paper, Version version) {
    int points = version.items().stream().mapToInt(PaperItem::points).sum();
    int items = version.items().size();
    return "%s · %s · %s"
        .formatted(
            paper.content().language().date(paper.content().date()),
            paper.content().language().word(items == 1 ? "item" : "items", items),
            paper.content().language().points(points));
  }

  /** The line that fixes what the roots are. */
  static List<Block> instruction(Paper paper) {
    String line = paper.content().instruction();
    return line.isBlank()
        ? List.of()
        : List.of(new Block.Paragraph(List.of(Piece.emphasis(Piece.words(line)))));
  }
}
