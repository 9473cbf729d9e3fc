package rootwright.working.letters;

import rootwright.working.answer.Answer;

/**
 * A letter of which all values are wanted at which the roots are of some nature.
 *
 * @param problem the problem
 * @param region the values
 */
record RegionAsked(LetteredProblem problem, LetterRegion region) {

  String letter() {
    return problem.polynomial().letters().get(0);
  }

  /** The values, as a set where they are finitely many. */
  Answer answer() {
    return region.isFinite()
        ? new Answer.Solutions(region.points())
        : new Answer.Interval(IntervalFormula.of(region.pieces(), letter()));
  }
}
