package rootwright.working.review;

import java.util.Set;
import rootwright.algebra.notation.Formula;
import rootwright.working.ask.DiscriminantMeaning;
import rootwright.working.problem.Problem;

/** Puts what it means for the word "discriminant" in a line. */
final class DiscriminantWord {

  private static final Set<String> LETTERS = Set.of("D", "Δ");

  private DiscriminantWord() {}

  /** The formula with the word replaced wherever it stands. */
  static Formula replaced(Formula formula, Problem problem) {
    return formula.rewrite(
        part ->
            (part instanceof Formula.Application word
                        && word.function().equals("discriminant")
                        && word.arguments().isEmpty())
                    || isItsLetter(part, problem)
                ? DiscriminantMeaning.of(problem)
                : part);
  }

  /** D and Δ mean it where no root is called so. */
  private static boolean isItsLetter(Formula part, Problem problem) {
    return part instanceof Formula.Name name
        && LETTERS.contains(name.spelling())
        && problem.degree() >= 2
        && problem.degree() <= 3
        && !problem.roots().contains(name.spelling())
        && !problem.unknown().equals(name.spelling());
  }
}
