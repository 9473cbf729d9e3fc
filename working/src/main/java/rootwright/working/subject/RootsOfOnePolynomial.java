package rootwright.working.subject;

import java.util.Optional;
import rootwright.algebra.notation.Refusal;
import rootwright.algebra.notation.UnreadableException;
import rootwright.working.answer.Answer;
import rootwright.working.ask.ProblemReader;
import rootwright.working.kind.Kinds;
import rootwright.working.problem.Problem;
import rootwright.working.route.ClassProfile;
import rootwright.working.solve.Given;
import rootwright.working.solve.Solution;

/** The roots of one polynomial with numbers for coefficients: whatever no other subject claims. */
public final class RootsOfOnePolynomial implements Subject {

  private final Kinds kinds;

  /** These kinds work the asks. */
  public RootsOfOnePolynomial(Kinds kinds) {
    this.kinds = kinds;
  }

  @Override
  public boolean recognises(Inquiry inquiry) {
    return true;
  }

  @Override
  public Given read(Inquiry inquiry) throws UnreadableException {
    requireNoCondition(inquiry);
    return Given.of(ProblemReader.read(inquiry.statement()));
  }

  @Override
  public Optional<Problem> aboutRoots(Inquiry inquiry) throws UnreadableException {
    requireNoCondition(inquiry);
    return Optional.of(ProblemReader.read(inquiry.statement()));
  }

  @Override
  public Solution work(Inquiry inquiry, ClassProfile profile) throws UnreadableException {
    requireNoCondition(inquiry);
    Solution solution = kinds.solve(ProblemReader.read(inquiry.statement()), profile);
    if (solution.answer() instanceof Answer.Refused refused) {
      throw new UnreadableException(RefusedAsk.of(refused, inquiry.statement().find()));
    }
    return solution;
  }

  private static void requireNoCondition(Inquiry inquiry) throws UnreadableException {
    if (inquiry.polynomial().isEmpty()) {
      throw new UnreadableException(
          new Refusal(
              "empty",
              "No polynomial is given, and the ask brings no data of its own.",
              inquiry.statement().find(),
              0,
              "a polynomial, conditions behind “if”, or a whole problem like “Let r, s, t be the"
                  + " roots of x^3 - 6x^2 + 5x - 1 = 0. Find r^2 + s^2 + t^2.”",
              ""));
    }
    if (!inquiry.conditions().isEmpty() && !inquiry.polynomial().isEmpty()) {
      String find = inquiry.statement().find();
      int at = find.indexOf(inquiry.conditions().get(0));
      throw new UnreadableException(
          new Refusal(
              "condition-unread",
              "The roots of this polynomial are fixed by its coefficients; a condition on them can"
                  + " only be set where a coefficient is a letter.",
              find,
              find.codePointCount(0, Math.max(0, at)),
              "an ask without a condition, or a letter among the coefficients",
              inquiry.ask()));
    }
  }
}
