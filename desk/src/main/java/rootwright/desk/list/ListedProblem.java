package rootwright.desk.list;

import static java.util.Locale.ROOT;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import rootwright.algebra.notation.Refusal;
import rootwright.algebra.notation.UnreadableException;
import rootwright.desk.paper.AnswerForm;
import rootwright.working.pasted.PastedProblem;
import rootwright.working.problem.Statement;

/**
 * One line of a list of problems: {@code polynomial ; ask}, or a whole sentence. The form and the
 * points that a list for a paper has behind the ask are passed over.
 */
public final class ListedProblem {

  private static final List<String> FORMS =
      Arrays.stream(AnswerForm.values()).map(AnswerForm::word).toList();

  private static final String POINTS = "[1-9]\\d{0,3}";

  private ListedProblem() {}

  /**
   * The problem on a line; nothing on a blank line and on a remark, which begins with #.
   *
   * @throws UnreadableException if there is no semicolon, and so no ask
   */
  public static Optional<Statement> read(String line) throws UnreadableException {
    String text = line.strip();
    if (text.isEmpty() || text.startsWith("#")) {
      return Optional.empty();
    }
    int semicolon = text.indexOf(';');
    Statement sentence = Statement.of("", text);
    if (semicolon < 0 && isWhole(PastedProblem.plain(sentence))) {
      return Optional.of(sentence);
    }
    if (semicolon < 0) {
      throw new UnreadableException(
          new Refusal(
              "no-ask",
              "There is no ask: write the polynomial, a semicolon and the ask, or a whole sentence.",
              text,
              text.codePointCount(0, text.length()),
              "; and an ask",
              text + " ; S_2"));
    }
    int further = text.indexOf(';', semicolon + 1);
    if (further >= 0) {
      requireFieldsOfPaper(text, further);
    }
    String ask = text.substring(semicolon + 1, further < 0 ? text.length() : further);
    return Optional.of(Statement.of(text.substring(0, semicolon).strip(), ask.strip()));
  }

  /** A list for a paper has the form and the points of a problem behind the ask. */
  private static void requireFieldsOfPaper(String text, int further) throws UnreadableException {
    int from = further + 1;
    for (String field : text.substring(from).split(";", -1)) {
      String word = field.strip();
      if (!word.isEmpty() && !word.matches(POINTS) && !FORMS.contains(word.toLowerCase(ROOT))) {
        int at = text.indexOf(word, from);
        throw new UnreadableException(
            new Refusal(
                "too-many-fields",
                "After the ask a line may only say how a paper sets it.",
                text,
                text.codePointCount(0, at),
                String.join(", ", FORMS) + " or a number of points",
                text.substring(0, further).strip()));
      }
      from += field.length() + 1;
    }
  }

  private static boolean isWhole(Statement plain) {
    return !plain.polynomial().isBlank() || plain.find().contains(" if ");
  }
}
