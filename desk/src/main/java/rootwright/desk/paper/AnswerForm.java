package rootwright.desk.paper;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import rootwright.press.paper.Form;

/** How an item is answered, as a coach orders it. */
public enum AnswerForm {
  /** The answer is written down. */
  SHORT,
  /** One of several options is marked. */
  CHOICE,
  /** The answer becomes a whole number from 0 to 999 by a printed rule. */
  INTEGER;

  /** The name for scripts. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /**
   * The form of this name.
   *
   * @throws IllegalArgumentException if there is none
   */
  public static AnswerForm named(String word) {
    return Arrays.stream(values())
        .filter(form -> form.word().equals(word.strip().toLowerCase(Locale.ROOT)))
        .findFirst()
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "there is no form “%s”; write %s"
                        .formatted(
                            word,
                            Arrays.stream(values())
                                .map(AnswerForm::word)
                                .collect(Collectors.joining(", ")))));
  }

  /** The form on a new paper; options are chosen when the answer is known. */
  Form empty() {
    return switch (this) {
      case SHORT -> new Form.Written();
      case CHOICE -> new Form.Choice(List.of());
      case INTEGER -> new Form.WholeNumber();
    };
  }
}
