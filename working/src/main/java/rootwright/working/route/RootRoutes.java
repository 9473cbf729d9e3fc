package rootwright.working.route;

import java.util.List;

/** The routes to all roots; a new one registers itself here. */
public final class RootRoutes {

  /** In the order of the names a coach meets first. */
  public static final List<Route> ALL =
      List.of(new RationalThenQuadratic(), new SolveForPairs(), new SplitIntoQuadratics());

  private RootRoutes() {}
}
