package rootwright.cli;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import rootwright.algebra.notation.ErrorCaret;
import rootwright.algebra.notation.Refusal;
import rootwright.lesson.narration.Script;
import rootwright.lesson.narration.StepTime;
import rootwright.lesson.plan.Complaint;

/** What a board command says, line by line for a reader, or as one object for scripts. */
final class BoardReport {

  private final Console console;
  private final boolean json;
  private final ObjectNode object = JsonNodeFactory.instance.objectNode();

  BoardReport(Console console, boolean json) {
    this.console = console;
    this.json = json;
  }

  /** Prints the object, if that is wanted; nothing is said afterwards. */
  void close() {
    if (json) {
      console.out().println(object);
    }
  }

  /** The names of the topics with their titles. */
  void topics(Map<String, String> topics) {
    ObjectNode all = object.putObject("topics");
    topics.forEach(
        (name, title) -> {
          all.put(name, title);
          print("%-28s %s%n".formatted(name, title));
        });
  }

  /** A form of a lesson that is plain text. */
  void text(String form, String text) {
    object.put(form, text);
    print(text);
  }

  /** A file that was written. */
  void file(Path path) {
    object.withArray("/files").add(path.toString());
    print(path + System.lineSeparator());
  }

  /** The times of all steps, and the whole. */
  void times(List<StepTime> times, Script script) {
    List<String> lines = new ArrayList<>();
    lines.add("  from    time  step");
    for (StepTime time : times) {
      String kind = time.step().kind().title();
      String title = time.step().title();
      object
          .withArray("/steps")
          .addObject()
          .put("kind", kind)
          .put("title", title)
          .put("line", time.step().place())
          .put("fromMillis", time.end() - time.millis())
          .put("millis", time.millis())
          .put("tooLateMillis", time.over());
      lines.add(
          "%6s  %6s  %s%s"
              .formatted(
                  StepTime.clock(time.end() - time.millis()),
                  StepTime.clock(time.millis()),
                  kind.equals(title) ? title : kind + ": " + title,
                  time.over() > 0 ? "   (" + StepTime.clock(time.over()) + " too late)" : ""));
    }
    int slides = script.deck().slides().size();
    int minutes = script.deck().lesson().plan().minutes();
    lines.add(
        "%6s          end; %d slides, %d minutes wanted"
            .formatted(StepTime.clock(script.millis()), slides, minutes));
    object.put("millis", script.millis()).put("slides", slides).put("minutesWanted", minutes);
    lines.forEach(line -> print(line + System.lineSeparator()));
  }

  /** Something in the plan that is not so. */
  void complaint(Complaint complaint) {
    add("complaints", complaint);
    console.err().println("error: " + complaint.forReader());
  }

  /** Something that may stay so. */
  void warning(Complaint complaint) {
    add("warnings", complaint);
    console.err().println("warning: " + complaint.forReader());
  }

  private void add(String list, Complaint complaint) {
    object
        .withArray("/" + list)
        .addObject()
        .put("line", complaint.line())
        .put("text", complaint.text())
        .put("found", complaint.found())
        .put("mend", complaint.mend());
  }

  /** Text that could not be read. */
  void refusal(Refusal refusal) {
    add("complaints", new Complaint(0, refusal.text(), refusal.input(), refusal.mend()));
    console.err().println(ErrorCaret.write(refusal));
  }

  /** A wish that cannot be met. */
  void refusal(String sentence) {
    add("complaints", new Complaint(0, sentence, "", ""));
    console.err().println("error: " + sentence);
  }

  private void print(String text) {
    if (!json) {
      console.out().print(text);
      console.out().flush();
    }
  }
}
