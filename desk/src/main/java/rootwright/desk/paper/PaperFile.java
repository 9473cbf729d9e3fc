package rootwright.desk.paper;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import com.fasterxml.jackson.dataformat.yaml.YAMLGenerator;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Locale;
import rootwright.press.paper.State;

/**
 * The file of a paper: YAML that a person can read and edit in any editor. A file is replaced as a
 * whole, so that a crash leaves the old one or the new one.
 */
public final class PaperFile {

  private static final String HEAD =
      """
      # A paper of problems on roots of polynomials. It may be edited here as long as it is not
      # frozen. A key belongs to the statement under "read-from"; after an edit it is stale, and
      # nothing is printed before the paper has been checked again.
      """;

  private static final int LARGEST = 4_000_000;

  private static final YAMLMapper YAML =
      new YAMLMapper(
          YAMLFactory.builder()
              .disable(YAMLGenerator.Feature.WRITE_DOC_START_MARKER)
              .disable(YAMLGenerator.Feature.SPLIT_LINES)
              .enable(YAMLGenerator.Feature.INDENT_ARRAYS_WITH_INDICATOR)
              .build());

  private final Path path;

  /** The file at a path, which need not exist yet. */
  public PaperFile(Path path) {
    this.path = path;
  }

  /** Where it lies. */
  public Path path() {
    return path;
  }

  /**
   * What it says.
   *
   * @throws IllegalArgumentException if there is no such file or it is no paper; says what is wrong
   * @throws IOException if it cannot be read
   */
  public FiledPaper read() throws IOException {
    if (!Files.isRegularFile(path)) {
      throw new IllegalArgumentException("there is no paper at " + path);
    }
    if (Files.size(path) > LARGEST) {
      throw new IllegalArgumentException("too large for a paper: " + path);
    }
    return parse(Files.readString(path, StandardCharsets.UTF_8));
  }

  /**
   * Replaces what it says.
   *
   * @throws IOException if it cannot be written
   */
  public void write(FiledPaper paper) throws IOException {
    Path folder = path.toAbsolutePath().getParent();
    if (folder != null) {
      Files.createDirectories(folder);
    }
    Path fresh = path.resolveSibling(path.getFileName() + ".new");
    Files.writeString(fresh, text(paper), StandardCharsets.UTF_8);
    Files.move(fresh, path, StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.ATOMIC_MOVE);
  }

  /** The text of a file. */
  public static String text(FiledPaper paper) {
    try {
      return HEAD + YAML.writeValueAsString(PaperTree.of(paper));
    } catch (JsonProcessingException impossible) {
      throw new IllegalStateException("a tree of texts can be written", impossible);
    }
  }

  /** The same as a JSON object. */
  public static ObjectNode json(FiledPaper paper) {
    return PaperTree.of(paper);
  }

  /**
   * The paper of a text.
   *
   * @throws IllegalArgumentException if it is none; says what is wrong
   */
  public static FiledPaper parse(String text) {
    try {
      JsonNode tree = YAML.readTree(text);
      return new PaperTree(tree).paper();
    } catch (JsonProcessingException unreadable) {
      throw new IllegalArgumentException(
          "no paper: line %d of the file is not YAML: %s"
              .formatted(
                  unreadable.getLocation() == null ? 0 : unreadable.getLocation().getLineNr(),
                  unreadable.getOriginalMessage().lines().findFirst().orElse("")),
          unreadable);
    }
  }

  /** A state as it stands in a file. */
  public static String word(State state) {
    return state.name().toLowerCase(Locale.ROOT);
  }
}
