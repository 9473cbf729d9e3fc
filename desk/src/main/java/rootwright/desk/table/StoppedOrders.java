package rootwright.desk.table;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * The orders of a coach that were stopped before they were filled, each in a {@link ScanFile} of a
 * folder, so that it can be gone on with. A file is named after its order: the same order finds its
 * own file again.
 */
public final class StoppedOrders {

  private static final String ENDING = ".txt";
  private static final int LETTERS = 16;

  private final Path folder;

  /** The orders of a folder, which need not exist yet. */
  public StoppedOrders(Path folder) {
    this.folder = folder;
  }

  /**
   * The names of the stopped orders, each with the order as YAML.
   *
   * @throws IOException if the folder cannot be read
   */
  public Map<String, String> all() throws IOException {
    Map<String, String> found = new TreeMap<>();
    if (!Files.isDirectory(folder)) {
      return found;
    }
    try (Stream<Path> files = Files.list(folder)) {
      for (Path file : files.filter(path -> path.toString().endsWith(ENDING)).toList()) {
        Optional<String> order = ScanFile.orderIn(file);
        String name = String.valueOf(file.getFileName());
        order.ifPresent(
            yaml -> found.put(name.substring(0, name.length() - ENDING.length()), yaml));
      }
    }
    return found;
  }

  /**
   * The file of an order, from which it goes on if it was stopped before.
   *
   * @param yaml the order as {@link ComposersTable#blueprintAsYaml} writes it
   * @throws IOException if the file cannot be read, or the folder cannot be made
   */
  public ScanFile fileOf(String yaml) throws IOException {
    Files.createDirectories(folder);
    return ScanFile.open(folder.resolve(nameOf(yaml) + ENDING), yaml);
  }

  /**
   * Takes the file of a stopped order away.
   *
   * @param name as in {@link #all}; one that is not there is ignored
   * @throws IOException if it cannot be deleted
   */
  public void forget(String name) throws IOException {
    if (all().containsKey(name)) {
      Files.deleteIfExists(folder.resolve(name + ENDING));
    }
  }

  private static String nameOf(String yaml) {
    try {
      byte[] digest =
          MessageDigest.getInstance("SHA-256").digest(yaml.getBytes(StandardCharsets.UTF_8));
      return HexFormat.of().formatHex(digest).substring(0, LETTERS);
    } catch (NoSuchAlgorithmException impossible) {
      throw new IllegalStateException("every Java has SHA-256", impossible);
    }
  }
}
