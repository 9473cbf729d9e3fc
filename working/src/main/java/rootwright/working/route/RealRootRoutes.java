package rootwright.working.route;

import java.util.List;
import java.util.stream.Stream;
import rootwright.working.ask.RealRange;

/** The routes to what can be said of real roots; a new one registers itself here. */
public final class RealRootRoutes {

  private static final List<Route> COUNTS =
      List.of(new DiscriminantSign(), new SignRule(RealRange.ALL), new SturmCount(RealRange.ALL));

  private static final List<Route> WHETHER_ALL =
      List.of(new NewtonInequality(), new SumOfSquares());

  /** The routes to the sum over the real roots alone. */
  public static final List<Route> SUMS = List.of(new RealPairs(), new RealQuadratics());

  /** All of them, for whoever wants to know their names. */
  public static final List<Route> ALL =
      Stream.of(COUNTS, WHETHER_ALL, SUMS).flatMap(List::stream).toList();

  private RealRootRoutes() {}

  /** The routes to the number of roots in a range, in the order a coach meets them. */
  public static List<Route> counting(RealRange range) {
    return range == RealRange.ALL ? COUNTS : List.of(new SignRule(range), new SturmCount(range));
  }

  /** The routes to whether all roots are real. */
  public static List<Route> whetherAll() {
    return Stream.concat(WHETHER_ALL.stream(), COUNTS.stream().map(AllRealByCount::new)).toList();
  }
}
