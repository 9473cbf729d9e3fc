package rootwright.working.route;

import java.util.List;
import java.util.Optional;

/** The routes to a polynomial with given new roots; a new one registers itself here. */
public final class ImageRoutes {

  private ImageRoutes() {}

  /** Every route, for answers in a letter; absent for the letter of the problem. */
  public static List<Route> in(Optional<String> letter) {
    return List.of(
        new InvertMap(letter),
        new SquareTheRoots(letter),
        new SumsOfNewRoots(letter),
        new Eliminate(letter),
        new SumsOverPairs(letter),
        new ValuesTogether(letter));
  }
}
