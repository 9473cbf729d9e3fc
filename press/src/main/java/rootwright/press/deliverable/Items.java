package rootwright.press.deliverable;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import rootwright.algebra.notation.PlainWriter;
import rootwright.composing.option.Option;
import rootwright.press.document.Block;
import rootwright.press.document.Piece;
import rootwright.press.document.Response;
import rootwright.press.document.Scoring;
import rootwright.press.paper.Form;
import rootwright.press.paper.PaperItem;
import rootwright.press.paper.Task;
import rootwright.press.paper.Version;
import rootwright.press.paper.WholeNumberRule;
import rootwright.working.answer.Answer;
import rootwright.working.solve.Solution;

/** The items of a version as blocks, with and without what is right. */
final class Items {

  /** More room than this is not left: then the paper is for other sheets. */
  private static final int MOST_LINES = 10;

  private static final int LINES_FOR_A_PROOF = 8;

  private Items() {}

  /** The items as students get them. */
  static List<Block> unscored(Version version) {
    return items(version, false);
  }

  /** The items with their scoring, for programs and for the coach. */
  static List<Block> scored(Version version) {
    return items(version, true);
  }

  private static List<Block> items(Version version, boolean scored) {
    List<Block> blocks = new ArrayList<>();
    for (int k = 0; k < version.items().size(); k++) {
      PaperItem item = version.items().get(k);
      blocks.add(
          new Block.Item(
              k + 1,
              Optional.of(item.points()),
              List.of(new Block.Paragraph(Wording.of(item.task()))),
              response(item.task()),
              scored ? Optional.of(scoring(item.task())) : Optional.empty()));
    }
    return blocks;
  }

  private static Response response(Task task) {
    if (task instanceof Task.Find find) {
      if (find.form() instanceof Form.Choice choice) {
        return choices(choice);
      }
      return new Response.ShortAnswer(lines(find.current().solution()));
    }
    return new Response.Work(LINES_FOR_A_PROOF);
  }

  private static Response choices(Form.Choice choice) {
    return new Response.Choices(
        IntStream.range(0, choice.options().size())
            .mapToObj(
                k ->
                    new Response.Choice(
                        Form.Choice.letter(k), AnswerPieces.exact(choice.options().get(k).value())))
            .toList());
  }

  /** As many lines as the shortest route has. */
  private static int lines(Solution solution) {
    return solution.routes().isEmpty()
        ? 4
        : Math.min(MOST_LINES, solution.routes().get(0).steps().size());
  }

  /** What is right, for the items that a program can score. */
  static Scoring scoring(Task task) {
    if (!(task instanceof Task.Find find)) {
      return new Scoring.ByHand();
    }
    Solution solution = find.current().solution();
    if (find.form() instanceof Form.Choice choice) {
      return new Scoring.ByLetter(letter(choice, solution.answer()));
    }
    if (find.form() instanceof Form.WholeNumber) {
      return WholeNumberRule.of(solution.answer())
          .<Scoring>map(rule -> new Scoring.ByText(rule.number().toString(), List.of()))
          .orElseGet(Scoring.ByHand::new);
    }
    return byText(solution.answer());
  }

  private static Scoring byText(Answer answer) {
    if (answer instanceof Answer.Interval || answer instanceof Answer.FunctionOf) {
      return new Scoring.ByHand();
    }
    List<String> forms = AcceptedForms.of(answer);
    return new Scoring.ByText(forms.get(0), forms.subList(1, forms.size()));
  }

  /** The letter of the right option. */
  static String letter(Form.Choice choice, Answer key) {
    List<Option> options = choice.options();
    return IntStream.range(0, options.size())
        .filter(k -> options.get(k).value().equals(key))
        .mapToObj(Form.Choice::letter)
        .findFirst()
        .orElseThrow(
            () ->
                new IllegalStateException(
                    "no option is %s".formatted(PlainWriter.write(key.formula()))));
  }

  /** A heading for what is said of one item. */
  static Block heading(int number) {
    return new Block.Heading(1, List.of(Piece.words("Item " + number)));
  }
}
