package rootwright.working.route;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import rootwright.algebra.factor.Factorisation;
import rootwright.algebra.factor.IrreducibleFactor;
import rootwright.algebra.factor.RationalRoots;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.value.RationalValue;
import rootwright.working.ask.Asked;
import rootwright.working.problem.Problem;

/** All roots where P is a product of linear and several quadratic factors. */
final class SplitIntoQuadratics implements Route {

  @Override
  public String name() {
    return "split-quadratics";
  }

  @Override
  public String title() {
    return "split into quadratic factors";
  }

  @Override
  public String teaches() {
    return "Without rational roots a quartic may still be a product of two quadratics.";
  }

  @Override
  public Attempt attempt(Asked asked) {
    Problem problem = asked.problem();
    Optional<Factorisation> tried = Factorisation.tried(problem.polynomial());
    if (tried.isEmpty()) {
      return new Attempt.Declined("P is too hard to factor");
    }
    Factorisation factorisation = tried.get();
    int quadratics =
        factorisation.factors().stream()
            .filter(factor -> factor.polynomial().degree() == 2)
            .mapToInt(IrreducibleFactor::multiplicity)
            .sum();
    boolean larger =
        factorisation.factors().stream().anyMatch(factor -> factor.polynomial().degree() > 2);
    if (larger || quadratics < 2) {
      return new Attempt.Declined(
          larger
              ? "a factor of degree 3 or more does not split over the rational numbers"
              : "no two quadratic factors are left");
    }
    Lines lines = new Lines(problem.setting());
    RootsFound found = new RootsFound();
    List<Polynomial> factors = new ArrayList<>();
    for (IrreducibleFactor factor : factorisation.factors()) {
      factors.addAll(Collections.nCopies(factor.multiplicity(), factor.polynomial()));
    }
    RootsFound.product(
        lines,
        problem,
        "compare coefficients with a product of factors",
        factorisation.content(),
        factors);
    for (IrreducibleFactor factor : factorisation.factors()) {
      if (factor.polynomial().degree() == 2) {
        found.addAll(QuadraticLines.write(lines, problem, factor.polynomial()));
      } else {
        found.addAll(
            List.of(new RationalValue(RationalRoots.of(factor.polynomial()).get(0).value())));
      }
    }
    return found.worked(title(), lines);
  }
}
