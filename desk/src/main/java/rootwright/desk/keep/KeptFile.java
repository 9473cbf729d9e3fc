package rootwright.desk.keep;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/**
 * A value kept as a JSON file. The file is replaced in one move, so that a crash leaves the old
 * value or the new one, never half of each.
 *
 * @param <T> what is kept
 */
public final class KeptFile<T> {

  private static final ObjectMapper JSON =
      new ObjectMapper().enable(SerializationFeature.INDENT_OUTPUT);

  private final Path file;
  private final TypeReference<T> type;

  /** The file, which need not exist, and what it holds. */
  public KeptFile(Path file, TypeReference<T> type) {
    this.file = file;
    this.type = type;
  }

  /**
   * The kept value, or the given one if nothing is kept yet. A file that cannot be read is put
   * aside under another name rather than overwritten.
   */
  public T readOr(T otherwise) {
    if (!Files.exists(file)) {
      return otherwise;
    }
    try {
      return JSON.readValue(Files.readAllBytes(file), type);
    } catch (JsonProcessingException spoilt) {
      move(file, file.resolveSibling(file.getFileName() + ".unreadable"));
      return otherwise;
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  /** Keeps a value. */
  public void write(T value) {
    Path fresh = file.resolveSibling(file.getFileName() + ".new");
    try {
      Files.createDirectories(file.toAbsolutePath().getParent());
      Files.write(fresh, JSON.writeValueAsBytes(value));
    } catch (IOException unwritable) {
      throw new UncheckedIOException(unwritable);
    }
    move(fresh, file);
  }

  private static void move(Path from, Path to) {
    try {
      Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
    } catch (IOException unwritable) {
      throw new UncheckedIOException(unwritable);
    }
  }
}
