package rootwright.press.deliverable;

import static rootwright.press.document.Piece.line;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import rootwright.composing.option.Option;
import rootwright.press.document.Audience;
import rootwright.press.document.Block;
import rootwright.press.document.Piece;
import rootwright.press.paper.Form;
import rootwright.press.paper.Paper;
import rootwright.press.paper.PaperItem;
import rootwright.press.paper.Task;
import rootwright.press.paper.Version;
import rootwright.press.paper.WholeNumberRule;
import rootwright.press.prose.PlainText;
import rootwright.working.answer.Answer;
import rootwright.working.route.Working;
import rootwright.working.slip.Slip;
import rootwright.working.slip.Slips;
import rootwright.working.solve.SecondOpinion;
import rootwright.working.solve.Solution;

/** The key: what is right, in which forms, how sure that is, and the slip behind each option. */
final class AnswerKey implements Deliverable {

  @Override
  public String name() {
    return "key";
  }

  @Override
  public String subtitle() {
    return "key";
  }

  @Override
  public Audience audience() {
    return Audience.COACH;
  }

  @Override
  public List<Block> blocks(Paper paper, Version version) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(Block.heading("Answers"));
    blocks.add(summary(version));
    for (int k = 0; k < version.items().size(); k++) {
      if (version.items().get(k).task() instanceof Task.Find find) {
        blocks.add(Items.heading(k + 1));
        details(find, blocks);
      }
    }
    return blocks;
  }

  /** The column of what is put down is left out where that is the answer itself for every item. */
  private static Block summary(Version version) {
    boolean otherThanAnswers =
        version.items().stream().anyMatch(item -> !right(item.task()).isEmpty());
    List<Block.Table.Column> columns = new ArrayList<>();
    columns.add(new Block.Table.Column(line("Item"), Block.Table.Placing.END, 1));
    if (otherThanAnswers) {
      columns.add(new Block.Table.Column(line("Write or mark"), Block.Table.Placing.CENTRE, 3));
    }
    columns.add(new Block.Table.Column(line("Exact answer"), Block.Table.Placing.START, 6));
    columns.add(new Block.Table.Column(line("Points"), Block.Table.Placing.END, 2));
    List<List<List<Piece>>> rows = new ArrayList<>();
    for (int k = 0; k < version.items().size(); k++) {
      PaperItem item = version.items().get(k);
      List<List<Piece>> row = new ArrayList<>();
      row.add(line(String.valueOf(k + 1)));
      if (otherThanAnswers) {
        row.add(right(item.task()));
      }
      row.add(exact(item.task()));
      row.add(line(String.valueOf(item.points())));
      rows.add(row);
    }
    return new Block.Table(List.of(), columns, rows);
  }

  /** What a student has to put down where that is not the answer itself. */
  private static List<Piece> right(Task task) {
    if (task instanceof Task.Find find) {
      Answer answer = find.current().solution().answer();
      if (find.form() instanceof Form.Choice choice) {
        return line(Piece.strong(Piece.words(Items.letter(choice, answer))));
      }
      if (find.form() instanceof Form.WholeNumber) {
        return WholeNumberRule.of(answer)
            .map(rule -> line(Piece.strong(Piece.words(rule.number().toString()))))
            .orElse(List.of());
      }
    }
    return List.of();
  }

  private static List<Piece> exact(Task task) {
    return task instanceof Task.Find find
        ? AnswerPieces.withDecimal(find.current().solution().answer())
        : line("a proof");
  }

  private static void details(Task.Find find, List<Block> blocks) {
    Solution solution = find.current().solution();
    blocks.add(new Block.Paragraph(Wording.of(find)));
    List<String> forms = AcceptedForms.of(solution.answer());
    if (!(find.form() instanceof Form.Choice) && forms.size() > 1) {
      blocks.add(
          Block.paragraph(
              "Accepted: ", String.join("; ", forms).replace('-', '−'), ", and what is equal."));
    }
    if (!solution.routes().isEmpty()) {
      blocks.add(new Block.Paragraph(PlainText.kept(agreeing(solution))));
    }
    blocks.add(Block.paragraph(checks(solution.second())));
    if (find.form() instanceof Form.Choice choice) {
      blocks.add(options(choice, solution));
    } else if (!solution.slips().isEmpty()) {
      blocks.add(SlipTable.of(solution));
    }
  }

  private static String checks(SecondOpinion second) {
    return "Two checks agree: the exact normal form; %s.".formatted(toDigits(second));
  }

  /** How a reader may know that the answer is right, without the line that led to it. */
  static String secondWay(SecondOpinion second) {
    return "Checked in another way: %s.".formatted(toDigits(second));
  }

  private static String toDigits(SecondOpinion second) {
    return second.digits().isPresent()
        ? "%s, to %d digits".formatted(second.method(), second.digits().getAsInt())
        : second.method();
  }

  /** The routes that lead to the answer, as a sentence. */
  private static String agreeing(Solution solution) {
    List<String> titles = solution.routes().stream().map(Working::title).toList();
    String all =
        (titles.size() == 1 ? "One route leads to it: " : titles.size() + " routes agree: ")
            + String.join("; ", titles);
    return all.endsWith("…") ? all : all + ".";
  }

  private static Block options(Form.Choice choice, Solution solution) {
    List<List<List<Piece>>> rows = new ArrayList<>();
    for (int k = 0; k < choice.options().size(); k++) {
      Option option = choice.options().get(k);
      boolean right = option.value().equals(solution.answer());
      rows.add(
          List.of(
              line(Form.Choice.letter(k)),
              AnswerPieces.exact(option.value()),
              right
                  ? line(Piece.strong(Piece.words("right")))
                  : PlainText.kept(behind(option, solution))));
    }
    return new Block.Table(
        List.of(),
        List.of(
            new Block.Table.Column(line("Option"), Block.Table.Placing.CENTRE, 1),
            new Block.Table.Column(line("Value"), Block.Table.Placing.END, 2),
            new Block.Table.Column(line("What leads to it"), Block.Table.Placing.START, 8)),
        rows);
  }

  private static String behind(Option option, Solution solution) {
    List<String> texts =
        solution.slips().stream()
            .filter(
                slip -> option.slips().contains(slip.name()) || slip.value().equals(option.value()))
            .map(Solution.WrongTurning::text)
            .distinct()
            .toList();
    if (!texts.isEmpty()) {
      return String.join(" ", texts);
    }
    return option.slips().stream().map(AnswerKey::together).collect(Collectors.joining(" "));
  }

  /** Two wrong turnings one after the other, in words. */
  private static String together(String names) {
    List<String> texts = new ArrayList<>();
    for (String name : names.split(" \\+ ")) {
      texts.add(
          Slips.ALL.stream()
              .filter(slip -> slip.name().equals(name))
              .map(Slip::text)
              .findFirst()
              .orElse(name));
    }
    return texts.size() == 1 ? texts.get(0) : "Two mistakes. " + String.join(" ", texts);
  }
}
