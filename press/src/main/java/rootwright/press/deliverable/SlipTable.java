package rootwright.press.deliverable;

import static rootwright.press.document.Piece.line;

import java.util.List;
import rootwright.press.document.Block;
import rootwright.press.prose.PlainText;
import rootwright.working.solve.Solution;

/** The wrong turnings of a problem with the answers they give. */
final class SlipTable {

  private SlipTable() {}

  static Block of(Solution solution) {
    return new Block.Table(
        List.of(),
        List.of(
            new Block.Table.Column(line("Wrong answer"), Block.Table.Placing.END, 3),
            new Block.Table.Column(line("What leads to it"), Block.Table.Placing.START, 9)),
        solution.slips().stream()
            .map(slip -> List.of(AnswerPieces.exact(slip.value()), PlainText.kept(slip.text())))
            .toList());
  }
}
