package rootwright.press.deliverable;

import static rootwright.press.document.Piece.line;

import java.util.ArrayList;
import java.util.List;
import rootwright.press.document.Audience;
import rootwright.press.document.Block;
import rootwright.press.document.Piece;
import rootwright.press.paper.Paper;
import rootwright.press.paper.PaperItem;
import rootwright.press.paper.Task;
import rootwright.press.paper.Version;
import rootwright.press.prose.PlainText;
import rootwright.working.solve.Solution;

/** How work is marked, line by line of the shortest route. */
public final class MarkingScheme implements Deliverable {

  @Override
  public String name() {
    return "marks";
  }

  @Override
  public String subtitle() {
    return "marking scheme";
  }

  @Override
  public Audience audience() {
    return Audience.COACH;
  }

  @Override
  public List<Block> blocks(Paper paper, Version version) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(
        Block.paragraph(
            "M is given for a right method, also with wrong numbers. A is given for a right value"
                + " and needs the M before it. B stands alone. A value that follows rightly from a"
                + " wrong earlier value earns its A once, unless the slip made the work easier."
                + " Other right routes earn the same total."));
    for (int k = 0; k < version.items().size(); k++) {
      PaperItem item = version.items().get(k);
      Task task = item.task();
      blocks.add(Items.heading(k + 1));
      blocks.add(new Block.Paragraph(Wording.of(task)));
      if (task instanceof Task.Find find) {
        blocks.add(scheme(find.current().solution(), item.points()));
      } else {
        blocks.add(Block.paragraph("Marked by reading."));
      }
    }
    return blocks;
  }

  /** The marks that an item is worth where nobody decided otherwise: those of its scheme. */
  public static int total(Solution solution) {
    return LineMarks.total(solution);
  }

  private static Block scheme(Solution solution, int points) {
    List<LineMarks> marks =
        solution.routes().isEmpty() ? List.of() : LineMarks.of(solution.routes().get(0));
    List<List<List<Piece>>> rows = new ArrayList<>();
    for (LineMarks line : marks) {
      rows.add(
          List.of(
              WorkingBlocks.claim(line.step()),
              PlainText.kept(line.step().reason()),
              line(String.join(" ", line.marks()))));
    }
    int total = LineMarks.total(solution);
    if (marks.isEmpty()) {
      List<Piece> answer = AnswerPieces.exact(solution.answer());
      rows.add(List.of(answer, line("the answer"), line("B1")));
    }
    return new Block.Table(
        line(
            total == points
                ? "Total: %d".formatted(total)
                : "Total: %d marks for %d points".formatted(total, points)),
        List.of(
            new Block.Table.Column(line("Line"), Block.Table.Placing.START, 7),
            new Block.Table.Column(line("For"), Block.Table.Placing.START, 4),
            new Block.Table.Column(line("Marks"), Block.Table.Placing.END, 2)),
        rows);
  }
}
