package rootwright.desk.paper;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** A folder of papers, each under a short name; printed files lie in a folder beside each paper. */
public final class PaperTray {

  private static final String ENDING = ".yaml";
  private static final Pattern NAME = Pattern.compile("[a-z0-9][a-z0-9-]{0,79}");
  private static final Pattern PRINTED = Pattern.compile("[A-Za-z0-9][A-Za-z0-9.-]{0,79}");

  private final Path folder;

  /** The tray in a folder, which need not exist yet. */
  public PaperTray(Path folder) {
    this.folder = folder;
  }

  /**
   * All papers by their names, in the order of the names; a file that is no paper is left out.
   *
   * @throws IOException if the folder cannot be read
   */
  public Map<String, FiledPaper> all() throws IOException {
    Map<String, FiledPaper> papers = new LinkedHashMap<>();
    if (!Files.isDirectory(folder)) {
      return papers;
    }
    List<Path> files = new ArrayList<>();
    try (Stream<Path> all = Files.list(folder)) {
      all.filter(path -> path.toString().endsWith(ENDING)).sorted().forEach(files::add);
    }
    for (Path file : files) {
      String name = String.valueOf(file.getFileName());
      name = name.substring(0, name.length() - ENDING.length());
      if (NAME.matcher(name).matches()) {
        put(name, new PaperFile(file), papers);
      }
    }
    return papers;
  }

  private static void put(String name, PaperFile file, Map<String, FiledPaper> papers)
      throws IOException {
    try {
      papers.put(name, file.read());
    } catch (IllegalArgumentException noPaper) {
      // It stays where it is for the coach to look at.
    }
  }

  /**
   * The file of a paper.
   *
   * @throws IllegalArgumentException if that is no name of ours
   */
  public PaperFile file(String name) {
    if (!NAME.matcher(name).matches()) {
      throw new IllegalArgumentException("no paper is called “%s”".formatted(name));
    }
    return new PaperFile(folder.resolve(name + ENDING));
  }

  /** A name for a new paper that no file has yet: its day and its title. */
  public String freshName(FiledPaper paper) {
    String title =
        Normalizer.normalize(paper.title(), Normalizer.Form.NFKD)
            .toLowerCase(Locale.ROOT)
            .replaceAll("[^a-z0-9]+", "-")
            .replaceAll("^-+", "");
    String stem =
        (paper.date() + "-" + title.substring(0, Math.min(40, title.length())))
            .replaceAll("-+$", "");
    return free(stem, stem, 2);
  }

  /** A name for the next edition of a paper. */
  public String nameOfNextEdition(String name, int edition) {
    String stem = name.replaceAll("-e\\d+$", "");
    return free(stem + "-e" + edition, stem + "-e" + edition, 2);
  }

  private String free(String wanted, String stem, int next) {
    return Files.exists(folder.resolve(wanted + ENDING))
        ? free(stem + "-" + next, stem, next + 1)
        : wanted;
  }

  /** Where the printed files of a paper lie. */
  public Path printed(String name) {
    return folder.resolve(file(name).path().getFileName() + ".printed");
  }

  /**
   * A printed file of a paper.
   *
   * @throws IllegalArgumentException if there is none
   */
  public Path printed(String name, String file) {
    Path path = printed(name).resolve(file);
    if (!PRINTED.matcher(file).matches() || !Files.isRegularFile(path)) {
      throw new IllegalArgumentException("there is no printed file “%s”".formatted(file));
    }
    return path;
  }
}
