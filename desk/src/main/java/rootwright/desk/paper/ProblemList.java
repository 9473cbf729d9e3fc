package rootwright.desk.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import rootwright.algebra.notation.UnreadableException;
import rootwright.working.pasted.PastedProblem;
import rootwright.working.problem.Statement;

/**
 * The items of a paper, one a line: {@code polynomial ; ask}, then, where wanted, {@code ; form}
 * and {@code ; points}; or {@code prove ; claim} with formulas between dollar signs. Blank lines
 * and lines that begin with {@code #} are skipped.
 */
public final class ProblemList {

  private static final String PROVE = "prove";
  private static final String NUMBER = "[1-9]\\d{0,3}";

  private final AnswerForm usual;
  private final OptionalInt points;

  /**
   * How lines are read that say less.
   *
   * @param usual the form of items that do not name one
   * @param points of items that do not say; empty to count the marks of each
   */
  public ProblemList(AnswerForm usual, OptionalInt points) {
    this.usual = usual;
    this.points = points;
  }

  /**
   * The items.
   *
   * @throws IllegalArgumentException if a line is no item, or none is there; names the line
   */
  public List<ItemOrder> read(List<String> lines) {
    List<ItemOrder> items = new ArrayList<>();
    for (int k = 0; k < lines.size(); k++) {
      String line = lines.get(k).strip();
      if (!line.isEmpty() && !line.startsWith("#")) {
        items.add(item(line, k + 1));
      }
    }
    if (items.isEmpty()) {
      throw new IllegalArgumentException(
          "there is no problem; write polynomial ; ask on each line");
    }
    return items;
  }

  private ItemOrder item(String line, int number) {
    List<String> fields =
        new ArrayList<>(List.of(line.split(";")).stream().map(String::strip).toList());
    Statement sentence = plain(fields.get(0), number);
    if (!sentence.polynomial().isBlank()) {
      fields.set(0, sentence.polynomial());
      fields.add(1, sentence.find());
    }
    if (fields.size() < 2 || fields.get(1).isEmpty()) {
      throw new IllegalArgumentException(
          "line %d has no ask: write the polynomial, a semicolon and the ask, or a whole sentence"
              .formatted(number));
    }
    OptionalInt worth = points;
    String last = fields.get(fields.size() - 1);
    if (fields.size() > 2 && last.matches(NUMBER)) {
      worth = OptionalInt.of(Integer.parseInt(last));
      fields.remove(fields.size() - 1);
    }
    if (fields.get(0).equals(PROVE)) {
      return new ItemOrder.Proof(
          String.join("; ", fields.subList(1, fields.size())), List.of(), worth);
    }
    if (fields.size() > 3) {
      throw new IllegalArgumentException(
          "line %d: after polynomial, ask, form and points nothing more is read".formatted(number));
    }
    AnswerForm form = fields.size() == 3 ? form(fields.get(2), number) : usual;
    return new ItemOrder.Problem(
        new Statement(fields.get(0), fields.get(1), sentence.roots(), Optional.empty()),
        form,
        worth);
  }

  /** A line may begin with a whole sentence in the place of polynomial and ask. */
  private static Statement plain(String text, int number) {
    try {
      return PastedProblem.plain(Statement.of("", text));
    } catch (UnreadableException unreadable) {
      throw new IllegalArgumentException(
          "line %d: %s".formatted(number, unreadable.getMessage()), unreadable);
    }
  }

  private static AnswerForm form(String word, int number) {
    try {
      return AnswerForm.named(word);
    } catch (IllegalArgumentException unknown) {
      throw new IllegalArgumentException(
          "line %d: %s".formatted(number, unknown.getMessage()), unknown);
    }
  }
}
