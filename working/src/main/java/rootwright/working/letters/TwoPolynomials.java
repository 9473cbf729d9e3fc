package rootwright.working.letters;

import rootwright.algebra.notation.PolynomialReader;
import rootwright.algebra.notation.UnreadableException;
import rootwright.working.route.ClassProfile;
import rootwright.working.solve.Given;
import rootwright.working.solve.Solution;
import rootwright.working.solve.TwoChecks;
import rootwright.working.solve.UnconfirmedException;
import rootwright.working.subject.Inquiry;
import rootwright.working.subject.Subject;

/** Problems about two polynomials: what they share, and expressions in the roots of both. */
public final class TwoPolynomials implements Subject {

  private final PairKinds kinds;

  /** With the checks that confirm what is shown. */
  public TwoPolynomials(TwoChecks checks) {
    kinds = new PairKinds(checks);
  }

  @Override
  public boolean recognises(Inquiry inquiry) {
    return PairReader.parts(inquiry)
        .filter(parts -> parts.stream().allMatch(TwoPolynomials::isPolynomial))
        .isPresent();
  }

  private static boolean isPolynomial(String text) {
    try {
      PolynomialReader.readWithLetters(text);
      return true;
    } catch (UnreadableException words) {
      return words.refusal().code().equals("which-unknown");
    }
  }

  @Override
  public Given read(Inquiry inquiry) throws UnreadableException {
    return PairReader.read(inquiry).given();
  }

  @Override
  public Solution work(Inquiry inquiry, ClassProfile profile) throws UnreadableException {
    PairProblem problem = PairReader.read(inquiry);
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
