package rootwright.working.route;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import rootwright.algebra.factor.RationalRoot;
import rootwright.algebra.factor.RationalRoots;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.UnicodeWriter;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.value.RationalValue;
import rootwright.working.ask.Asked;
import rootwright.working.problem.Problem;
import rootwright.working.step.Idea;

/** All roots: split the rational ones off, and solve the quadratic that is left. */
final class RationalThenQuadratic implements Route {

  @Override
  public String name() {
    return "rational-root";
  }

  @Override
  public String title() {
    return "split off the rational roots and solve the quadratic that is left";
  }

  @Override
  public String teaches() {
    return "A root c divides out as x − c; divisors of the constant term are worth trying.";
  }

  @Override
  public Attempt attempt(Asked asked) {
    Problem problem = asked.problem();
    Polynomial rest = problem.polynomial();
    List<RationalRoot> rational = RationalRoots.of(rest);
    List<Polynomial> factors = new ArrayList<>();
    for (RationalRoot root : rational) {
      Polynomial factor = Polynomial.withRoots(List.of(root.value())).primitive();
      factors.addAll(Collections.nCopies(root.multiplicity(), factor));
      rest = rest.divide(factor.power(root.multiplicity())).quotient();
    }
    if (rest.degree() > 2) {
      return new Attempt.Declined(
          rational.isEmpty()
              ? "there is no rational root"
              : "without its rational roots the polynomial still has degree " + rest.degree());
    }
    Lines lines = new Lines(problem.setting());
    RootsFound found = new RootsFound();
    for (RationalRoot root : rational) {
      lines.add(
          Idea.RATIONAL_ROOT,
          "%s is a root".formatted(UnicodeWriter.write(Formula.number(root.value()))),
          new Formula.Application("P", List.of(Formula.number(root.value()))),
          PutIn.of(problem.polynomial(), root.value()),
          Formula.number(0));
      found.addAll(List.of(new RationalValue(root.value())));
    }
    boolean quadratic = rest.degree() == 2;
    if (quadratic) {
      factors.add(rest);
    }
    if (!rational.isEmpty()) {
      RootsFound.product(
          lines, problem, "divide", quadratic ? Rational.ONE : rest.coefficient(0), factors);
    }
    if (quadratic) {
      found.addAll(QuadraticLines.write(lines, problem, rest));
    }
    return found.worked(
        rational.isEmpty()
            ? "the formula for quadratics"
            : quadratic ? title() : "split off the rational roots",
        lines);
  }
}
