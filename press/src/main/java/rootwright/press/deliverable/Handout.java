package rootwright.press.deliverable;

import static rootwright.press.document.Piece.line;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rootwright.press.document.Audience;
import rootwright.press.document.Block;
import rootwright.press.document.Piece;
import rootwright.press.paper.Paper;
import rootwright.press.paper.PaperItem;
import rootwright.press.paper.Task;
import rootwright.press.paper.Version;
import rootwright.press.prose.PlainText;
import rootwright.working.route.Working;
import rootwright.working.solve.Solution;

/**
 * A handout from the problems of a paper: up to three things to know, each with its conditions and
 * one solved sample, what goes wrong, and up to three problems to try with the answers overleaf.
 *
 * <p>The shortest problem of each route is a sample, as long as three problems are left to try and
 * everything but the answers stands on one page.
 */
final class Handout implements Deliverable {

  private static final int FACTS = 3;
  private static final int TO_TRY = 3;
  private static final int WRONG = 4;

  /** Lines of text of the usual size that a page has for the facts. */
  private static final int PAGE = 20;

  @Override
  public String name() {
    return "handout";
  }

  @Override
  public String subtitle() {
    return "handout";
  }

  @Override
  public Audience audience() {
    return Audience.COACH;
  }

  @Override
  public List<Block> blocks(Paper paper, Version version) {
    List<Solution> solved =
        version.items().stream()
            .map(PaperItem::task)
            .filter(Task.Find.class::isInstance)
            .map(task -> ((Task.Find) task).current().solution())
            .filter(solution -> !solution.routes().isEmpty())
            .toList();
    int facts = Math.max(1, Math.min(FACTS, solved.size() - TO_TRY));
    Map<String, Solution> samples = samples(solved, facts);
    List<Solution> others =
        solved.stream().filter(solution -> !samples.containsValue(solution)).toList();
    List<Block> blocks = new ArrayList<>();
    samples.values().forEach(sample -> fact(sample, blocks));
    wrong(samples, blocks);
    toTry(others.subList(0, Math.min(TO_TRY, others.size())), blocks);
    return blocks;
  }

  /**
   * A sample for each fact, the shortest of its route, as many as one page holds beside what goes
   * wrong and what is left to try; one at least.
   */
  private static Map<String, Solution> samples(List<Solution> solved, int facts) {
    Map<String, Solution> shortest = new LinkedHashMap<>();
    for (Solution solution : solved) {
      shortest.merge(
          solution.routes().get(0).route(),
          solution,
          (first, later) -> height(later) < height(first) ? later : first);
    }
    Map<String, Solution> samples = new LinkedHashMap<>();
    int height = 0;
    for (Map.Entry<String, Solution> fact : shortest.entrySet()) {
      int more = height(fact.getValue());
      if (samples.size() < facts && (samples.isEmpty() || height + more <= PAGE)) {
        samples.put(fact.getKey(), fact.getValue());
        height += more;
      }
    }
    return samples;
  }

  /** About how many lines of text a fact with its sample takes. */
  private static int height(Solution sample) {
    Working working = sample.routes().get(0);
    int conditions = sample.conditions().size() + working.conditions().size();
    return 4 + sample.statement().length() / 80 + conditions + 2 * working.steps().size();
  }

  private static void fact(Solution sample, List<Block> blocks) {
    Working working = sample.routes().get(0);
    blocks.add(new Block.Heading(1, line(capital(working.title()))));
    blocks.add(new Block.Paragraph(PlainText.kept(working.teaches())));
    List<String> conditions = new ArrayList<>(sample.conditions());
    conditions.addAll(working.conditions());
    if (!conditions.isEmpty()) {
      blocks.add(
          new Block.Entries(
              Block.Entries.Marker.DASH,
              conditions.stream().distinct().map(PlainText::kept).toList()));
    }
    blocks.add(new Block.Paragraph(Wording.of(sample)));
    blocks.addAll(WorkingBlocks.lines(working));
  }

  private static void wrong(Map<String, Solution> samples, List<Block> blocks) {
    List<List<Piece>> slips =
        samples.values().stream()
            .flatMap(sample -> sample.slips().stream())
            .map(Solution.WrongTurning::text)
            .distinct()
            .limit(WRONG)
            .map(PlainText::kept)
            .toList();
    if (!slips.isEmpty()) {
      blocks.add(
          new Block.Frame(
              line("What goes wrong"),
              List.of(new Block.Entries(Block.Entries.Marker.DASH, slips))));
    }
  }

  private static void toTry(List<Solution> others, List<Block> blocks) {
    if (others.isEmpty()) {
      return;
    }
    blocks.add(Block.heading("To try"));
    blocks.add(
        new Block.Entries(Block.Entries.Marker.NUMBER, others.stream().map(Wording::of).toList()));
    blocks.add(new Block.PageBreak());
    blocks.add(Block.heading("Answers"));
    blocks.add(
        new Block.Entries(
            Block.Entries.Marker.NUMBER,
            others.stream().map(other -> AnswerPieces.exact(other.answer())).toList()));
  }

  /** With a capital letter at the beginning, for a heading. */
  static String capital(String title) {
    return title.isEmpty() ? title : Character.toUpperCase(title.charAt(0)) + title.substring(1);
  }
}
