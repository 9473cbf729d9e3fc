package rootwright.press.paper;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.TreeMap;
import java.util.stream.IntStream;
import rootwright.composing.option.Choices;
import rootwright.working.answer.Answer;
import rootwright.working.problem.Statement;

/**
 * Chooses the options of those multiple-choice items that have none yet: within a version the
 * letters of the keys are used equally often, and across siblings no option stands at the letter at
 * which it is the key of another version. Where no choice avoids that, the paper's check says so.
 */
public final class VersionOptions {

  /** Fewer choices than this are no multiple-choice item; the check says so. */
  static final int FEWEST = 3;

  private final int wanted;
  private final List<List<PaperItem>> versions = new ArrayList<>();

  /** The same item on several versions has one set of options. */
  private final Map<Statement, Form.Choice> chosen = new HashMap<>();

  private VersionOptions(Content content, int wanted) {
    this.wanted = wanted;
    content.versions().forEach(version -> versions.add(new ArrayList<>(version.items())));
  }

  /**
   * The content with options everywhere.
   *
   * @param wanted how many choices an item is to have, 3 to 5
   * @throws IllegalStateException if the key of an item without options is stale
   */
  public static Content filled(Content content, int wanted) {
    VersionOptions filling = new VersionOptions(content, wanted);
    filling.versions.forEach(filling::fill);
    List<Version> filled = new ArrayList<>();
    for (int k = 0; k < content.versions().size(); k++) {
      filled.add(new Version(content.versions().get(k).mark(), filling.versions.get(k)));
    }
    return content.withVersions(filled);
  }

  private record Open(int place, Task.Find find, List<Choices> possible) {}

  private void fill(List<PaperItem> items) {
    Map<Integer, Integer> used = new TreeMap<>();
    List<Open> open = new ArrayList<>();
    for (int k = 0; k < items.size(); k++) {
      if (items.get(k).task() instanceof Task.Find find
          && find.form() instanceof Form.Choice choice) {
        if (choice.options().isEmpty()) {
          open.add(new Open(k, find, Choices.byPlace(find.current().solution(), wanted)));
        } else {
          keyPlace(choice, find.key().map(key -> key.solution().answer()).orElseThrow())
              .ifPresent(place -> used.merge(place, 1, Integer::sum));
        }
      }
    }
    open.sort(Comparator.comparingInt(each -> each.possible().size()));
    for (Open each : open) {
      Form.Choice form =
          chosen.computeIfAbsent(each.find().statement(), read -> best(items, each, used));
      Answer key = each.find().current().solution().answer();
      keyPlace(form, key).ifPresent(place -> used.merge(place, 1, Integer::sum));
      PaperItem item = items.get(each.place());
      items.set(each.place(), item.withTask(each.find().withForm(form)));
    }
  }

  private Form.Choice best(List<PaperItem> items, Open open, Map<Integer, Integer> used) {
    Answer key = open.find().current().solution().answer();
    Comparator<Choices> clashes =
        Comparator.comparingInt(
            choices -> clashes(items, open.place(), new Form.Choice(choices.options()), key));
    Comparator<Choices> balanced =
        Comparator.comparingInt(choices -> used.getOrDefault(choices.keyIndex(), 0));
    return Form.Choice.of(
        open.possible().stream().min(clashes.thenComparing(balanced)).orElseThrow());
  }

  /** How many other versions the options would clash with at this place. */
  private int clashes(List<PaperItem> items, int place, Form.Choice form, Answer key) {
    int count = 0;
    for (List<PaperItem> other : versions) {
      if (other != items
          && place < other.size()
          && other.get(place).task() instanceof Task.Find find
          && find.form() instanceof Form.Choice options
          && find.key().isPresent()
          && !find.current().solution().answer().equals(key)
          && KeyClash.between(form, key, options, find.current().solution().answer())) {
        count++;
      }
    }
    return count;
  }

  private static OptionalInt keyPlace(Form.Choice choice, Answer key) {
    return IntStream.range(0, choice.options().size())
        .filter(k -> choice.options().get(k).value().equals(key))
        .findFirst();
  }
}
