package rootwright.press.deliverable;

import static rootwright.press.document.Piece.line;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import rootwright.press.document.Audience;
import rootwright.press.document.Block;
import rootwright.press.document.Piece;
import rootwright.press.paper.Paper;
import rootwright.press.paper.Task;
import rootwright.press.paper.Version;
import rootwright.press.prose.PlainText;
import rootwright.working.route.Working;
import rootwright.working.solve.Solution;

/** For colleagues: every route with its cost, why others fail, every slip and why it fails. */
final class ColleagueSolutions implements Deliverable {

  @Override
  public String name() {
    return "routes";
  }

  @Override
  public String subtitle() {
    return "all routes";
  }

  @Override
  public Audience audience() {
    return Audience.COACH;
  }

  @Override
  public List<Block> blocks(Paper paper, Version version) {
    List<Block> blocks = new ArrayList<>();
    for (int k = 0; k < version.items().size(); k++) {
      Task task = version.items().get(k).task();
      blocks.add(Items.heading(k + 1));
      blocks.add(new Block.Paragraph(Wording.of(task)));
      if (task instanceof Task.Find find) {
        solved(find.current().solution(), blocks);
      } else if (task instanceof Task.Prove prove) {
        prove.proof().forEach(proof -> blocks.add(new Block.Paragraph(proof)));
      }
    }
    return blocks;
  }

  private static void solved(Solution solution, List<Block> blocks) {
    List<Piece> answer = new ArrayList<>(line(Piece.strong(Piece.words("Answer: "))));
    answer.addAll(AnswerPieces.withDecimal(solution.answer()));
    blocks.add(new Block.Paragraph(answer));
    solution
        .warnings()
        .forEach(
            warning -> blocks.add(new Block.Paragraph(PlainText.kept("Note: " + warning.text()))));
    for (Working working : solution.routes()) {
      blocks.add(
          new Block.Heading(
              2,
              line(
                  Handout.capital(working.title())
                      + " (%d lines, cost ".formatted(working.cost().lines()),
                  new Piece.Decimal(working.cost().total()),
                  ")")));
      blocks.addAll(WorkingBlocks.lines(working));
      working
          .conditions()
          .forEach(condition -> blocks.add(new Block.Paragraph(PlainText.kept(condition))));
    }
    listed(
        "Routes that do not apply",
        solution.declined().stream()
            .map(route -> PlainText.kept(route.title() + ": " + route.why())),
        blocks);
    if (!solution.slips().isEmpty()) {
      blocks.add(new Block.Heading(2, line("Slips that show")));
      blocks.add(SlipTable.of(solution));
    }
    listed(
        "Slips that do not show here",
        solution.silent().stream()
            .map(slip -> PlainText.kept(slip.name().replace('-', ' ') + ": " + slip.why())),
        blocks);
  }

  private static void listed(String title, Stream<List<Piece>> entries, List<Block> blocks) {
    List<List<Piece>> all = entries.toList();
    if (!all.isEmpty()) {
      blocks.add(new Block.Heading(2, line(title)));
      blocks.add(new Block.Entries(Block.Entries.Marker.DASH, all));
    }
  }
}
