package rootwright.working.ask;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import rootwright.algebra.notation.AskReader;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.PolynomialReader;
import rootwright.algebra.notation.ReadAsk;
import rootwright.algebra.notation.Reading;
import rootwright.algebra.notation.Refusal;
import rootwright.algebra.notation.RootNames;
import rootwright.algebra.notation.StatedPolynomial;
import rootwright.algebra.notation.UnicodeWriter;
import rootwright.algebra.notation.UnreadableException;
import rootwright.algebra.roots.Orbit;
import rootwright.working.check.exact.Expansion;
import rootwright.working.pasted.PastedProblem;
import rootwright.working.problem.Problem;
import rootwright.working.problem.Statement;

/** Reads a statement as it was typed into a problem. */
public final class ProblemReader {

  /** Highest degree that is worked. */
  public static final int HIGHEST_DEGREE = 64;

  private ProblemReader() {}

  /**
   * Reads the polynomial, settles the names of its roots and reads the ask.
   *
   * @throws UnreadableException if one of the texts cannot be read, the degree is above {@link
   *     #HIGHEST_DEGREE}, or a power in the ask is too far out to be written
   */
  public static Problem read(Statement typed) throws UnreadableException {
    Statement statement = PastedProblem.plain(typed);
    String text = statement.polynomial();
    StatedPolynomial stated =
        statement.unknown().isPresent()
            ? PolynomialReader.read(text, statement.unknown().get())
            : PolynomialReader.read(text);
    int degree = Math.max(0, stated.polynomial().degree());
    if (degree > HIGHEST_DEGREE) {
      throw new UnreadableException(
          new Refusal(
              "too-large",
              "The degree is %d; problems are worked up to degree %d."
                  .formatted(degree, HIGHEST_DEGREE),
              text,
              0,
              "a polynomial of degree %d or less".formatted(HIGHEST_DEGREE),
              ""));
    }
    Set<String> letters = Set.of(stated.unknown());
    ReadAsk ask =
        statement.roots().isEmpty()
            ? AskReader.read(statement.find(), degree, letters)
            : AskReader.read(
                statement.find(),
                RootNames.given(String.join(",", statement.roots()), degree, letters),
                letters);
    Problem problem =
        new Problem(
            stated.polynomial(),
            stated.stated(),
            stated.unknown(),
            ask.roots(),
            ask.formula(),
            List.of());
    List<String> reading = new ArrayList<>();
    stated.readings().stream().map(Reading::text).forEach(reading::add);
    ask.readings().stream().map(Reading::text).forEach(reading::add);
    if (degree > 0) {
      AskLimits.require(problem, statement.find());
      aggregates(ask.formula(), problem, reading);
    }
    return new Problem(
        problem.polynomial(),
        problem.stated(),
        problem.unknown(),
        problem.roots(),
        problem.ask(),
        reading);
  }

  /** Says over how many terms each Σ and Π runs. */
  private static void aggregates(Formula formula, Problem problem, List<String> reading) {
    if (formula instanceof Formula.Aggregate aggregate) {
      Optional<BigInteger> images =
          Expansion.of(aggregate.body(), problem).map(body -> Orbit.sizeOf(body, problem.degree()));
      images.ifPresent(
          size ->
              reading.add(
                  "%s has %s %s."
                      .formatted(
                          UnicodeWriter.write(aggregate),
                          size,
                          aggregate.operation() == Formula.Aggregate.Operation.SUM
                              ? "terms"
                              : "factors")));
    }
    formula.parts().forEach(part -> aggregates(part, problem, reading));
  }
}
