package rootwright.press.paper;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import rootwright.algebra.notation.PlainWriter;
import rootwright.algebra.notation.UnreadableException;
import rootwright.composing.option.Option;
import rootwright.working.answer.Answer;
import rootwright.working.problem.Statement;
import rootwright.working.solve.CheckFailedException;
import rootwright.working.solve.Solution;

/** Reads the statements of a paper anew and says what is wrong with an item. */
final class ItemCheck {

  private final Checker checker;
  private final List<Complaint> complaints;

  /** A problem that stands on many versions is worked once. */
  private final Map<Statement, Solution> worked = new HashMap<>();

  ItemCheck(Checker checker, List<Complaint> complaints) {
    this.checker = checker;
    this.complaints = complaints;
  }

  /** The content with new keys; where an item cannot stand, a complaint is added. */
  Content read(Content content) {
    List<Version> versions = new ArrayList<>();
    for (Version version : content.versions()) {
      List<PaperItem> items = new ArrayList<>();
      for (int k = 0; k < version.items().size(); k++) {
        items.add(read(version.items().get(k), version.mark(), k + 1));
      }
      versions.add(new Version(version.mark(), items));
    }
    return content.withVersions(versions);
  }

  private PaperItem read(PaperItem item, String version, int number) {
    if (!(item.task() instanceof Task.Find find)) {
      return item;
    }
    try {
      Solution solution = worked.get(find.statement());
      if (solution == null) {
        solution = checker.read(find.statement());
        worked.put(find.statement(), solution);
      }
      for (String wrong : wrongs(find.form(), solution)) {
        complaints.add(new Complaint(version, number, wrong));
      }
      return item.withTask(find.withKey(new Checked(find.statement(), solution)));
    } catch (UnreadableException unreadable) {
      complaints.add(new Complaint(version, number, unreadable.refusal().text()));
    } catch (CheckFailedException refuted) {
      complaints.add(new Complaint(version, number, "A check failed: " + refuted.getMessage()));
    }
    return item;
  }

  private static List<String> wrongs(Form form, Solution solution) {
    List<String> wrongs = new ArrayList<>();
    if (solution.answer() instanceof Answer.None none) {
      wrongs.add("There is no answer: " + none.why());
    } else if (solution.answer() instanceof Answer.Enclosed enclosed) {
      wrongs.add("The ask has %s possible values.".formatted(enclosed.images()));
    } else if (!solution.second().agrees()) {
      wrongs.add("The second check does not agree.");
    } else if (form instanceof Form.Choice choice) {
      choices(choice, solution.answer(), wrongs);
    } else if (form instanceof Form.WholeNumber
        && WholeNumberRule.of(solution.answer()).isEmpty()) {
      wrongs.add(
          "The answer %s cannot be put into a whole number from 0 to 999."
              .formatted(PlainWriter.write(solution.answer().formula())));
    }
    return wrongs;
  }

  private static void choices(Form.Choice choice, Answer key, List<String> wrongs) {
    long right = choice.options().stream().filter(option -> option.value().equals(key)).count();
    long distinct = choice.options().stream().map(Option::value).distinct().count();
    if (right != 1) {
      wrongs.add(
          "%d of the options are right; without options in the file they are chosen anew."
              .formatted(right));
    }
    if (distinct < choice.options().size()) {
      wrongs.add("Two options are equal.");
    }
    if (choice.options().size() < VersionOptions.FEWEST) {
      wrongs.add(
          "Slips lead to only %d believable wrong options; ask for a short answer instead."
              .formatted(Math.max(0, choice.options().size() - 1)));
    }
    if (!OptionOrder.isAscending(choice.options())) {
      wrongs.add("The options are not in ascending order.");
    }
  }
}
