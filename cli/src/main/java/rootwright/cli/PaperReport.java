package rootwright.cli;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Map;
import rootwright.desk.paper.FiledItem;
import rootwright.desk.paper.FiledPaper;
import rootwright.desk.paper.PaperFile;

/** A paper as a coach sees it in a terminal, or as one object for scripts. */
final class PaperReport {

  private final Console console;
  private final boolean json;

  PaperReport(Console console, boolean json) {
    this.console = console;
    this.json = json;
  }

  void print(FiledPaper paper, PaperFile file) {
    if (json) {
      ObjectNode object = PaperFile.json(paper);
      object.put("file", file.path().toString());
      paper.stale().forEach(object.putArray("stale")::add);
      console.out().println(object);
      return;
    }
    console
        .out()
        .printf(
            "%s, edition %d: %s%s%n",
            paper.title(),
            paper.edition(),
            PaperFile.word(paper.state()),
            paper.code().isEmpty() ? "" : ", paper code " + paper.code());
    paper
        .corrects()
        .ifPresent(
            correction ->
                console.out().printf("  corrects %s: %s%n", correction.code(), correction.cause()));
    for (Map.Entry<String, List<String>> version : paper.versions().entrySet()) {
      console
          .out()
          .printf(
              "  %s %s%n",
              version.getKey().isEmpty() ? "items" : "version " + version.getKey() + ":",
              String.join(", ", version.getValue()));
    }
    paper.items().forEach(this::item);
  }

  private void item(String name, FiledItem item) {
    String points = item.points() == 1 ? "1 point" : item.points() + " points";
    if (item instanceof FiledItem.Proof proof) {
      console.out().printf("%4s  prove: %s (%s)%n", name, proof.claim(), points);
      return;
    }
    FiledItem.Problem problem = (FiledItem.Problem) item;
    console
        .out()
        .printf(
            "%4s  %s ; %s (%s, %s)%n",
            name,
            problem.statement().polynomial(),
            problem.statement().find(),
            problem.form().word(),
            points);
    if (!problem.options().isEmpty()) {
      console.out().printf("      options %s%n", String.join(" | ", problem.options()));
    }
    console
        .out()
        .printf(
            "      key %s%s%n",
            problem.key().isEmpty() ? "not found yet" : problem.key(),
            problem.isStale() ? "  STALE: the statement was changed; check the paper" : "");
  }
}
