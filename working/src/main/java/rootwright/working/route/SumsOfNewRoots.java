package rootwright.working.route;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.PolynomialFormula;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.roots.Orbit;
import rootwright.algebra.roots.ResidueAlgebra;
import rootwright.working.ask.Asked;
import rootwright.working.problem.Problem;
import rootwright.working.step.Idea;
import rootwright.working.step.Setting;

/**
 * The polynomial with the roots y = f(r) for any f: reduce y, y², … by P(r) = 0, add each up over
 * the roots, and turn the power sums into coefficients by Newton's identities.
 */
final class SumsOfNewRoots extends NewRootRoute {

  /** Highest degree for which this is still a working for a person. */
  private static final int HIGHEST_DEGREE = 5;

  private final Optional<String> letter;

  /** With the letter of the answer; absent for that of the problem. */
  SumsOfNewRoots(Optional<String> letter) {
    super(HIGHEST_DEGREE);
    this.letter = letter;
  }

  @Override
  public String name() {
    return "sums-of-new-roots";
  }

  @Override
  public String title() {
    return "add up powers of the new roots";
  }

  @Override
  public String teaches() {
    return "Power sums of the new roots give its coefficients, whatever the map.";
  }

  @Override
  String tooLarge() {
    return "there are too many power sums to work out";
  }

  @Override
  Attempt worked(Asked asked, OneRootMap map, Polynomial reduced) {
    Problem problem = asked.problem();
    int n = problem.degree();
    if (Orbit.hasOpposites(asked.expression().orElseThrow(), n)) {
      return Reasons.OPPOSITES;
    }
    String y = FreshNames.letter(problem);
    Setting setting = problem.setting();
    Lines lines = new Lines(setting);
    Lines named = lines.in(setting.withDefinition(y, problem.ask()));
    map.write(lines);
    List<Polynomial> powers = reducedPowers(named, map, reduced, y);
    SortedSet<Integer> indices = new TreeSet<>();
    powers.forEach(power -> indices.addAll(PowerSumLines.indices(power)));
    PowerSumLines sums = PowerSumLines.of(asked, n);
    sums.write(lines, indices);
    List<Rational> values = new ArrayList<>(List.of(Rational.of(n)));
    for (int k = 1; k <= n; k++) {
      Polynomial power = powers.get(k - 1);
      sums.total(
          named,
          new Formula.Aggregate(
              Formula.Aggregate.Operation.SUM, Combination.power(Formula.name(y), k)),
          power);
      values.add(sums.value(power));
    }
    return new NewCoefficients(title(), letter).finish(problem, lines, values, y);
  }

  /** Writes y, y², …, y^n as polynomials in the root of lower degree. */
  private static List<Polynomial> reducedPowers(
      Lines named, OneRootMap map, Polynomial reduced, String y) {
    Problem problem = map.problem();
    ResidueAlgebra algebra = ResidueAlgebra.of(problem.polynomial());
    Formula name = Formula.name(y);
    named.add(
        Idea.REDUCE,
        "by P(%s) = 0".formatted(map.root()),
        name,
        map.written(),
        PolynomialFormula.of(reduced, map.root()));
    List<Polynomial> powers = new ArrayList<>(List.of(reduced));
    for (int k = 2; k <= problem.degree(); k++) {
      Polynomial last = powers.get(k - 2);
      Polynomial next = algebra.times(last, reduced);
      named.add(
          Idea.REDUCE,
          "multiply and reduce",
          name.power(k),
          PolynomialFormula.of(reduced, map.root()).times(PolynomialFormula.of(last, map.root())),
          PolynomialFormula.of(next, map.root()));
      powers.add(next);
    }
    return powers;
  }
}
