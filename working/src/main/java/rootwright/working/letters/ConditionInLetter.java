package rootwright.working.letters;

import java.util.List;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.value.ExactValue;
import rootwright.working.route.Attempt;
import rootwright.working.route.RouteOn;
import rootwright.working.step.Idea;

/** The condition written in the letter: symmetric as it is, or made so by a product. */
final class ConditionInLetter implements RouteOn<LettersAsked> {

  @Override
  public String name() {
    return "condition-in-letter";
  }

  @Override
  public String title() {
    return "write the condition in the letter and solve it";
  }

  @Override
  public String teaches() {
    return "A product over all namings is symmetric, so the letters give it, and it is zero when one factor is.";
  }

  @Override
  public Attempt attempt(LettersAsked asked) {
    LetterSolution solution = asked.solution();
    if (solution.isAlwaysTrue()) {
      return new Attempt.Declined("the conditions hold whatever the letter is");
    }
    LetterLines lines = new LetterLines();
    for (LetterEquation equation : solution.equations()) {
      if (equation.shape() == LetterEquation.Shape.SYMMETRIC
          && equation.expression() instanceof Formula.Sum sum
          && sum.terms().size() > 1
          && equation.condition() instanceof Condition.Zeros zeros
          && zeros.equations().size() == 1
          && zeros.equations().get(0) instanceof Formula.Relation relation
          && relation.sides().size() == 2) {
        side(lines, equation, asked.problem(), relation.sides().get(0));
        side(lines, equation, asked.problem(), relation.sides().get(1));
      }
      lines.add(
          equation.setting(),
          Idea.ELIMINATE,
          reason(equation.shape()),
          equation.expression(),
          equation.written());
    }
    JudgedLines.solve(lines, asked.letter(), solution.common(), all(solution));
    return JudgedLines.end(lines, title(), asked);
  }

  /** One side of a symmetric equation by itself, if it is not a number or letters alone. */
  private static void side(
      LetterLines lines, LetterEquation equation, LetteredProblem problem, Formula side) {
    LetteredPolynomial polynomial = problem.polynomial();
    FunctionAsked.valueOf(side, polynomial, problem.roots())
        .ifPresent(
            value ->
                lines.add(
                    equation.setting(),
                    Idea.BUILD,
                    "symmetric in the roots",
                    side,
                    InLetters.formula(value, polynomial.letters())));
  }

  static List<ExactValue> all(LetterSolution solution) {
    return solution.candidates().stream().map(Candidate::value).toList();
  }

  private static String reason(LetterEquation.Shape shape) {
    return switch (shape) {
      case SYMMETRIC -> "must be 0";
      case PRODUCT -> "the product over all namings: 0 when one factor is";
      case JOINT -> "0 for every value of the new letter when all hold for one naming";
      case PUT_IN -> "the root put into P: must be 0";
      case REMAINDER -> "a coefficient of the remainder: must be 0";
      case LETTERS -> "given";
    };
  }
}
