package rootwright.press.deliverable;

import java.util.ArrayList;
import java.util.List;
import rootwright.algebra.notation.Formula;
import rootwright.press.document.Block;
import rootwright.press.document.Piece;
import rootwright.press.prose.PlainText;
import rootwright.working.route.Working;
import rootwright.working.step.Step;

/** The lines of a working, one idea a line, the reason at its end. */
final class WorkingBlocks {

  private WorkingBlocks() {}

  static List<Block> lines(Working working) {
    List<Block> lines = new ArrayList<>();
    for (Step step : working.steps()) {
      lines.add(new Block.WorkedLine(claim(step), PlainText.kept(step.reason())));
    }
    return lines;
  }

  /** What a line says; what is said in words may have formulas in it. */
  static List<Piece> claim(Step step) {
    return step.shown() instanceof Formula.Words words
        ? PlainText.kept(words.text())
        : Piece.line(step.shown());
  }
}
