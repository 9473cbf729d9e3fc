package rootwright.press.deliverable;

import java.util.ArrayList;
import java.util.List;
import rootwright.press.document.Audience;
import rootwright.press.document.Block;
import rootwright.press.paper.Paper;
import rootwright.press.paper.Version;

/** The sheet with what is right below each item; what a testing program is given. */
final class ScoredSheet implements Deliverable {

  @Override
  public String name() {
    return "scored";
  }

  @Override
  public String subtitle() {
    return "with answers";
  }

  @Override
  public Audience audience() {
    return Audience.COACH;
  }

  @Override
  public List<Block> blocks(Paper paper, Version version) {
    List<Block> blocks = new ArrayList<>(Worksheet.instruction(paper));
    blocks.addAll(Items.scored(version));
    return blocks;
  }
}
