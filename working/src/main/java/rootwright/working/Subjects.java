package rootwright.working;

import java.util.List;
import java.util.Optional;
import rootwright.algebra.notation.UnreadableException;
import rootwright.working.clothing.DisguisedEquations;
import rootwright.working.clothing.RootsOfRoots;
import rootwright.working.clothing.TriangleSides;
import rootwright.working.composition.LevelSets;
import rootwright.working.described.DescribedRoots;
import rootwright.working.described.ValuesAtAngles;
import rootwright.working.division.RemainderOfPolynomial;
import rootwright.working.fraction.NumeratorsOverRoots;
import rootwright.working.fraction.PartialFractionsOfNumbers;
import rootwright.working.identity.IdentityUnderCondition;
import rootwright.working.inequality.InequalityOnNumbers;
import rootwright.working.integers.IntegerRoots;
import rootwright.working.integers.VietaJumping;
import rootwright.working.interpolation.PolynomialFromValues;
import rootwright.working.kind.Kinds;
import rootwright.working.letters.LetterFixedByEquation;
import rootwright.working.letters.TwoPolynomials;
import rootwright.working.letters.UnknownCoefficients;
import rootwright.working.moduli.Moduli;
import rootwright.working.problem.Problem;
import rootwright.working.problem.Statement;
import rootwright.working.recurrence.LinearRecurrences;
import rootwright.working.route.ClassProfile;
import rootwright.working.sequence.PowerSumSequence;
import rootwright.working.solve.Given;
import rootwright.working.solve.Solution;
import rootwright.working.solve.TwoChecks;
import rootwright.working.subject.Inquiry;
import rootwright.working.subject.RootsOfOnePolynomial;
import rootwright.working.subject.Subject;
import rootwright.working.surd.FloorOfPowers;
import rootwright.working.surd.LeastPolynomials;
import rootwright.working.values.BoundsOnNumbers;
import rootwright.working.values.ValuesOfNumbers;

/** All that a problem may be about, in the order in which a statement is offered. */
public final class Subjects {

  private final List<Subject> subjects;

  /** The subjects of the house; these kinds work asks about the roots of one polynomial. */
  public Subjects(Kinds kinds) {
    subjects =
        List.of(
            new DescribedRoots(kinds),
            new ValuesAtAngles(kinds),
            new FloorOfPowers(kinds),
            new LeastPolynomials(),
            new LevelSets(),
            new PolynomialFromValues(),
            new RemainderOfPolynomial(kinds),
            new LinearRecurrences(),
            new PartialFractionsOfNumbers(),
            new NumeratorsOverRoots(kinds),
            new PowerSumSequence(kinds),
            new DisguisedEquations(),
            new TriangleSides(),
            new RootsOfRoots(),
            new Moduli(),
            new InequalityOnNumbers(),
            new IdentityUnderCondition(),
            new LetterFixedByEquation(new TwoChecks()),
            new IntegerRoots(),
            new VietaJumping(),
            new BoundsOnNumbers(),
            new ValuesOfNumbers(kinds),
            new TwoPolynomials(new TwoChecks()),
            new UnknownCoefficients(new TwoChecks()),
            new RootsOfOnePolynomial(kinds));
  }

  /**
   * Reads a statement without working it.
   *
   * @throws UnreadableException if it cannot be read; names the place and the mend
   */
  public Given read(Statement statement) throws UnreadableException {
    Inquiry inquiry = Inquiry.of(statement);
    return of(inquiry).read(inquiry);
  }

  /**
   * Works a statement as the first subject that recognises it.
   *
   * @throws UnreadableException if it cannot be read, or is beyond a limit of ours
   * @throws rootwright.working.solve.CheckFailedException if a check refutes something of ours
   */
  public Solution work(Statement statement, ClassProfile profile) throws UnreadableException {
    Inquiry inquiry = Inquiry.of(statement);
    return of(inquiry).work(inquiry, profile);
  }

  /**
   * The problem about the roots of one polynomial that a statement comes down to, if it does.
   *
   * @throws UnreadableException if the statement cannot be read
   */
  public Optional<Problem> aboutRoots(Statement statement) throws UnreadableException {
    Inquiry inquiry = Inquiry.of(statement);
    return of(inquiry).aboutRoots(inquiry);
  }

  /**
   * Whether a statement without a polynomial is about something all the same, or is a sentence of
   * which more can be said than that a polynomial is missing.
   */
  public boolean standsAlone(Statement statement) {
    try {
      Inquiry inquiry = Inquiry.of(statement);
      return !inquiry.polynomial().isEmpty() || !(of(inquiry) instanceof RootsOfOnePolynomial);
    } catch (UnreadableException unreadable) {
      return true;
    }
  }

  private Subject of(Inquiry inquiry) {
    return subjects.stream()
        .filter(subject -> subject.recognises(inquiry))
        .findFirst()
        .orElseThrow();
  }
}
