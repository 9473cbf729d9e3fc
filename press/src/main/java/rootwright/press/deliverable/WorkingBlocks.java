package rootwright.press.deliverable;

import java.util.ArrayList;
import java.util.List;
import rootwright.press.document.Block;
import rootwright.press.document.Piece;
import rootwright.working.route.Working;
import rootwright.working.step.Step;

/** The lines of a working, one idea a line, the reason at its end. */
final class WorkingBlocks {

  private WorkingBlocks() {}

  static List<Block> lines(Working working) {
    List<Block> lines = new ArrayList<>();
    for (Step step : working.steps()) {
      lines.add(new Block.WorkedLine(Piece.line(step.shown()), Piece.line(step.reason())));
    }
    return lines;
  }
}
