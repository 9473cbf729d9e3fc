package rootwright.web.sentence;

import java.util.Map;

/**
 * One kind of ask as a sentence with blanks.
 *
 * <p>In the three templates, a name in braces stands for the blank of that name. The words may also
 * hold {@code {roots}}, the names of the roots, and {@code {root}}, the first of them.
 *
 * @param name stable short name, lower case with hyphens
 * @param title the kind in a few words, for the list of kinds
 * @param words the sentence
 * @param polynomial what stands in the place of the polynomial, made from the blanks
 * @param find the ask in the notation that is read, made from the blanks
 * @param only which texts in the place of the polynomial, or of the ask if there is no such place,
 *     this sentence is for, as a pattern of both Java and the browser that is looked for anywhere
 *     in them; empty for any
 * @param labels what belongs into each blank, for those who hear the page
 * @param example what the blanks hold to begin with, an example of our own
 */
public record Sentence(
    String name,
    String title,
    String words,
    String polynomial,
    String find,
    String only,
    Map<String, String> labels,
    Map<String, String> example) {

  public Sentence {
    labels = Map.copyOf(labels);
    example = Map.copyOf(example);
  }

  /** A sentence about one polynomial, with a blank of this name for it. */
  static Sentence of(
      String name,
      String title,
      String words,
      String find,
      Map<String, String> labels,
      Map<String, String> example) {
    return new Sentence(name, title, words, "{polynomial}", find, "", labels, example);
  }

  /** The template of the text that tells whether this sentence is meant. */
  public String telling() {
    return polynomial.isEmpty() ? find : polynomial;
  }

  /** The text that a template makes of the example. */
  public String exampleOf(String template) {
    String text = template;
    for (Map.Entry<String, String> blank : example.entrySet()) {
      text = text.replace("{" + blank.getKey() + "}", blank.getValue());
    }
    return text;
  }
}
