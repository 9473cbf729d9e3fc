package rootwright.working.letters;

import rootwright.working.answer.Answer;

/**
 * A letter that is to be found, with its solution.
 *
 * @param problem the problem
 * @param solution all values of the letter, judged
 */
record LettersAsked(LetteredProblem problem, LetterSolution solution) {

  /** The letter. */
  String letter() {
    return problem.polynomial().letters().get(0);
  }

  /** The values that are kept. */
  Answer answer() {
    return new Answer.Solutions(solution.kept());
  }
}
