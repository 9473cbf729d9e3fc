package rootwright.working.route;

import java.util.List;
import java.util.stream.Stream;

/** The routes to a discriminant: its own, and those to any value. */
public final class DiscriminantRoutes {

  private DiscriminantRoutes() {}

  /** Its own routes before those given for values. */
  public static List<Route> before(List<Route> others) {
    return Stream.concat(
            Stream.of(
                new DiscriminantFormula(),
                new DiscriminantByDerivative(),
                new DiscriminantByDivision()),
            others.stream())
        .toList();
  }
}
