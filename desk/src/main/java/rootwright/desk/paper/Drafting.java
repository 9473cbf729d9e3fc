package rootwright.desk.paper;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import rootwright.algebra.notation.UnreadableException;
import rootwright.press.deliverable.MarkingScheme;
import rootwright.press.document.Piece;
import rootwright.press.paper.Content;
import rootwright.press.paper.Paper;
import rootwright.press.paper.PaperItem;
import rootwright.press.paper.State;
import rootwright.press.paper.Task;
import rootwright.press.paper.Version;
import rootwright.press.paper.VersionOptions;
import rootwright.press.paper.Versions;
import rootwright.working.problem.Statement;
import rootwright.working.solve.Solution;

/** Makes the draft of a paper from an order: siblings, options, hints, points, the versions. */
final class Drafting {

  private static final int POINTS_OF_A_PROOF = 8;

  private final PaperOrder order;
  private final PaperReading working;
  private final Renumbering renumbering;

  Drafting(PaperOrder order, PaperReading working, SiblingSource siblings) {
    this.order = order;
    this.working = working;
    this.renumbering = new Renumbering(siblings, working::solution);
  }

  /**
   * The draft.
   *
   * @throws UnreadableException if a problem cannot be read
   * @throws IllegalArgumentException if there are not enough siblings, or an order is out of range
   */
  FiledPaper draft() throws UnreadableException {
    IdentityHashMap<PaperItem, String> names = new IdentityHashMap<>();
    List<Version> versions =
        order.arrangement() == Arrangement.RENUMBERED && order.versions() > 1
            ? renumbered(names)
            : reordered(names);
    Map<String, List<String>> listed = new LinkedHashMap<>();
    Map<String, FiledItem> items = new LinkedHashMap<>();
    Map<Integer, Map<String, FiledItem>> byPlace = new HashMap<>();
    for (Version version : versions) {
      List<String> marked = new ArrayList<>();
      for (PaperItem item : version.items()) {
        String name = Objects.requireNonNull(names.get(item));
        marked.add(name);
        int place = Integer.parseInt(name.replaceAll("\\D.*", ""));
        byPlace
            .computeIfAbsent(place, any -> new LinkedHashMap<>())
            .put(name, PaperFiling.item(item));
      }
      listed.put(version.mark(), marked);
    }
    for (int place = 1; place <= order.items().size(); place++) {
      items.putAll(byPlace.getOrDefault(place, Map.of()));
    }
    FiledPaper bare =
        new FiledPaper(
            order.title(),
            order.language().tag(),
            PaperOrder.INSTRUCTION,
            order.date(),
            1,
            State.DRAFT,
            "",
            Optional.empty(),
            items,
            listed);
    Content content =
        new Content(
            order.title(), order.language(), PaperOrder.INSTRUCTION, order.date(), versions);
    return PaperFiling.of(bare, Paper.draft(VersionOptions.filled(content, order.choices())));
  }

  private List<Version> reordered(IdentityHashMap<PaperItem, String> names)
      throws UnreadableException {
    List<PaperItem> items = new ArrayList<>();
    for (ItemOrder ordered : order.items()) {
      items.add(first(ordered));
      names.put(items.get(items.size() - 1), String.valueOf(items.size()));
    }
    return order.versions() == 1
        ? List.of(new Version("", items))
        : Versions.reordered(items, order.versions(), order.seed());
  }

  private List<Version> renumbered(IdentityHashMap<PaperItem, String> names)
      throws UnreadableException {
    List<List<PaperItem>> places = new ArrayList<>();
    for (ItemOrder ordered : order.items()) {
      places.add(siblings(ordered));
    }
    List<Version> versions = Versions.renumbered(places);
    for (Version version : versions) {
      for (int k = 0; k < version.items().size(); k++) {
        names.putIfAbsent(version.items().get(k), (k + 1) + version.mark());
      }
    }
    return versions;
  }

  private List<PaperItem> siblings(ItemOrder ordered) throws UnreadableException {
    PaperItem first = first(ordered);
    List<PaperItem> siblings = new ArrayList<>();
    if (ordered instanceof ItemOrder.Problem problem) {
      Solution solution = working.solution(problem.statement());
      for (Renumbering.Worked worked :
          renumbering.of(
              new Renumbering.Worked(problem.statement(), solution),
              problem.form(),
              order.choices(),
              order.versions(),
              order.seed())) {
        siblings.add(
            worked.statement().equals(problem.statement())
                ? first
                : item(worked.statement(), worked.solution(), problem.form(), first.points()));
      }
      return siblings;
    }
    // A proof has no numbers to change: it is the same on every version.
    for (int k = 0; k < order.versions(); k++) {
      siblings.add(first);
    }
    return siblings;
  }

  private PaperItem first(ItemOrder ordered) throws UnreadableException {
    if (ordered instanceof ItemOrder.Problem problem) {
      Statement statement = problem.statement();
      Solution solution = working.solution(statement);
      return item(
          statement,
          solution,
          problem.form(),
          problem.points().orElse(MarkingScheme.total(solution)));
    }
    ItemOrder.Proof proof = (ItemOrder.Proof) ordered;
    List<List<Piece>> lines = new ArrayList<>();
    for (String line : proof.proof()) {
      lines.add(Prose.read(line));
    }
    return PaperItem.of(
        new Task.Prove(Prose.read(proof.claim()), lines), proof.points().orElse(POINTS_OF_A_PROOF));
  }

  private static PaperItem item(
      Statement statement, Solution solution, AnswerForm form, int points) {
    return PaperItem.worked(statement, solution, form.empty(), points);
  }
}
