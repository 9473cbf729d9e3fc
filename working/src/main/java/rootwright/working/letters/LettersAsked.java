package rootwright.working.letters;

import java.math.BigInteger;
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

  /** The values that are kept, or how many there are. */
  Answer answer() {
    return problem.ask() instanceof LetterAsk.NumberOf
        ? new Answer.Count(BigInteger.valueOf(solution.kept().size()))
        : new Answer.Solutions(solution.kept());
  }
}
