package rootwright.desk.paper;

import java.time.LocalDate;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import rootwright.press.paper.State;

/**
 * A paper as it stands in its file: everything in plain words, readable without the program.
 *
 * @param title of the paper
 * @param language tag of its language
 * @param instruction the line that fixes what the roots are
 * @param date the day it is for
 * @param edition from 1
 * @param state how far it has come
 * @param code the paper code, empty before it is frozen
 * @param corrects the edition before this one, empty for a first edition
 * @param items by their names, {@code 1A} for item 1 of version A
 * @param versions by their marks, the names of the items in their order
 */
public record FiledPaper(
    String title,
    String language,
    String instruction,
    LocalDate date,
    int edition,
    State state,
    String code,
    Optional<Correction> corrects,
    Map<String, FiledItem> items,
    Map<String, List<String>> versions) {

  /**
   * What a later edition corrects.
   *
   * @param code of the edition before
   * @param cause why there is a new edition, one sentence
   * @param file the name of the file of the edition before, beside this one
   */
  public record Correction(String code, String cause, String file) {}

  /**
   * @throws IllegalArgumentException if a version has an item that is not there, or there is no
   *     version
   */
  public FiledPaper {
    items = Collections.unmodifiableMap(new LinkedHashMap<>(items));
    versions = Collections.unmodifiableMap(new LinkedHashMap<>(versions));
    if (versions.isEmpty()) {
      throw new IllegalArgumentException("the paper has no version");
    }
    for (Map.Entry<String, List<String>> version : versions.entrySet()) {
      for (String name : version.getValue()) {
        if (!items.containsKey(name)) {
          throw new IllegalArgumentException(
              "version “%s” names an item “%s” that is not among the items"
                  .formatted(version.getKey(), name));
        }
      }
    }
  }

  /** The names of the items whose key is stale. */
  public List<String> stale() {
    return items.entrySet().stream()
        .filter(item -> item.getValue().isStale())
        .map(Map.Entry::getKey)
        .toList();
  }

  /**
   * The paper with one item changed; it is a draft again.
   *
   * @throws IllegalStateException if it is frozen: a new edition corrects it
   * @throws IllegalArgumentException if there is no such item
   */
  public FiledPaper edited(String name, UnaryOperator<FiledItem> change) {
    requireOpen();
    FiledItem item = items.get(name);
    if (item == null) {
      throw new IllegalArgumentException(
          "there is no item “%s”; there are %s".formatted(name, String.join(", ", items.keySet())));
    }
    Map<String, FiledItem> changed = new LinkedHashMap<>(items);
    changed.put(name, change.apply(item));
    return with(State.DRAFT, changed);
  }

  private void requireOpen() {
    if (state.isFinal()) {
      throw new IllegalStateException(
          "paper %s is %s; a new edition corrects it".formatted(code, PaperFile.word(state)));
    }
  }

  private FiledPaper with(State other, Map<String, FiledItem> changed) {
    return new FiledPaper(
        title, language, instruction, date, edition, other, "", corrects, changed, versions);
  }

  /** The same paper, handed out. */
  FiledPaper printed() {
    return new FiledPaper(
        title,
        language,
        instruction,
        date,
        edition,
        State.PRINTED,
        code,
        corrects,
        items,
        versions);
  }

  /**
   * A draft of the next edition.
   *
   * @param on its day
   * @param cause why, one sentence
   * @param file the name of the file of this edition
   * @throws IllegalStateException if this one is not frozen: then it is edited
   */
  public FiledPaper nextEdition(LocalDate on, String cause, String file) {
    if (!state.isFinal()) {
      throw new IllegalStateException(
          "a paper that is not frozen is edited; this one is " + PaperFile.word(state));
    }
    return new FiledPaper(
        title,
        language,
        instruction,
        on,
        edition + 1,
        State.DRAFT,
        "",
        Optional.of(new Correction(code, cause, file)),
        items,
        versions);
  }
}
