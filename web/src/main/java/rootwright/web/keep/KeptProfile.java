package rootwright.web.keep;

import com.fasterxml.jackson.core.type.TypeReference;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;

/** The class in front of the coach: which routes it does not have yet. */
public final class KeptProfile {

  private final KeptFile<Set<String>> file;
  private Set<String> without;

  /** As kept in a folder. */
  public KeptProfile(Path folder) {
    file = new KeptFile<>(folder.resolve("class-profile.json"), new TypeReference<>() {});
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
