package rootwright.desk.list;

import java.util.Optional;
import rootwright.algebra.notation.Refusal;
import rootwright.algebra.notation.UnreadableException;
import rootwright.working.pasted.PastedProblem;
import rootwright.working.problem.Statement;

/** One line of a list of problems: {@code polynomial ; ask}, or a whole sentence. */
public final class ListedProblem {

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
    return Optional.of(
        Statement.of(text.substring(0, semicolon).strip(), text.substring(semicolon + 1).strip()));
  }

  private static boolean isWhole(Statement plain) {
    return !plain.polynomial().isBlank() || plain.find().contains(" if ");
  }
}
