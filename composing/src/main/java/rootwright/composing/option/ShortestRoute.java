package rootwright.composing.option;

import java.util.HashSet;
import java.util.Set;
import java.util.stream.Collectors;
import rootwright.algebra.number.Rational;
import rootwright.working.solve.Solution;
import rootwright.working.step.Idea;
import rootwright.working.step.Step;

/**
 * The ideas on the lines of the shortest working, and which wrong turnings lurk there.
 *
 * @param ideas the ideas, one for each kind of step
 */
record ShortestRoute(Set<Idea> ideas) {

  private static final Rational HALF = Rational.of(1, 2);

  ShortestRoute {
    ideas = Set.copyOf(ideas);
  }

  /** The ideas of the first working; none if there is no working. */
  static ShortestRoute of(Solution solution) {
    return new ShortestRoute(
        solution.routes().stream()
            .limit(1)
            .flatMap(working -> working.steps().stream())
            .map(Step::idea)
            .collect(Collectors.toSet()));
  }

  /** The steps on which ways to this wrong value pass. */
  Set<Idea> covered(WrongValue wrong) {
    return wrong.ways().stream()
        .flatMap(way -> steps(way).stream())
        .collect(Collectors.toUnmodifiableSet());
  }

  /**
   * The weight of a wrong value on this route: a way that needs a line which the shortest working
   * does not have counts half, since those who go the shortest way do not come by it (a judgement
   * of practice).
   */
  Rational weight(WrongValue wrong) {
    return wrong.ways().stream()
        .map(
            way -> steps(way).size() < way.spots().size() ? way.weight().times(HALF) : way.weight())
        .reduce(Rational.ZERO, Rational::plus);
  }

  private Set<Idea> steps(WayThere way) {
    Set<Idea> steps = new HashSet<>();
    for (Idea spot : way.spots()) {
      if (ideas.contains(spot)) {
        steps.add(spot);
      } else if (spot == Idea.EXPAND && ideas.contains(Idea.BUILD)) {
        // Who builds from e's multiplies out in the head, and may go wrong doing it.
        steps.add(Idea.BUILD);
      }
    }
    return steps;
  }
}
