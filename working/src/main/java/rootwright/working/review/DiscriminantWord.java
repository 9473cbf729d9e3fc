package rootwright.working.review;

import rootwright.algebra.notation.Formula;
import rootwright.working.ask.DiscriminantMeaning;
import rootwright.working.problem.Problem;

/** Puts what it means for the word "discriminant" in a line. */
final class DiscriminantWord {

  private DiscriminantWord() {}

  /** The formula with the word replaced wherever it stands. */
  static Formula replaced(Formula formula, Problem problem) {
    return formula.rewrite(
        part ->
            part instanceof Formula.Application word
                    && word.function().equals("discriminant")
                    && word.arguments().isEmpty()
                ? DiscriminantMeaning.of(problem)
                : part);
  }
}
