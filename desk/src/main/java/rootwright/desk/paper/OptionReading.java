package rootwright.desk.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import rootwright.algebra.notation.PlainWriter;
import rootwright.algebra.number.Rational;
import rootwright.composing.option.Choices;
import rootwright.composing.option.Option;
import rootwright.press.paper.Form;
import rootwright.working.answer.Answer;
import rootwright.working.solve.Solution;

/** The options of an item from the texts in its file, each with the slips that lead to it. */
final class OptionReading {

  private static final Pattern NUMBER = Pattern.compile("-?\\d{1,40}(/[1-9]\\d{0,39})?");

  private OptionReading() {}

  /**
   * The options.
   *
   * @throws IllegalArgumentException if a text is no number and nothing that a slip leads to
   */
  static Form.Choice of(List<String> texts, Solution solution) {
    List<Option> known = new ArrayList<>(Choices.everyWrong(solution));
    known.add(new Option(solution.answer(), List.of()));
    List<Option> options = new ArrayList<>();
    for (String text : texts) {
      options.add(option(text, known));
    }
    return new Form.Choice(options);
  }

  private static Option option(String text, List<Option> known) {
    Optional<Option> spelled =
        known.stream().filter(option -> write(option.value()).equals(text)).findFirst();
    if (spelled.isPresent()) {
      return spelled.get();
    }
    if (!NUMBER.matcher(text).matches()) {
      throw new IllegalArgumentException(
          "the option “%s” is no whole number or fraction".formatted(text));
    }
    Answer value = Answer.exact(Rational.parse(text));
    return known.stream()
        .filter(option -> option.value().equals(value))
        .findFirst()
        .orElse(new Option(value, List.of("chosen by hand")));
  }

  /** An answer as it stands in a file. */
  static String write(Answer answer) {
    return PlainWriter.write(answer.formula());
  }
}
