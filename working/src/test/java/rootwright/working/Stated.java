package rootwright.working;

import java.util.List;
import java.util.stream.Collectors;
import rootwright.algebra.notation.PlainWriter;
import rootwright.algebra.notation.UnreadableException;
import rootwright.working.answer.Answer;
import rootwright.working.gate.Warning;
import rootwright.working.kind.Kinds;
import rootwright.working.problem.Statement;
import rootwright.working.route.ClassProfile;
import rootwright.working.route.Working;
import rootwright.working.solve.Solution;

/**
 * Statements worked as they are typed, by whatever subject recognises them. Working one means that
 * both checks have confirmed every line that is no argument.
 */
public final class Stated {

  private static final Subjects SUBJECTS = new Subjects(new Kinds());

  private Stated() {}

  /** Everything found. */
  public static Solution solution(String polynomial, String find) {
    try {
      return SUBJECTS.work(Statement.of(polynomial, find), ClassProfile.EVERYTHING);
    } catch (UnreadableException unreadable) {
      throw new IllegalArgumentException(
          polynomial + " ; " + find + ": " + unreadable.refusal().text(), unreadable);
    }
  }

  /** The sentence with which a statement is refused. */
  public static String refusal(String polynomial, String find) {
    try {
      Solution solution = SUBJECTS.work(Statement.of(polynomial, find), ClassProfile.EVERYTHING);
      throw new IllegalStateException("not refused, but answered: " + text(solution.answer()));
    } catch (UnreadableException unreadable) {
      return unreadable.refusal().text();
    }
  }

  /** The answer as plain text, several values joined by "or". */
  public static String text(String polynomial, String find) {
    return text(solution(polynomial, find).answer());
  }

  /** An answer as plain text. */
  public static String text(Answer answer) {
    return answer.alternatives().stream()
        .map(PlainWriter::write)
        .collect(Collectors.joining(" or "));
  }

  /** The names of the routes that went through. */
  public static List<String> routes(Solution solution) {
    return solution.routes().stream().map(Working::route).toList();
  }

  /** The lines of one route as plain text. */
  public static List<String> lines(Solution solution, String route) {
    return solution.routes().stream()
        .filter(working -> working.route().equals(route))
        .flatMap(working -> working.steps().stream())
        .map(step -> PlainWriter.write(step.shown()))
        .toList();
  }

  /** The warnings, each as its code and sentence. */
  public static List<String> warnings(Solution solution) {
    return solution.warnings().stream()
        .map((Warning warning) -> warning.code().code() + ": " + warning.text())
        .toList();
  }

  /** The wrong answers by the name of their slip: {@code floor-forgotten 4}. */
  public static List<String> slips(Solution solution) {
    return solution.slips().stream().map(slip -> slip.name() + " " + text(slip.value())).toList();
  }
}
