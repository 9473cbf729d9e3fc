package rootwright.desk.paper;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import rootwright.algebra.notation.UnreadableException;
import rootwright.press.document.Language;
import rootwright.press.document.Piece;
import rootwright.press.paper.BlockedException;
import rootwright.press.paper.Checked;
import rootwright.press.paper.Checker;
import rootwright.press.paper.Complaint;
import rootwright.press.paper.Content;
import rootwright.press.paper.Form;
import rootwright.press.paper.Paper;
import rootwright.press.paper.PaperItem;
import rootwright.press.paper.Task;
import rootwright.press.paper.Version;
import rootwright.working.problem.Statement;
import rootwright.working.solve.Solution;

/**
 * Makes the paper that a file speaks of. Its problems are worked again, since a file holds keys and
 * no workings; a key that the working does not confirm stops everything.
 */
final class PaperReading {

  private final Checker checker;
  private final Map<Statement, Solution> worked = new ConcurrentHashMap<>();

  PaperReading(Checker checker) {
    this.checker = checker;
  }

  /** Works a statement, each once only. */
  Solution solution(Statement statement) throws UnreadableException {
    Solution known = worked.get(statement);
    if (known == null) {
      known = checker.read(statement);
      worked.put(statement, known);
    }
    return known;
  }

  /**
   * The paper as it is filed; items with a stale key stay without one.
   *
   * @throws BlockedException if an item cannot be read or a key in the file is not what is found
   */
  Paper asFiled(FiledPaper filed) throws BlockedException {
    return paper(filed, Set.copyOf(filed.stale()));
  }

  /**
   * The paper with every stale statement read anew: key, hints and level are found again, and so
   * are options where the file has none.
   *
   * @throws BlockedException if an item cannot be read
   */
  Paper readAnew(FiledPaper filed) throws BlockedException {
    return paper(filed, Set.of());
  }

  private Paper paper(FiledPaper filed, Set<String> left) throws BlockedException {
    workAhead(filed, left);
    List<Complaint> complaints = new ArrayList<>();
    Map<String, PaperItem> items = new LinkedHashMap<>();
    for (Map.Entry<String, FiledItem> entry : filed.items().entrySet()) {
      try {
        items.put(entry.getKey(), item(entry.getValue(), left.contains(entry.getKey())));
      } catch (UnreadableException unreadable) {
        complaints.add(
            new Complaint("", 0, "Item " + entry.getKey() + ": " + unreadable.refusal().text()));
      } catch (IllegalArgumentException wrong) {
        complaints.add(
            new Complaint("", 0, "Item " + entry.getKey() + ": " + wrong.getMessage() + "."));
      }
    }
    if (!complaints.isEmpty()) {
      throw new BlockedException(complaints);
    }
    List<Version> versions = new ArrayList<>();
    filed
        .versions()
        .forEach(
            (mark, names) ->
                versions.add(
                    new Version(
                        mark,
                        names.stream()
                            .map(name -> Objects.requireNonNull(items.get(name)))
                            .toList())));
    return new Paper(
        new Content(
            filed.title(),
            Language.of(filed.language()),
            filed.instruction(),
            filed.date(),
            versions),
        filed.state(),
        filed.code(),
        filed.edition());
  }

  /** Works the problems on as many threads as there are; what goes wrong is met again later. */
  private void workAhead(FiledPaper filed, Set<String> left) {
    Set<Statement> statements =
        filed.items().entrySet().stream()
            .filter(entry -> !left.contains(entry.getKey()))
            .map(Map.Entry::getValue)
            .filter(FiledItem.Problem.class::isInstance)
            .map(item -> ((FiledItem.Problem) item).statement())
            .collect(Collectors.toCollection(LinkedHashSet::new));
    statements.parallelStream()
        .forEach(
            statement -> {
              try {
                solution(statement);
              } catch (UnreadableException later) {
                // The item is read once more in its place, and refused there with its name.
                worked.remove(statement);
              }
            });
  }

  private PaperItem item(FiledItem item, boolean unread) throws UnreadableException {
    if (item instanceof FiledItem.Proof proof) {
      List<List<Piece>> lines = new ArrayList<>();
      for (String line : proof.proof()) {
        lines.add(Prose.read(line));
      }
      return PaperItem.of(new Task.Prove(Prose.read(proof.claim()), lines), proof.points());
    }
    FiledItem.Problem problem = (FiledItem.Problem) item;
    if (unread) {
      return PaperItem.of(
          new Task.Find(problem.statement(), problem.form().empty(), Optional.empty()),
          problem.points());
    }
    Solution solution = solution(problem.statement());
    PaperItem fresh =
        PaperItem.worked(problem.statement(), solution, form(problem, solution), problem.points());
    if (problem.isStale()) {
      return fresh;
    }
    String found = OptionReading.write(solution.answer());
    if (!found.equals(problem.key())) {
      throw new IllegalArgumentException(
          "the key in the file is %s, and the checks find %s".formatted(problem.key(), found));
    }
    List<List<Piece>> hints = new ArrayList<>();
    for (String hint : problem.hints()) {
      hints.add(Prose.read(hint));
    }
    return new PaperItem(
        new Task.Find(
            problem.statement(),
            form(problem, solution),
            Optional.of(new Checked(problem.statement(), solution))),
        problem.points(),
        hints,
        fresh.level());
  }

  private static Form form(FiledItem.Problem problem, Solution solution) {
    return problem.form() == AnswerForm.CHOICE
        ? OptionReading.of(problem.options(), solution)
        : problem.form().empty();
  }
}
