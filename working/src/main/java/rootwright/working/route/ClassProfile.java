package rootwright.working.route;

import java.util.Set;

/**
 * What a class has been taught.
 *
 * @param without names of routes that this class does not have yet
 */
public record ClassProfile(Set<String> without) {

  /** A class that has every route. */
  public static final ClassProfile EVERYTHING = new ClassProfile(Set.of());

  public ClassProfile {
    without = Set.copyOf(without);
  }

  /** Whether the class has the route of this name. */
  public boolean has(String route) {
    return !without.contains(route);
  }
}
