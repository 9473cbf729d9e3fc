package rootwright.web.endpoint;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.FormulaReader;
import rootwright.algebra.notation.UnreadableException;
import rootwright.desk.Desk;
import rootwright.desk.contract.FormulaForms;
import rootwright.desk.paper.FiledItem;
import rootwright.desk.paper.FiledPaper;
import rootwright.desk.paper.PaperFile;
import rootwright.desk.paper.PaperTray;
import rootwright.working.problem.Problem;

/** A paper as the tray's page shows it: the file, and its formulas set. */
final class PaperView {

  private final Desk desk;

  PaperView(Desk desk) {
    this.desk = desk;
  }

  /** One line of the list. */
  static ObjectNode line(String name, FiledPaper paper) {
    ObjectNode line = JsonNodeFactory.instance.objectNode();
    line.put("name", name);
    line.put("title", paper.title());
    line.put("date", paper.date().toString());
    line.put("edition", paper.edition());
    line.put("state", PaperFile.word(paper.state()));
    line.put("code", paper.code());
    line.put("stale", paper.stale().size());
    return line;
  }

  /** The whole paper with the names of its printed files. */
  ObjectNode of(String name, FiledPaper paper, PaperTray tray) throws IOException {
    ObjectNode all = PaperFile.json(paper);
    all.put("name", name);
    paper.stale().forEach(all.putArray("stale")::add);
    ObjectNode set = all.putObject("set");
    paper.items().forEach((item, filed) -> set(set.putObject(item), filed));
    ArrayNode printed = all.putArray("printed");
    Path folder = tray.printed(name);
    if (Files.isDirectory(folder)) {
      try (Stream<Path> files = Files.list(folder)) {
        files
            .map(file -> String.valueOf(file.getFileName()))
            .filter(file -> !file.endsWith(".part") && file.startsWith(paper.code()))
            .sorted()
            .forEach(printed::add);
      }
    }
    return all;
  }

  /** Statement and key as formulas, where they can be read. */
  private void set(ObjectNode into, FiledItem item) {
    if (!(item instanceof FiledItem.Problem problem)) {
      return;
    }
    try {
      Problem read = desk.read(problem.statement());
      FormulaForms.FOR_PAGES.write(
          into.putObject("given"), Formula.equation(read.stated(), Formula.number(0)));
      FormulaForms.FOR_PAGES.write(into.putObject("find"), read.ask());
      read.roots().forEach(into.putArray("roots")::add);
    } catch (UnreadableException unreadable) {
      into.removeAll();
      into.put("unreadable", unreadable.refusal().text());
    }
    formula(into.putObject("key"), problem.key());
    ArrayNode options = into.putArray("options");
    problem.options().forEach(option -> formula(options.addObject(), option));
  }

  private static void formula(ObjectNode into, String text) {
    try {
      FormulaForms.FOR_PAGES.write(into, FormulaReader.formula(text));
    } catch (UnreadableException words) {
      into.put("text", text);
    }
  }
}
