package rootwright.composing.blueprint;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rootwright.composing.family.Families;
import rootwright.composing.pattern.Patterns;
import rootwright.working.route.DiscriminantRoutes;
import rootwright.working.route.ImageRoutes;
import rootwright.working.route.RealRootRoutes;
import rootwright.working.route.ResidueRoutes;
import rootwright.working.route.RootRoutes;
import rootwright.working.route.Routes;
import rootwright.working.slip.ImageSlips;
import rootwright.working.slip.Slips;

/** The names that an order may use, and what to say of one that means nothing. */
public final class KnownNames {

  /** The names of all routes, those of single kinds of ask included. */
  public static final Set<String> ROUTES =
      with(
          StatementNames.ROUTES,
          Stream.of(
                  Routes.ALL,
                  DiscriminantRoutes.before(List.of()),
                  ResidueRoutes.ALL,
                  RootRoutes.ALL,
                  RealRootRoutes.ALL,
                  ImageRoutes.in(Optional.empty()))
              .flatMap(Collection::stream)
              .map(route -> route.name()));

  /** The names of all slips. */
  public static final Set<String> SLIPS =
      with(
          StatementNames.SLIPS,
          Stream.concat(Slips.ALL.stream(), ImageSlips.ALL.stream()).map(slip -> slip.name()));

  private KnownNames() {}

  private static Set<String> with(Set<String> some, Stream<String> more) {
    return Stream.concat(some.stream(), more).collect(Collectors.toCollection(TreeSet::new));
  }

  /** A sentence for each name in an order that means nothing, with the nearest that does. */
  static List<String> contradictions(Blueprint blueprint) {
    List<String> found = new ArrayList<>();
    WorkingWish working = blueprint.working();
    Set<String> routes = new TreeSet<>(working.with());
    routes.addAll(working.without());
    working.shorter().forEach(wish -> routes.addAll(List.of(wish.route(), wish.than())));
    unknown("route", routes, ROUTES, found);
    unknown("slip", new TreeSet<>(working.traps()), SLIPS, found);
    if (blueprint.ask() instanceof AskWish.OfFamily family) {
      Set<String> families = families().keySet();
      unknown("family", Set.of(family.name()), families, found);
    } else if (blueprint.ask() instanceof AskWish.Surprise surprise) {
      unknown("kind of ask", new TreeSet<>(surprise.kinds()), kinds(), found);
    }
    return found;
  }

  /** Every family with what its problems ask: asks about one polynomial, then other statements. */
  public static Map<String, String> families() {
    Map<String, String> families = new LinkedHashMap<>();
    Families.ALL.forEach(family -> families.put(family.name(), family.words()));
    Patterns.ALL.forEach(pattern -> families.put(pattern.name(), pattern.words()));
    return families;
  }

  /** The names of all kinds of ask that can be ordered. */
  public static Set<String> kinds() {
    Set<String> kinds = new TreeSet<>(Families.kinds());
    Patterns.ALL.forEach(pattern -> kinds.add(pattern.kind()));
    return kinds;
  }

  private static void unknown(
      String what, Set<String> used, Set<String> known, List<String> found) {
    for (String name : used) {
      if (!known.contains(name)) {
        found.add(
            "there is no %s “%s”; the nearest is %s".formatted(what, name, nearest(name, known)));
      }
    }
  }

  /** The known name that takes the fewest changes of letters; of several the first. */
  public static String nearest(String name, Set<String> known) {
    return new TreeSet<>(known)
        .stream().min(Comparator.comparingInt(each -> changes(name, each))).orElse("none");
  }

  /** How many letters are put in, taken out or replaced (Levenshtein 1966). */
  private static int changes(String one, String other) {
    int[] row = new int[other.length() + 1];
    for (int j = 0; j <= other.length(); j++) {
      row[j] = j;
    }
    for (int i = 1; i <= one.length(); i++) {
      int diagonal = row[0];
      row[0] = i;
      for (int j = 1; j <= other.length(); j++) {
        int replaced = diagonal + (one.charAt(i - 1) == other.charAt(j - 1) ? 0 : 1);
        diagonal = row[j];
        row[j] = Math.min(replaced, 1 + Math.min(row[j], row[j - 1]));
      }
    }
    return row[other.length()];
  }
}
