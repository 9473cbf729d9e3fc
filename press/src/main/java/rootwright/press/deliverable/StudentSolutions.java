package rootwright.press.deliverable;

import static rootwright.press.document.Piece.line;

import java.util.ArrayList;
import java.util.List;
import rootwright.press.document.Audience;
import rootwright.press.document.Block;
import rootwright.press.document.Piece;
import rootwright.press.paper.Paper;
import rootwright.press.paper.Task;
import rootwright.press.paper.Version;
import rootwright.press.prose.PlainText;
import rootwright.working.route.Working;
import rootwright.working.solve.Solution;

/**
 * Full solutions for students who have handed in: the shortest route, and a second way where there
 * is one that teaches something else.
 */
final class StudentSolutions implements Deliverable {

  @Override
  public String name() {
    return "solutions";
  }

  @Override
  public String subtitle() {
    return "solutions";
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
    List<Working> routes = solution.routes();
    if (!routes.isEmpty()) {
      blocks.addAll(WorkingBlocks.lines(routes.get(0)));
      routes
          .get(0)
          .conditions()
          .forEach(condition -> blocks.add(new Block.Paragraph(PlainText.kept(condition))));
    }
    List<Piece> answer = new ArrayList<>(line(Piece.strong(Piece.words("Answer: "))));
    answer.addAll(AnswerPieces.withDecimal(solution.answer()));
    answer.add(Piece.words("."));
    blocks.add(new Block.Paragraph(answer));
    blocks.add(Block.paragraph(AnswerKey.secondWay(solution.second())));
    routes.stream()
        .skip(1)
        .filter(other -> !other.teaches().equals(routes.get(0).teaches()))
        .findFirst()
        .ifPresent(second -> secondWay(second, blocks));
  }

  private static void secondWay(Working working, List<Block> blocks) {
    blocks.add(new Block.Heading(2, line("A second way: " + working.title())));
    blocks.addAll(WorkingBlocks.lines(working));
  }
}
