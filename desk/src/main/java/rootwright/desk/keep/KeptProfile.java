package rootwright.desk.keep;

import com.fasterxml.jackson.core.type.TypeReference;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;

/** A class of the coach: which routes it does not have yet. */
public final class KeptProfile {

  /** The name of the class that the page has in front of it. */
  public static final String USUAL = "profile";

  private static final String NAME = "[\\p{L}\\p{N}-]{1,40}";
  private static final String BEFORE = "class-";
  private static final String AFTER = ".json";

  private final KeptFile<Set<String>> file;

  /** The class that the page has in front of it, as kept in a folder. */
  public KeptProfile(Path folder) {
    this(folder, USUAL);
  }

  /**
   * A class by its name; one that was never kept has every route.
   *
   * @throws IllegalArgumentException if the name is not made of letters, digits and hyphens
   */
  public KeptProfile(Path folder, String name) {
    if (!name.matches(NAME)) {
      throw new IllegalArgumentException(
          "a class cannot be called “%s”; take letters, digits and hyphens".formatted(name));
    }
    file = new KeptFile<>(folder.resolve(BEFORE + name + AFTER), new TypeReference<>() {});
  }

  /**
   * The classes that are kept in a folder, each with the routes that it does not have; without the
   * one that the page has in front of it.
   *
   * @throws IOException if the folder cannot be read
   */
  public static Map<String, Set<String>> all(Path folder) throws IOException {
    Map<String, Set<String>> found = new TreeMap<>();
    if (!Files.isDirectory(folder)) {
      return found;
    }
    try (Stream<Path> files = Files.list(folder)) {
      files
          .map(path -> String.valueOf(path.getFileName()))
          .filter(name -> name.startsWith(BEFORE) && name.endsWith(AFTER))
          .map(name -> name.substring(BEFORE.length(), name.length() - AFTER.length()))
          .filter(name -> !name.equals(USUAL) && name.matches(NAME))
          .forEach(name -> found.put(name, new KeptProfile(folder, name).without()));
    }
    return found;
  }

  /** Names of the routes that the class does not have, as they stand in its file now. */
  public synchronized Set<String> without() {
    return Set.copyOf(file.readOr(Set.of()));
  }

  /** Keeps another choice. */
  public synchronized void choose(Set<String> routes) {
    file.write(new TreeSet<>(routes));
  }
}
