package rootwright.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import rootwright.desk.paper.AnswerForm;
import rootwright.desk.paper.ItemOrder;
import rootwright.working.problem.Statement;

/**
 * The items of a paper, one a line: {@code polynomial ; ask}, then, where wanted, {@code ; form}
 * and {@code ; points}; or {@code prove ; claim} with formulas between dollar signs. Blank lines
 * and lines that begin with {@code #} are skipped.
 */
final class ProblemList {

  private static final String PROVE = "prove";
  private static final String NUMBER = "[1-9]\\d{0,3}";

  private final AnswerForm usual;
  private final OptionalInt points;

  /**
   * @param usual the form of items that do not name one
   * @param points of items that do not say; empty to count the marks of each
   */
  ProblemList(AnswerForm usual, OptionalInt points) {
    this.usual = usual;
    this.points = points;
  }

  List<ItemOrder> read(Path file) throws IOException {
    if (!Files.isRegularFile(file)) {
      throw new IllegalArgumentException("no file can be read at " + file);
    }
    List<ItemOrder> items = new ArrayList<>();
    List<String> lines = Files.readAllLines(file, StandardCharsets.UTF_8);
    for (int k = 0; k < lines.size(); k++) {
      String line = lines.get(k).strip();
      if (!line.isEmpty() && !line.startsWith("#")) {
        items.add(item(line, k + 1));
      }
    }
    if (items.isEmpty()) {
      throw new IllegalArgumentException(
          "there is no problem in %s; write polynomial ; ask on each line".formatted(file));
    }
    return items;
  }

  private ItemOrder item(String line, int number) {
    List<String> fields =
        new ArrayList<>(List.of(line.split(";")).stream().map(String::strip).toList());
    if (fields.size() < 2 || fields.get(1).isEmpty()) {
      throw new IllegalArgumentException(
          "line %d has no ask: write the polynomial, a semicolon and the ask".formatted(number));
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
    return new ItemOrder.Problem(Statement.of(fields.get(0), fields.get(1)), form, worth);
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
