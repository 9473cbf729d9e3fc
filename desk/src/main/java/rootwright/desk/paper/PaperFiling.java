package rootwright.desk.paper;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import rootwright.press.paper.Form;
import rootwright.press.paper.Paper;
import rootwright.press.paper.PaperItem;
import rootwright.press.paper.Task;
import rootwright.press.paper.Version;
import rootwright.working.solve.Solution;

/** Writes a paper down in plain words. */
final class PaperFiling {

  private PaperFiling() {}

  /**
   * The paper, filed under the names that its items have in the file.
   *
   * @param filed names, order and everything that the paper does not know
   */
  static FiledPaper of(FiledPaper filed, Paper paper) {
    Map<String, FiledItem> items = new LinkedHashMap<>(filed.items());
    for (Version version : paper.content().versions()) {
      List<String> names = Objects.requireNonNull(filed.versions().get(version.mark()));
      for (int k = 0; k < names.size(); k++) {
        items.put(names.get(k), item(version.items().get(k)));
      }
    }
    return new FiledPaper(
        paper.content().title(),
        paper.content().language().tag(),
        paper.content().instruction(),
        paper.content().date(),
        paper.edition(),
        paper.state(),
        paper.code(),
        filed.corrects(),
        items,
        filed.versions());
  }

  /** One item. */
  static FiledItem item(PaperItem item) {
    if (item.task() instanceof Task.Prove prove) {
      return new FiledItem.Proof(
          Prose.write(prove.claim()),
          prove.proof().stream().map(Prose::write).toList(),
          item.points());
    }
    Task.Find find = (Task.Find) item.task();
    List<String> hints = item.hints().stream().map(Prose::write).toList();
    String level = item.level().map(Object::toString).orElse("");
    return find.key()
        .map(
            checked -> {
              Solution solution = checked.solution();
              return new FiledItem.Problem(
                  find.statement(),
                  form(find.form()),
                  item.points(),
                  options(find.form()),
                  hints,
                  OptionReading.write(solution.answer()),
                  FiledItem.Problem.line(checked.read()),
                  level);
            })
        .orElseGet(
            () ->
                new FiledItem.Problem(
                    find.statement(),
                    form(find.form()),
                    item.points(),
                    options(find.form()),
                    hints,
                    "",
                    "",
                    level));
  }

  private static AnswerForm form(Form form) {
    return AnswerForm.named(form.name());
  }

  private static List<String> options(Form form) {
    return form instanceof Form.Choice choice
        ? choice.options().stream().map(option -> OptionReading.write(option.value())).toList()
        : List.of();
  }
}
