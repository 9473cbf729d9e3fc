package rootwright.working.route;

import java.util.List;

/** The routes to a residue; a new one registers itself here. */
public final class ResidueRoutes {

  /** In the order of the names a coach meets first. */
  public static final List<Route> ALL =
      List.of(
          new ResidueOfValue(),
          new ResidueRecurrence(),
          new ResiduePeriod(),
          new ResidueSquaring());

  private ResidueRoutes() {}
}
