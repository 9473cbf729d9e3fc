package rootwright.desk.table;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rootwright.composing.blueprint.ScanBook;
import rootwright.composing.scan.ScanState;

/**
 * A plain-text file in which an order keeps how far its scans are, so that it can be stopped and
 * gone on with. It holds the order too, and refuses to go on with another one. Written every two
 * seconds, each time as a whole: a file that is there is never half written.
 */
public final class ScanFile implements ScanBook {

  private static final String HEADING = "# An order that was stopped; compose --state goes on.";
  private static final String ORDER = "| ";
  private static final String END = "end";
  private static final long PAUSE = 2_000_000_000L;

  private final Path file;
  private final String order;
  private final Map<String, ScanState> states = new LinkedHashMap<>();
  private long written = System.nanoTime();

  private ScanFile(Path file, String order) {
    this.file = file;
    this.order = order;
  }

  /**
   * Opens the file, which need not exist yet.
   *
   * @param order the order as YAML
   * @throws IllegalArgumentException if the file belongs to another order or is something else
   * @throws IOException if it cannot be read
   */
  static ScanFile open(Path file, String order) throws IOException {
    ScanFile book = new ScanFile(file, order);
    if (Files.exists(file)) {
      book.read();
    }
    return book;
  }

  /**
   * The order that a file keeps, as YAML; nothing if it is no such file.
   *
   * @throws IOException if it cannot be read
   */
  static Optional<String> orderIn(Path file) throws IOException {
    List<String> lines = Files.readAllLines(file, StandardCharsets.UTF_8);
    if (lines.isEmpty() || !lines.get(0).equals(HEADING)) {
      return Optional.empty();
    }
    StringBuilder order = new StringBuilder();
    lines.stream()
        .filter(line -> line.startsWith(ORDER))
        .forEach(line -> order.append(line.substring(ORDER.length())).append('\n'));
    return Optional.of(order.toString());
  }

  private void read() throws IOException {
    List<String> lines =
        new String(Files.readAllBytes(file), StandardCharsets.UTF_8).lines().toList();
    if (lines.isEmpty() || !lines.get(0).equals(HEADING)) {
      throw new IllegalArgumentException(
          "%s is no file of a stopped order; name another one or take it away".formatted(file));
    }
    StringBuilder kept = new StringBuilder();
    List<String> block = new ArrayList<>();
    for (String line : lines.subList(1, lines.size())) {
      if (line.startsWith(ORDER)) {
        kept.append(line.substring(ORDER.length())).append('\n');
      } else {
        block.add(line);
        if (line.equals(END)) {
          ScanState state = ScanState.parse(String.join("\n", block));
          states.put(state.identity(), state);
          block.clear();
        }
      }
    }
    if (!kept.toString().equals(order)) {
      throw new IllegalArgumentException(
          "%s belongs to another order; give the same wishes again, or name another file"
              .formatted(file));
    }
  }

  @Override
  public synchronized Optional<ScanState> stateOf(String identity) {
    return Optional.ofNullable(states.get(identity));
  }

  @Override
  public synchronized void keep(ScanState state) {
    states.put(state.identity(), state);
    if (System.nanoTime() - written > PAUSE) {
      write();
    }
  }

  /** Writes everything kept so far. */
  public synchronized void write() {
    StringBuilder text = new StringBuilder(HEADING).append('\n');
    order.lines().forEach(line -> text.append(ORDER).append(line).append('\n'));
    states.values().forEach(state -> text.append(state.toText()));
    Path whole = file.toAbsolutePath();
    Path fresh = whole.resolveSibling(whole.getFileName() + ".new");
    try {
      Files.writeString(fresh, text, StandardCharsets.UTF_8);
      Files.move(fresh, whole, StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.ATOMIC_MOVE);
    } catch (IOException failure) {
      throw new UncheckedIOException("cannot write " + file, failure);
    }
    written = System.nanoTime();
  }

  /**
   * Takes the file away, when the order is filled.
   *
   * @throws IOException if it cannot be deleted
   */
  public void finish() throws IOException {
    Files.deleteIfExists(file);
  }
}
