package rootwright.cli;

import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import rootwright.desk.Desk;
import rootwright.desk.keep.KeptProfile;
import rootwright.working.route.ClassProfile;

/** Which routes the class in front of the coach has, typed or kept under the name of the class. */
final class ClassOptions {

  @Option(
      names = "--without",
      split = ",",
      paramLabel = "ROUTE",
      description = "Routes the class does not have yet, by name.")
  Set<String> without = Set.of();

  @Option(
      names = "--class",
      paramLabel = "NAME",
      description =
          "A class whose routes were kept with --keep-class; “"
              + KeptProfile.USUAL
              + "” is that of"
              + " the page.")
  @Nullable String name;

  @Option(
      names = "--keep-class",
      paramLabel = "NAME",
      description = "Keep what --without says as the class of this name.")
  @Nullable String kept;

  @Option(
      names = "--folder",
      paramLabel = "FOLDER",
      description = "Where classes are kept (${DEFAULT-VALUE}).",
      defaultValue = "${sys:user.home}/.rootwright")
  Path folder = Path.of(".");

  /**
   * What the class has; typed routes are left out in addition to those kept.
   *
   * @throws IllegalArgumentException if a name cannot be one
   */
  ClassProfile profile(Desk desk, Console console) {
    Set<String> missing = new TreeSet<>(without);
    noteUnusual(desk, console);
    if (name != null) {
      missing.addAll(new KeptProfile(folder, name).without());
    }
    if (kept != null) {
      new KeptProfile(folder, kept).choose(missing);
    }
    return new ClassProfile(missing);
  }

  /** Some kinds of ask have routes of their own, so an unusual name is noted and not refused. */
  private void noteUnusual(Desk desk, Console console) {
    for (String route : without) {
      if (!desk.routes().containsKey(route)) {
        console
            .err()
            .printf(
                "note: “%s” is none of the usual routes: %s%n",
                route, String.join(", ", desk.routes().keySet()));
      }
    }
  }
}
