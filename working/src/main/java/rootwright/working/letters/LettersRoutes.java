package rootwright.working.letters;

import java.util.List;
import rootwright.working.route.RouteOn;

/** The routes by which a letter is found. */
final class LettersRoutes {

  static final List<RouteOn<LettersAsked>> ALL =
      List.of(new ConditionInLetter(), new NameTheRoots(), new ForcedRoot(), new SharedWithSlope());

  private LettersRoutes() {}
}
