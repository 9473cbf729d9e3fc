package rootwright.press.deliverable;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import rootwright.press.document.Audience;
import rootwright.press.document.Block;
import rootwright.press.document.Piece;
import rootwright.press.paper.Paper;
import rootwright.press.paper.PaperItem;
import rootwright.press.paper.Version;
import rootwright.press.prose.PlainText;

/** The hint ladders of the items that have one, first hint first. No solution follows. */
final class HintSheet implements Deliverable {

  @Override
  public String name() {
    return "hints";
  }

  @Override
  public String subtitle() {
    return "hints";
  }

  @Override
  public Audience audience() {
    return Audience.STUDENT;
  }

  @Override
  public List<Block> blocks(Paper paper, Version version) {
    List<Block> blocks = new ArrayList<>();
    for (int k = 0; k < version.items().size(); k++) {
      PaperItem item = version.items().get(k);
      if (!item.hints().isEmpty()) {
        blocks.add(Items.heading(k + 1));
        blocks.add(
            new Block.Entries(
                Block.Entries.Marker.NUMBER, item.hints().stream().map(HintSheet::set).toList()));
      }
    }
    return blocks;
  }

  /** A hint with the formulas among its words found. */
  private static List<Piece> set(List<Piece> hint) {
    return hint.stream()
        .flatMap(
            piece ->
                piece instanceof Piece.Words words
                    ? PlainText.kept(words.text()).stream()
                    : Stream.of(piece))
        .toList();
  }
}
