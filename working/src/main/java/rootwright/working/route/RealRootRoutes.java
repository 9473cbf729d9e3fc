package rootwright.working.route;

import java.util.List;

/** The routes to the number of real roots; a new one registers itself here. */
public final class RealRootRoutes {

  /** In the order of the names a coach meets first. */
  public static final List<Route> ALL =
      List.of(new DiscriminantSign(), new SignRule(), new SturmCount());

  private RealRootRoutes() {}
}
