package rootwright.working.route;

import java.util.List;
import java.util.Optional;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.PolynomialFormula;
import rootwright.algebra.notation.UnicodeWriter;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.value.ExactRoot;
import rootwright.algebra.value.ExactValue;
import rootwright.algebra.value.ExactValues;
import rootwright.working.answer.Answer;
import rootwright.working.ask.Asked;
import rootwright.working.check.exact.Expansion;
import rootwright.working.problem.Problem;
import rootwright.working.step.Claim;
import rootwright.working.step.Idea;

/**
 * Passes to the polynomial whose roots are the sums or products of all pairs of roots, by power
 * sums and Newton's identities, and reads the ask off it: a product of pairs, a sum of their
 * reciprocals, or the possible values of one pair.
 */
final class PassToPairs implements Route {

  private static final int LOWEST_DEGREE = 4;
  private static final int HIGHEST_DEGREE = 5;

  /** What is read off the polynomial of the pairs. */
  private enum End {
    PRODUCT,
    SUM_OF_RECIPROCALS,
    VALUES
  }

  private record Wanted(PairSums kind, Formula pair, End end) {}

  @Override
  public String name() {
    return "pairs";
  }

  @Override
  public String title() {
    return "pass to the polynomial of all pairs";
  }

  @Override
  public String teaches() {
    return "Sums and products of pairs are roots of a polynomial that power sums give.";
  }

  @Override
  public Attempt attempt(Asked asked) {
    int n = asked.problem().degree();
    if (n < LOWEST_DEGREE || n > HIGHEST_DEGREE) {
      return new Attempt.Declined(
          n < LOWEST_DEGREE
              ? "with so few roots a pair is what the others leave"
              : "there are too many pairs to work with");
    }
    return wanted(asked)
        .map(wanted -> worked(asked, wanted))
        .orElse(new Attempt.Declined("the ask is not made of the sums or products of two roots"));
  }

  private Optional<Wanted> wanted(Asked asked) {
    Problem problem = asked.problem();
    if (!(problem.ask() instanceof Formula.Aggregate aggregate)) {
      return wanted(problem, problem.ask(), End.VALUES);
    } else if (aggregate.operation() == Formula.Aggregate.Operation.PRODUCT) {
      return wanted(problem, aggregate.body(), End.PRODUCT);
    } else if (aggregate.body() instanceof Formula.Quotient quotient
        && quotient.over().equals(Formula.number(1))) {
      return wanted(problem, quotient.under(), End.SUM_OF_RECIPROCALS);
    }
    return Optional.empty();
  }

  private static Optional<Wanted> wanted(Problem problem, Formula pair, End end) {
    return Expansion.of(pair, problem)
        .flatMap(PairSums::of)
        .map(kind -> new Wanted(kind, pair, end));
  }

  private Attempt worked(Asked asked, Wanted wanted) {
    Problem problem = asked.problem();
    Lines lines = new Lines(problem.setting());
    Polynomial image = wanted.kind().write(lines, asked, wanted.pair());
    String shownIn = FreshNames.letter(problem);
    lines.addRoots(
        Idea.NEWTON,
        "Newton’s identities for these sums; the roots are all "
            + UnicodeWriter.write(wanted.pair()),
        Formula.equation(PolynomialFormula.of(image, shownIn), Formula.number(0)),
        new Claim.HasRoots(problem.setting(), image, wanted.pair()));
    return switch (wanted.end()) {
      case VALUES -> ended(lines, values(image));
      case PRODUCT -> product(lines, problem, image);
      case SUM_OF_RECIPROCALS -> reciprocals(lines, problem, image);
    };
  }

  private Attempt product(Lines lines, Problem problem, Polynomial image) {
    Rational quotient = image.coefficient(0).over(image.lead());
    Rational value = image.degree() % 2 == 0 ? quotient : quotient.negate();
    return readOff(
        lines,
        problem,
        value,
        image.degree() % 2 == 0
            ? "the constant term over the lead"
            : "minus the constant term over the lead");
  }

  private Attempt reciprocals(Lines lines, Problem problem, Polynomial image) {
    return image.coefficient(0).isZero()
        ? Reasons.ZERO_DENOMINATOR
        : readOff(
            lines,
            problem,
            image.coefficient(1).over(image.coefficient(0)).negate(),
            "minus the coefficient of the first power over the constant term");
  }

  private Attempt readOff(Lines lines, Problem problem, Rational value, String reason) {
    lines.add(Idea.READ_COEFFICIENTS, reason, problem.ask(), Formula.number(value));
    return Attempt.Worked.of(title(), lines.steps(), value);
  }

  private Attempt ended(Lines lines, Answer answer) {
    return new Attempt.Worked(title(), lines.steps(), answer, List.of());
  }

  private static Answer values(Polynomial image) {
    List<ExactValue> values =
        ExactValues.rootsOf(image).stream().map(ExactRoot::value).distinct().toList();
    return values.size() == 1
        ? new Answer.Exact(values.get(0))
        : new Answer.Values(values, image.squarefreePart().primitive());
  }
}
