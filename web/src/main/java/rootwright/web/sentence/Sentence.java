package rootwright.web.sentence;

import java.util.Map;

/**
 * One kind of ask as a sentence with blanks.
 *
 * @param name stable short name, lower case with hyphens
 * @param title the kind in a few words, for the list of kinds
 * @param words the sentence; {@code {roots}} stands for the root names, {@code {root}} for the
 *     first of them, any other name in braces for a blank
 * @param find the ask in the notation that is read, made from the blanks
 * @param labels what belongs into each blank, for those who hear the page
 * @param example what the blanks hold to begin with, an example of our own
 */
public record Sentence(
    String name,
    String title,
    String words,
    String find,
    Map<String, String> labels,
    Map<String, String> example) {

  public Sentence {
    labels = Map.copyOf(labels);
    example = Map.copyOf(example);
  }
}
