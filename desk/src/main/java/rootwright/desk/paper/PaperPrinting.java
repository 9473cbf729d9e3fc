package rootwright.desk.paper;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rootwright.press.Outputs;
import rootwright.press.PrintJob;
import rootwright.press.deliverable.Deliverable;
import rootwright.press.deliverable.Deliverables;
import rootwright.press.output.Output;
import rootwright.press.paper.BlockedException;
import rootwright.press.paper.Paper;
import rootwright.press.paper.Version;

/** The files that an order for printing comes to. */
final class PaperPrinting {

  private PaperPrinting() {}

  /**
   * The files, each once; a document that speaks of all versions is one file.
   *
   * @param errata sheets that correct the edition before, printed with everything
   * @throws IllegalArgumentException if a name is unknown, or a format cannot hold a document that
   *     was asked for by name
   */
  static List<PrintJob> jobs(Paper paper, PrintOrder order, List<Deliverable> errata)
      throws BlockedException {
    paper.requirePrintable();
    Map<String, PrintJob> jobs = new LinkedHashMap<>();
    for (Output output : outputs(order)) {
      for (Deliverable deliverable : deliverables(order, errata)) {
        if (!isHeld(paper, order, deliverable, output)) {
          continue;
        }
        for (Version version : paper.content().versions()) {
          PrintJob job = new PrintJob(paper, version.mark(), deliverable, order.layout(), output);
          jobs.putIfAbsent(job.fileName(), job);
        }
      }
    }
    return List.copyOf(jobs.values());
  }

  /** Of everything, what a format cannot hold is left out; asked for by name, it is said. */
  private static boolean isHeld(
      Paper paper, PrintOrder order, Deliverable deliverable, Output output)
      throws BlockedException {
    String mark = paper.content().versions().get(0).mark();
    if (output.holds(deliverable.document(paper, mark, order.layout()))) {
      return true;
    }
    if (order.documents().isEmpty()) {
      return false;
    }
    throw new IllegalArgumentException(
        "the format %s cannot hold the document %s; print it as pdf or html"
            .formatted(output.name(), deliverable.name()));
  }

  private static Collection<Deliverable> deliverables(PrintOrder order, List<Deliverable> errata) {
    List<Deliverable> all = new ArrayList<>(Deliverables.ALL);
    all.addAll(errata);
    if (order.documents().isEmpty()) {
      return all;
    }
    List<Deliverable> wanted = new ArrayList<>();
    for (String name : order.documents()) {
      wanted.add(
          all.stream()
              .filter(one -> one.name().equals(name))
              .findFirst()
              .orElseThrow(
                  () ->
                      new IllegalArgumentException(
                          "there is no document “%s”; there are %s"
                              .formatted(
                                  name,
                                  String.join(
                                      ", ", all.stream().map(Deliverable::name).toList())))));
    }
    return wanted;
  }

  private static List<Output> outputs(PrintOrder order) {
    Outputs outputs = Outputs.usual();
    List<Output> wanted = new ArrayList<>();
    for (String name : order.formats()) {
      wanted.add(
          outputs
              .named(name)
              .orElseThrow(
                  () ->
                      new IllegalArgumentException(
                          "there is no format “%s”; there are %s"
                              .formatted(
                                  name,
                                  String.join(
                                      ", ", outputs.all().stream().map(Output::name).toList())))));
    }
    return wanted;
  }
}
