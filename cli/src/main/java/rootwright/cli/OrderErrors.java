package rootwright.cli;

import java.io.IOException;
import java.nio.file.NoSuchFileException;
import rootwright.algebra.notation.ErrorCaret;
import rootwright.algebra.notation.UnreadableException;
import rootwright.composing.blueprint.ContradictoryBlueprintException;
import rootwright.desk.table.UnreadableBlueprintException;

/** What is said of an order that cannot be read or filled. */
final class OrderErrors {

  private OrderErrors() {}

  /** Something that fills an order. */
  interface Filling {
    ExitStatus run() throws UnreadableException, UnreadableBlueprintException, IOException;
  }

  /**
   * Runs it and tells what was wrong with the order, each fault on its own line.
   *
   * @param source where the order stands, empty for the command line
   */
  static int told(Console console, String source, Filling filling) throws IOException {
    try {
      return filling.run().code();
    } catch (UnreadableException unreadable) {
      console.err().println(ErrorCaret.write(unreadable.refusal()));
    } catch (ContradictoryBlueprintException contradictory) {
      contradictory.contradictions().forEach(line -> console.err().println("error: " + line));
    } catch (UnreadableBlueprintException unreadable) {
      unreadable
          .faults()
          .forEach(fault -> console.err().println("error: " + source + ": " + fault.sentence()));
    } catch (NoSuchFileException missing) {
      console.err().println("error: no file can be read at " + missing.getFile());
    } catch (IllegalArgumentException wish) {
      console.err().println("error: " + wish.getMessage());
    }
    return ExitStatus.UNREADABLE.code();
  }
}
