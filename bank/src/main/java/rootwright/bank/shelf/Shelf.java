package rootwright.bank.shelf;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import rootwright.algebra.notation.PlainWriter;
import rootwright.algebra.notation.PolynomialFormula;
import rootwright.algebra.notation.UnreadableException;
import rootwright.composing.twin.Fingerprint;
import rootwright.composing.twin.Twin;
import rootwright.working.Subjects;
import rootwright.working.problem.Statement;
import rootwright.working.solve.Given;

/**
 * The shelf as a plain-text file: one problem a line, {@code polynomial ; ask}, with comment lines.
 * The same file can be worked as a list. A problem is added by appending one line, so that nothing
 * that stands there is ever rewritten.
 */
public final class Shelf {

  private static final String MARK = "# fingerprint ";

  private final Path file;
  private final Subjects subjects;

  /** The shelf kept in a file, which need not exist yet; its lines are read as these subjects. */
  public Shelf(Path file, Subjects subjects) {
    this.file = file;
    this.subjects = subjects;
  }

  /**
   * Everything on the shelf; lines that cannot be read are passed over here and named by working
   * the file as a list.
   *
   * @throws IOException if the file cannot be read
   */
  public List<ShelfEntry> entries() throws IOException {
    List<ShelfEntry> entries = new ArrayList<>();
    if (!Files.exists(file)) {
      return entries;
    }
    List<String> lines = Files.readAllLines(file, StandardCharsets.UTF_8);
    String kept = "";
    for (int k = 0; k < lines.size(); k++) {
      String line = lines.get(k).strip();
      if (line.startsWith(MARK)) {
        kept = line.substring(MARK.length()).strip();
      } else if (!line.isEmpty() && !line.startsWith("#")) {
        entry(k + 1, line, kept).ifPresent(entries::add);
        kept = "";
      }
    }
    return entries;
  }

  private Optional<ShelfEntry> entry(int number, String line, String kept) {
    int semicolon = line.indexOf(';');
    if (semicolon < 0) {
      return Optional.empty();
    }
    try {
      Given given =
          subjects.read(
              Statement.of(
                  line.substring(0, semicolon).strip(), line.substring(semicolon + 1).strip()));
      String fingerprint = kept.isEmpty() ? Fingerprint.of(given).text() : kept;
      return Optional.of(new ShelfEntry(number, line, given, fingerprint));
    } catch (UnreadableException unreadable) {
      return Optional.empty();
    }
  }

  /**
   * Puts a problem on the shelf, unless it is there already, in whatever clothes. A shift is work
   * of its own for a student, so it is put there and reported.
   *
   * @return the problems it is related to; if one of them is the same in other clothes, nothing was
   *     put on the shelf
   * @throws UnreadableException if the statement cannot be read
   * @throws IOException if the file cannot be read or written
   */
  public List<ShelfTwin> add(Statement statement) throws UnreadableException, IOException {
    Given given = subjects.read(statement);
    List<ShelfTwin> twins = twins(given);
    if (twins.stream().noneMatch(twin -> twin.twin().relation().isRefused())) {
      append(statement, given);
    }
    return twins;
  }

  /** Multiplied out if it is about one polynomial with numbers; else as it was typed. */
  private static String line(Statement statement, Given given) {
    return given
        .problem()
        .map(
            problem ->
                "%s ; %s"
                    .formatted(
                        PlainWriter.write(
                            PolynomialFormula.of(problem.polynomial(), problem.unknown())),
                        PlainWriter.write(problem.ask())))
        .orElseGet(
            () ->
                "%s ; %s"
                    .formatted(statement.polynomial().strip(), statement.find().strip())
                    .strip());
  }

  private void append(Statement statement, Given given) throws IOException {
    String line = line(statement, given);
    if (file.toAbsolutePath().getParent() != null) {
      Files.createDirectories(file.toAbsolutePath().getParent());
    }
    Files.writeString(
        file,
        MARK + Fingerprint.of(given).text() + "\n" + line + "\n",
        StandardCharsets.UTF_8,
        StandardOpenOption.CREATE,
        StandardOpenOption.APPEND);
  }

  /**
   * The problems on the shelf that a problem is related to, with how: the same in other clothes, or
   * shifted.
   *
   * @throws IOException if the file cannot be read
   */
  public List<ShelfTwin> twins(Given given) throws IOException {
    List<ShelfTwin> twins = new ArrayList<>();
    for (ShelfEntry entry : entries()) {
      Twin.relation(entry.given(), given).ifPresent(twin -> twins.add(new ShelfTwin(entry, twin)));
    }
    return twins;
  }

  /**
   * The problems whose line contains every one of these words, letters of either case.
   *
   * @throws IOException if the file cannot be read
   */
  public List<ShelfEntry> find(List<String> words) throws IOException {
    return entries().stream()
        .filter(
            entry ->
                words.stream()
                    .allMatch(
                        word ->
                            entry
                                .text()
                                .toLowerCase(Locale.ROOT)
                                .contains(word.toLowerCase(Locale.ROOT))))
        .toList();
  }

  /**
   * What the composer stays away from.
   *
   * @throws IOException if the file cannot be read
   */
  public Set<String> fingerprints() throws IOException {
    return entries().stream().map(ShelfEntry::fingerprint).collect(Collectors.toSet());
  }
}
