package rootwright.working.route;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rootwright.algebra.factor.RationalRoot;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.PolynomialFormula;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.working.ask.Asked;
import rootwright.working.problem.Problem;
import rootwright.working.step.Idea;

/**
 * All roots of a polynomial in x², or of one that reads the same backwards, by u = x² or u = x +
 * 1/x, where u comes out rational.
 */
final class SolveForPairs implements Route {

  @Override
  public String name() {
    return "substitute";
  }

  @Override
  public String title() {
    return "solve for u = x² or u = x + 1/x first";
  }

  @Override
  public String teaches() {
    return "Roots that come in pairs are found by an equation of half the degree.";
  }

  @Override
  public Attempt attempt(Asked asked) {
    Problem problem = asked.problem();
    List<Pairing> pairings = Pairing.of(problem.polynomial());
    if (pairings.isEmpty()) {
      return new Attempt.Declined("the roots do not come in pairs r, −r or r, 1/r");
    }
    for (Pairing pairing : pairings) {
      Optional<LinearFactors> numbers = LinearFactors.of(pairing.pairs());
      if (numbers.isPresent()) {
        return worked(problem, pairing, numbers.get());
      }
    }
    return new Attempt.Declined("the number of a pair is not rational for every pair");
  }

  private Attempt worked(Problem problem, Pairing pairing, LinearFactors numbers) {
    String letter = FreshNames.letter(problem);
    Lines lines = new Lines(problem.setting());
    Formula x = Formula.name(problem.unknown());
    pairing.show(lines.in(problem.setting().withFree(problem.unknown())), x);
    List<Formula> factors = new ArrayList<>(List.of(Formula.number(numbers.lead())));
    for (RationalRoot number : numbers.points()) {
      factors.add(
          Combination.power(
              PolynomialFormula.of(Polynomial.withRoots(List.of(number.value())), letter),
              number.multiplicity()));
    }
    lines
        .in(problem.setting().withFree(letter))
        .add(
            Idea.SUBSTITUTE,
            "one number for each pair",
            PolynomialFormula.of(pairing.pairs(), letter),
            Combination.product(factors));
    RootsFound found = new RootsFound();
    boolean opposite = pairing instanceof Pairing.Opposite;
    for (RationalRoot number : numbers.points()) {
      Rational u = number.value();
      Polynomial quadratic =
          opposite
              ? Polynomial.ofAscending(List.of(u.negate(), Rational.ZERO, Rational.ONE))
              : Polynomial.ofAscending(List.of(Rational.ONE, u.negate(), Rational.ONE)).primitive();
      found.addAll(QuadraticLines.write(lines, problem, quadratic));
    }
    return found.worked(opposite ? "solve for x² first" : "solve for x + 1/x first", lines);
  }
}
