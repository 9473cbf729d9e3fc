package rootwright.cli;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.util.List;
import rootwright.algebra.notation.ErrorCaret;
import rootwright.algebra.notation.UnreadableException;
import rootwright.press.output.UnprintableException;
import rootwright.press.paper.BlockedException;
import rootwright.press.paper.Complaint;

/** Something done with a paper, and how the coach is told what is in the way. */
@FunctionalInterface
interface PaperAction {

  /** Does it. */
  void run() throws UnreadableException, BlockedException, IOException, InterruptedException;

  /** Does it and says how that went; with {@code json}, what is in the way is one object. */
  static int exitStatus(Console console, boolean json, PaperAction action)
      throws InterruptedException {
    try {
      action.run();
      return ExitStatus.DONE.code();
    } catch (UnreadableException unreadable) {
      console.err().println(ErrorCaret.write(unreadable.refusal()));
      report(console, json, List.of(unreadable.refusal().text()));
    } catch (BlockedException blocked) {
      List<String> sentences = blocked.complaints().stream().map(Complaint::sentence).toList();
      sentences.forEach(sentence -> console.err().println("error: " + sentence));
      report(console, json, sentences);
    } catch (IllegalArgumentException | IllegalStateException | UnprintableException wish) {
      console.err().println("error: " + wish.getMessage());
      report(console, json, List.of(String.valueOf(wish.getMessage())));
    } catch (IOException unusable) {
      console.err().println("error: a file cannot be used: " + unusable.getMessage());
      report(console, json, List.of("a file cannot be used"));
    }
    return ExitStatus.UNREADABLE.code();
  }

  private static void report(Console console, boolean json, List<String> sentences) {
    if (json) {
      ObjectNode object = JsonNodeFactory.instance.objectNode();
      sentences.forEach(object.putArray("blocked")::add);
      console.out().println(object);
    }
  }
}
