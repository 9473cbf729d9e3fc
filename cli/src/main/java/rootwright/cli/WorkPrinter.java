package rootwright.cli;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.OptionalInt;
import rootwright.algebra.notation.ErrorCaret;
import rootwright.algebra.notation.Refusal;
import rootwright.algebra.notation.UnreadableException;
import rootwright.desk.Desk;
import rootwright.desk.contract.FormulaForms;
import rootwright.desk.contract.RefusalContract;
import rootwright.desk.contract.SolutionContract;
import rootwright.working.answer.Answer;
import rootwright.working.problem.Statement;
import rootwright.working.route.ClassProfile;
import rootwright.working.solve.CheckFailedException;
import rootwright.working.solve.Solution;

/** Works single problems and prints each in the wanted form. */
final class WorkPrinter {

  private final Console console;
  private final Desk desk;
  private final ClassProfile profile;
  private final Patience patience;
  private final OutputForm form;

  WorkPrinter(
      Console console, Desk desk, ClassProfile profile, Patience patience, OutputForm form) {
    this.patience = patience;
    this.console = console;
    this.desk = desk;
    this.profile = profile;
    this.form = form;
  }

  /** Whether a text brings what it is about with it, so that no polynomial is missing. */
  boolean standsAlone(String text) {
    return desk.standsAlone(Statement.of("", text));
  }

  /** Works a problem given on the command line. */
  ExitStatus work(Statement statement) {
    return work(statement, OptionalInt.empty());
  }

  /** Works the problem on a numbered line of a file. */
  ExitStatus work(Statement statement, OptionalInt line) {
    try {
      Solution solution = patience.spentOn(statement, () -> desk.work(statement, profile));
      print(solution, line);
      return isSingle(solution.answer()) ? ExitStatus.DONE : ExitStatus.NOT_SINGLE;
    } catch (UnreadableException unreadable) {
      refuse(unreadable.refusal(), line);
      return ExitStatus.UNREADABLE;
    } catch (CheckFailedException failed) {
      refuse(
          new Refusal(
              "check-failed",
              failed.getMessage() + "; this is a fault of ours, and nothing was printed.",
              statement.find(),
              0,
              "",
              ""),
          line);
      return ExitStatus.CHECK_FAILED;
    } catch (RuntimeException | StackOverflowError fault) {
      // A list of problems goes on after a fault of ours, and the fault is named.
      refuse(
          new Refusal(
              "fault",
              "Something of ours broke, and nothing was printed: " + fault + ".",
              statement.find(),
              0,
              "",
              ""),
          line);
      return ExitStatus.CHECK_FAILED;
    }
  }

  /** Prints a refusal; with {@code --json} also as an object on standard output. */
  void refuse(Refusal refusal, OptionalInt line) {
    if (form == OutputForm.JSON) {
      ObjectNode node = RefusalContract.of(refusal);
      line.ifPresent(number -> node.put("line", number));
      console.out().println(node);
    }
    if (line.isPresent()) {
      console.err().println("error: line " + line.getAsInt() + ": " + refusal.text());
    } else {
      console.err().println(ErrorCaret.write(refusal));
    }
  }

  private void print(Solution solution, OptionalInt line) {
    switch (form) {
      case JSON -> {
        ObjectNode node = SolutionContract.of(solution, FormulaForms.FOR_SCRIPTS);
        line.ifPresent(number -> node.put("line", number));
        console.out().println(node);
      }
      case LATEX -> console.out().println(LatexReport.of(solution));
      case STATEMENT -> console.out().println(solution.statement());
      case TERMINAL_IN_FULL -> console.out().println(new TerminalReport(console).inFull(solution));
      case TERMINAL -> console.out().println(new TerminalReport(console).of(solution));
    }
  }

  private static boolean isSingle(Answer answer) {
    return !(answer instanceof Answer.Values)
        && !(answer instanceof Answer.Enclosed)
        && !(answer instanceof Answer.None);
  }
}
