package rootwright.working.letters;

import rootwright.algebra.notation.UnreadableException;
import rootwright.working.route.ClassProfile;
import rootwright.working.solve.Given;
import rootwright.working.solve.Solution;
import rootwright.working.solve.TwoChecks;
import rootwright.working.solve.UnconfirmedException;
import rootwright.working.subject.Inquiry;
import rootwright.working.subject.Subject;

/** Problems about a polynomial with letters in its coefficients. */
public final class UnknownCoefficients implements Subject {

  private final LetterKinds kinds;

  /** With the checks that confirm what is shown. */
  public UnknownCoefficients(TwoChecks checks) {
    kinds = new LetterKinds(checks);
  }

  @Override
  public boolean recognises(Inquiry inquiry) {
    return LetteredProblemReader.polynomial(inquiry).isPresent();
  }

  @Override
  public Given read(Inquiry inquiry) throws UnreadableException {
    return LetteredProblemReader.read(inquiry).given();
  }

  @Override
  public Solution work(Inquiry inquiry, ClassProfile profile) throws UnreadableException {
    LetteredProblem problem = LetteredProblemReader.read(inquiry);
    try {
      return kinds.solve(problem, profile, inquiry.statement().find());
    } catch (BeyondLettersException beyond) {
      throw BeyondLettersException.refused(beyond.sentence(), inquiry.statement());
    } catch (UnconfirmedException unconfirmed) {
      throw BeyondLettersException.refused(
          String.valueOf(unconfirmed.getMessage()), inquiry.statement());
    }
  }
}
