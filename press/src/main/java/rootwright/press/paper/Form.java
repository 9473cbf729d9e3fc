package rootwright.press.paper;

import java.util.List;
import rootwright.composing.option.Choices;
import rootwright.composing.option.Option;

/** How a problem is answered on a paper. */
public sealed interface Form {

  /** A short name for scripts. */
  String name();

  /** The answer is written down. */
  record Written() implements Form {
    @Override
    public String name() {
      return "short";
    }
  }

  /**
   * One of several options is marked.
   *
   * @param options in the order in which they are printed: by size, "no such value" last
   */
  record Choice(List<Option> options) implements Form {
    public Choice {
      options = List.copyOf(options);
    }

    @Override
    public String name() {
      return "choice";
    }

    /** What the composer chose. */
    public static Choice of(Choices choices) {
      return new Choice(choices.options());
    }

    /** The letter of an option by its place from 0. */
    public static String letter(int place) {
      return String.valueOf((char) ('A' + place));
    }
  }

  /** The answer is put into a whole number from 0 to 999 by a rule that the paper prints. */
  record WholeNumber() implements Form {
    @Override
    public String name() {
      return "integer";
    }
  }
}
