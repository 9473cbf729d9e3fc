package rootwright.press.deliverable;

import java.util.ArrayList;
import java.util.List;
import rootwright.press.document.Audience;
import rootwright.press.document.Block;
import rootwright.press.document.Piece;
import rootwright.press.paper.Paper;
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
    blocks.add(new Block.NameLine(List.of("Name", "Class", "Date")));
    blocks.addAll(instruction(paper));
    blocks.addAll(Items.unscored(version));
    return blocks;
  }

  /** The line that fixes what the roots are. */
  static List<Block> instruction(Paper paper) {
    String line = paper.content().instruction();
    return line.isBlank()
        ? List.of()
        : List.of(new Block.Paragraph(List.of(Piece.emphasis(Piece.words(line)))));
  }
}
