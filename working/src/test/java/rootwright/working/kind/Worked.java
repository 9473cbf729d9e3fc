package rootwright.working.kind;

import java.util.stream.Collectors;
import rootwright.algebra.notation.PlainWriter;
import rootwright.algebra.notation.UnreadableException;
import rootwright.working.answer.Answer;
import rootwright.working.ask.ProblemReader;
import rootwright.working.problem.Statement;
import rootwright.working.route.ClassProfile;
import rootwright.working.solve.Solution;

/** Problems worked as they are typed. */
final class Worked {

  private static final Kinds KINDS = new Kinds();

  private Worked() {}

  /** Everything found. */
  static Solution solution(String polynomial, String ask) {
    try {
      return KINDS.solve(
          ProblemReader.read(Statement.of(polynomial, ask)), ClassProfile.EVERYTHING);
    } catch (UnreadableException unreadable) {
      throw new IllegalArgumentException(
          polynomial + " ; " + ask + ": " + unreadable.refusal().text(), unreadable);
    }
  }

  /** The answer as plain text, several values joined by "or". */
  static String text(String polynomial, String ask) {
    return text(solution(polynomial, ask).answer());
  }

  static String text(Answer answer) {
    return answer.alternatives().stream()
        .map(PlainWriter::write)
        .collect(Collectors.joining(" or "));
  }
}
