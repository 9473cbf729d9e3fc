package rootwright.desk.keep;

import com.fasterxml.jackson.core.type.TypeReference;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;

/** A class of the coach: which routes it does not have yet. */
public final class KeptProfile {

  /** The name of the class that the page has in front of it. */
  public static final String USUAL = "profile";

  private final KeptFile<Set<String>> file;
  private Set<String> without;

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
    if (!name.matches("[\\p{L}\\p{N}-]{1,40}")) {
      throw new IllegalArgumentException(
          "a class cannot be called “%s”; take letters, digits and hyphens".formatted(name));
    }
    file =
        new KeptFile<>(folder.resolve("class-%s.json".formatted(name)), new TypeReference<>() {});
    without = Set.copyOf(file.readOr(Set.of()));
  }

  /** Names of the routes that the class does not have. */
  public synchronized Set<String> without() {
    return without;
  }

  /** Keeps another choice. */
  public synchronized void choose(Set<String> routes) {
    without = Set.copyOf(routes);
    file.write(new TreeSet<>(routes));
  }
}
