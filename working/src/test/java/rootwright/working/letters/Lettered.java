package rootwright.working.letters;

import java.util.List;
import rootwright.algebra.notation.PlainWriter;
import rootwright.algebra.notation.UnreadableException;
import rootwright.working.Subjects;
import rootwright.working.gate.Warning;
import rootwright.working.kind.Kinds;
import rootwright.working.problem.Statement;
import rootwright.working.route.ClassProfile;
import rootwright.working.solve.Solution;

/** Works problems for the tests of this package and of the pairs. */
public final class Lettered {

  private static final Subjects SUBJECTS = new Subjects(new Kinds());

  private Lettered() {}

  /** The solution of a problem as typed. */
  public static Solution work(String polynomial, String find) throws UnreadableException {
    return SUBJECTS.work(Statement.of(polynomial, find), ClassProfile.EVERYTHING);
  }

  /** The answer as a script reads it. */
  public static String answer(String polynomial, String find) throws UnreadableException {
    return text(work(polynomial, find));
  }

  /** The answer as a script reads it. */
  public static String text(Solution solution) {
    return String.join(
        " or ", solution.answer().alternatives().stream().map(PlainWriter::write).toList());
  }

  /** The codes of the warnings. */
  public static List<String> codes(Solution solution) {
    return solution.warnings().stream().map(Warning::code).map(code -> code.code()).toList();
  }

  /** {@code name value} of every slip that shows. */
  public static List<String> slips(Solution solution) {
    return solution.slips().stream()
        .map(slip -> slip.name() + " " + PlainWriter.write(slip.value().formula()))
        .toList();
  }
}
