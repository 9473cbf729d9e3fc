package rootwright.desk.paper;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import rootwright.algebra.notation.UnreadableException;
import rootwright.press.Outputs;
import rootwright.press.PrintJob;
import rootwright.press.PrintRun;
import rootwright.press.deliverable.Deliverable;
import rootwright.press.deliverable.Deliverables;
import rootwright.press.deliverable.Erratum;
import rootwright.press.document.Layout;
import rootwright.press.paper.BlockedException;
import rootwright.press.paper.Checker;
import rootwright.press.paper.Complaint;
import rootwright.press.paper.Content;
import rootwright.press.paper.Paper;
import rootwright.press.paper.State;
import rootwright.press.paper.VersionOptions;

/** What a coach does with papers: draft, check, freeze, print, compare, correct. */
public final class Papers {

  private final Checker checker;
  private final SiblingSource siblings;

  /** With the way to work a statement and the way to find siblings. */
  public Papers(Checker checker, SiblingSource siblings) {
    this.checker = checker;
    this.siblings = siblings;
  }

  /**
   * Drafts a paper: siblings are found, options chosen, hints written.
   *
   * @throws UnreadableException if a problem cannot be read
   * @throws IllegalArgumentException if there are not enough siblings, or an order is out of range
   */
  public FiledPaper draft(PaperOrder order) throws UnreadableException {
    return new Drafting(order, new PaperReading(checker), siblings).draft();
  }

  /**
   * Reads every statement anew, fills in what is missing, and compares the versions.
   *
   * @throws BlockedException with everything that is in the way
   * @throws IllegalStateException if the paper is frozen
   */
  public FiledPaper checked(FiledPaper filed) throws BlockedException {
    requireOpen(filed);
    return PaperFiling.of(filed, check(filed));
  }

  private Paper check(FiledPaper filed) throws BlockedException {
    PaperReading reading = new PaperReading(checker);
    Paper read = reading.readAnew(filed);
    Content filled = VersionOptions.filled(read.content(), choices(filed));
    return new Paper(filled, State.DRAFT, "", filed.edition()).checked(reading::solution);
  }

  /** As many choices as most items of the paper have; the usual number if none has any. */
  private static int choices(FiledPaper filed) {
    return filed.items().values().stream()
        .filter(FiledItem.Problem.class::isInstance)
        .mapToInt(item -> ((FiledItem.Problem) item).options().size())
        .filter(count -> count >= 3 && count <= 5)
        .max()
        .orElse(4);
  }

  private static void requireOpen(FiledPaper filed) {
    if (filed.state().isFinal()) {
      throw new IllegalStateException(
          "paper %s is %s and never changes; a new edition corrects it"
              .formatted(filed.code(), PaperFile.word(filed.state())));
    }
  }

  /**
   * Freezes a checked paper; everything is checked once more.
   *
   * @throws BlockedException with everything that is in the way
   * @throws IllegalStateException if the paper is not checked, or frozen already
   */
  public FiledPaper frozen(FiledPaper filed) throws BlockedException {
    requireOpen(filed);
    List<Complaint> stale = stale(filed);
    if (!stale.isEmpty()) {
      throw new BlockedException(stale);
    }
    if (filed.state() != State.CHECKED) {
      throw new IllegalStateException("the paper is a draft; check it before it is frozen");
    }
    return PaperFiling.of(filed, check(filed).frozen());
  }

  /** The items whose key is stale, one complaint each. */
  public static List<Complaint> stale(FiledPaper filed) {
    return filed.stale().stream()
        .map(
            name ->
                new Complaint(
                    "",
                    0,
                    "Item %s: the key is stale, since the statement was changed after it was read;"
                            .formatted(name)
                        + " check the paper."))
        .toList();
  }

  /**
   * Prints a frozen paper into a folder; files that are there already are left. The paper is then
   * printed, which is written into its file.
   *
   * @param threads how many files at a time
   * @return the names of all files of the order
   * @throws BlockedException if the file was changed after it was frozen
   * @throws IllegalStateException if the paper is not frozen
   * @throws IllegalArgumentException if a document or a format is unknown
   * @throws IOException if a file cannot be read or written
   * @throws InterruptedException if the run is broken off; what is printed is kept
   */
  public List<String> print(
      PaperFile file, PrintOrder order, Path folder, PrintRun.Progress progress, int threads)
      throws BlockedException, IOException, InterruptedException {
    FiledPaper filed = file.read();
    List<Complaint> stale = stale(filed);
    if (!stale.isEmpty()) {
      throw new BlockedException(stale);
    }
    if (!filed.state().isFinal()) {
      throw new IllegalStateException(
          "the paper is %s; only a frozen paper is printed"
              .formatted(PaperFile.word(filed.state())));
    }
    Paper paper = new PaperReading(checker).asFiled(filed);
    paper.requireIntact();
    List<PrintJob> jobs = PaperPrinting.jobs(paper, order, errata(file, filed));
    PrintRun.print(jobs, new PrintFolder(folder), progress, threads);
    if (filed.state() != State.PRINTED) {
      file.write(filed.printed());
    }
    return jobs.stream().map(PrintJob::fileName).toList();
  }

  /** The sheets that say what a later edition corrects, if the file of the earlier one is there. */
  private List<Deliverable> errata(PaperFile file, FiledPaper filed)
      throws IOException, BlockedException {
    Optional<FiledPaper.Correction> correction = filed.corrects();
    if (correction.isEmpty()) {
      return List.of();
    }
    PaperFile earlier = new PaperFile(file.path().resolveSibling(correction.get().file()));
    FiledPaper before = earlier.read();
    if (!before.code().equals(correction.get().code())) {
      throw new IllegalArgumentException(
          "the paper at %s is %s, not %s, which this one corrects"
              .formatted(earlier.path(), before.code(), correction.get().code()));
    }
    Paper corrected = new PaperReading(checker).asFiled(before);
    corrected.requireIntact();
    return Erratum.sheets(corrected, correction.get().cause());
  }

  /**
   * The versions side by side as plain text.
   *
   * @throws BlockedException if a key is stale
   */
  public String comparison(FiledPaper filed) throws BlockedException {
    List<Complaint> stale = stale(filed);
    if (!stale.isEmpty()) {
      throw new BlockedException(stale);
    }
    Paper paper = new PaperReading(checker).asFiled(filed);
    String mark = paper.content().versions().get(0).mark();
    byte[] text =
        Outputs.usual()
            .named("text")
            .orElseThrow()
            .print(Deliverables.named("compare").orElseThrow().document(paper, mark, Layout.USUAL));
    return new String(text, StandardCharsets.UTF_8);
  }

  /**
   * Begins a new edition of a frozen paper in a file of its own; the old file stays as it is.
   *
   * @throws IllegalStateException if the paper is not frozen
   * @throws IllegalArgumentException if the file of the new edition is that of the old one
   * @throws IOException if a file cannot be read or written
   */
  public FiledPaper correct(PaperFile from, PaperFile to, LocalDate on, String cause)
      throws IOException {
    if (from.path().toAbsolutePath().normalize().equals(to.path().toAbsolutePath().normalize())) {
      throw new IllegalArgumentException("the new edition needs a file of its own");
    }
    FiledPaper next = from.read().nextEdition(on, cause, String.valueOf(from.path().getFileName()));
    to.write(next);
    return next;
  }
}
