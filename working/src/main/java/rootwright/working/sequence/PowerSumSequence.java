package rootwright.working.sequence;

import java.math.BigInteger;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.PolynomialFormula;
import rootwright.algebra.notation.UnicodeWriter;
import rootwright.algebra.notation.UnreadableException;
import rootwright.working.ask.ProblemReader;
import rootwright.working.kind.Kinds;
import rootwright.working.problem.Problem;
import rootwright.working.problem.Statement;
import rootwright.working.route.ClassProfile;
import rootwright.working.solve.Given;
import rootwright.working.solve.Solution;
import rootwright.working.subject.Inquiry;
import rootwright.working.subject.Subject;

/**
 * Asks about the power sums S_0, S_1, … of a polynomial as a sequence: their recurrence, their
 * generating function, the period of their remainders, whether all are divisible by a number, the
 * last digits of one.
 */
public final class PowerSumSequence implements Subject {

  private final Kinds kinds;

  /** The kinds that work single power sums. */
  public PowerSumSequence(Kinds kinds) {
    this.kinds = kinds;
  }

  @Override
  public boolean recognises(Inquiry inquiry) {
    return !inquiry.polynomial().isEmpty()
        && inquiry.conditions().isEmpty()
        && SequenceAsk.of(inquiry.ask()).isPresent();
  }

  @Override
  public Given read(Inquiry inquiry) throws UnreadableException {
    SequenceAsk ask = SequenceAsk.of(inquiry.ask()).orElseThrow();
    return ask instanceof SequenceAsk.LastDigits digits
        ? Given.of(ProblemReader.read(residue(inquiry, digits)))
        : Given.of(problem(inquiry)).withFind(find(ask));
  }

  @Override
  public Solution work(Inquiry inquiry, ClassProfile profile) throws UnreadableException {
    SequenceAsk ask = SequenceAsk.of(inquiry.ask()).orElseThrow();
    if (ask instanceof SequenceAsk.LastDigits digits) {
      return kinds.solve(ProblemReader.read(residue(inquiry, digits)), profile);
    }
    Problem problem = problem(inquiry);
    if (problem.degree() < 1) {
      return kinds.solve(problem, profile);
    }
    SumSequence sequence = new SumSequence(problem);
    SequenceFinding finding =
        ask instanceof SequenceAsk.Recurrence
            ? RecurrenceOfSums.find(sequence)
            : ask instanceof SequenceAsk.GeneratingFunction
                ? GeneratingFunctionOfSums.find(sequence)
                : ask instanceof SequenceAsk.Period period
                    ? PeriodOfSums.find(sequence, period.modulus(), inquiry)
                    : DivisibilityOfSums.find(sequence, ((SequenceAsk.Divisible) ask).by());
    return finding.solution(
        Given.of(problem).withFind(find(ask)), statement(problem, ask), profile);
  }

  private static Problem problem(Inquiry inquiry) throws UnreadableException {
    Statement statement = inquiry.statement();
    return ProblemReader.read(
        new Statement(statement.polynomial(), "S_1", statement.roots(), statement.unknown()));
  }

  private static Statement residue(Inquiry inquiry, SequenceAsk.LastDigits digits) {
    Statement statement = inquiry.statement();
    return new Statement(
        statement.polynomial(),
        "(%s) mod %s".formatted(digits.of(), digits.modulus()),
        statement.roots(),
        statement.unknown());
  }

  private static Formula find(SequenceAsk ask) {
    return new Formula.Words(
        ask instanceof SequenceAsk.Recurrence
            ? "recurrence of the power sums"
            : ask instanceof SequenceAsk.GeneratingFunction
                ? "generating function of the power sums"
                : ask instanceof SequenceAsk.Period period
                    ? "period of the power sums modulo " + period.modulus()
                    : "are all power sums " + divisible((SequenceAsk.Divisible) ask));
  }

  private static String divisible(SequenceAsk.Divisible ask) {
    return ask.by().equals(BigInteger.ONE) ? "whole" : "divisible by " + ask.by();
  }

  private static String statement(Problem problem, SequenceAsk ask) {
    Formula equation =
        Formula.equation(
            PolynomialFormula.of(problem.polynomial(), problem.unknown()), Formula.number(0));
    String front =
        "Let S_k be the sum of the k-th powers of the roots of %s, complex roots counted with"
                .formatted(UnicodeWriter.write(equation))
            + " multiplicity. ";
    if (ask instanceof SequenceAsk.Recurrence) {
      return front + "Find the recurrence by which the S_k follow, with its coefficients.";
    } else if (ask instanceof SequenceAsk.GeneratingFunction) {
      return front
          + "Write S_0 + S_1·%s + S_2·%s² + … as a fraction of two polynomials."
              .formatted(problem.unknown(), problem.unknown());
    } else if (ask instanceof SequenceAsk.Period period) {
      return front
          + "Find the least number of places after which the remainders of the S_k on division by"
          + " %s return.".formatted(period.modulus());
    }
    return front + "Are S_1, S_2, S_3, … all " + divisible((SequenceAsk.Divisible) ask) + "?";
  }
}
