package rootwright.press.qti;

import java.util.LinkedHashSet;
import java.util.Set;
import rootwright.press.document.Language;
import rootwright.press.document.Scoring;

/**
 * The spellings of an answer that a scoring program compares letter by letter: with and without
 * blanks, with a hyphen or a true minus sign, and with the decimal mark of the language.
 */
final class TypedForms {

  private TypedForms() {}

  /** All spellings, the exact one first. */
  static Set<String> of(Scoring.ByText scoring, Language language) {
    Set<String> forms = new LinkedHashSet<>();
    add(scoring.exact(), language, forms);
    scoring.alsoAccepted().forEach(text -> add(text, language, forms));
    return forms;
  }

  private static void add(String text, Language language, Set<String> to) {
    for (String marked : marked(text, language)) {
      for (String signed : new String[] {marked, marked.replace('-', '−')}) {
        to.add(signed);
        to.add(signed.replaceAll("(?<=[^\\d\\p{L}]) | (?=[^\\d\\p{L}])", ""));
      }
    }
  }

  private static String[] marked(String text, Language language) {
    String own = text.replaceAll("(?<=\\d)\\.(?=\\d)", String.valueOf(language.decimalMark()));
    return new String[] {text, own};
  }
}
