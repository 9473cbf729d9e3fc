package rootwright.working.route;

import java.util.List;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.PolynomialFormula;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.roots.Inverse;
import rootwright.algebra.roots.ResidueAlgebra;
import rootwright.working.ask.Asked;
import rootwright.working.problem.RootFunction;
import rootwright.working.step.Idea;

/**
 * Writes a fraction in one root without a denominator: a polynomial U with B(r)·U(r) = 1 by P(r) =
 * 0 comes from Euclid's algorithm; what is left is a sum of powers.
 */
final class InvertDenominator implements Route {

  private static final int HIGHEST_DEGREE = 8;

  @Override
  public String name() {
    return "invert-denominator";
  }

  @Override
  public String title() {
    return "turn the denominator into a factor";
  }

  @Override
  public String teaches() {
    return "By P(r) = 0 every denominator that is not zero has a reciprocal without a stroke.";
  }

  @Override
  public Attempt attempt(Asked asked) {
    if (asked.sumOverRoots().isEmpty()) {
      return new Attempt.Declined("the ask is no sum of one expression over all roots");
    }
    RootFunction f = asked.sumOverRoots().get();
    int degree = asked.problem().degree();
    if (f.isPolynomial()) {
      return new Attempt.Declined("no root stands in a denominator");
    } else if (degree < 2 || degree > HIGHEST_DEGREE) {
      return new Attempt.Declined("Euclid's algorithm is too long to be followed");
    }
    ResidueAlgebra algebra = ResidueAlgebra.of(asked.problem().polynomial());
    return algebra.inverse(f.denominator()) instanceof Inverse.Inverted inverted
        ? worked(asked, f, inverted.value(), algebra)
        : Reasons.ZERO_DENOMINATOR;
  }

  private Attempt worked(Asked asked, RootFunction f, Polynomial inverse, ResidueAlgebra algebra) {
    Polynomial p = asked.problem().polynomial();
    String root = asked.problem().roots().get(0);
    Polynomial reduced = algebra.times(f.numerator(), inverse);
    Lines lines = new Lines(asked.problem().setting());
    Formula under = PolynomialFormula.of(f.denominator(), root);
    Formula factor = PolynomialFormula.of(inverse, root);
    Polynomial multiple = f.denominator().times(inverse).minus(Polynomial.ONE).divide(p).quotient();
    lines.add(
        Idea.ELIMINATE,
        "by Euclid’s algorithm; P(%s) = 0".formatted(root),
        Combination.product(List.of(under, factor)),
        new Combination()
            .plus(Formula.number(1))
            .plus(
                Combination.product(
                    List.of(
                        PolynomialFormula.of(multiple, root),
                        new Formula.Application("P", List.of(Formula.name(root))))))
            .formula(),
        Formula.number(1));
    Formula term = PolynomialFormula.of(f.numerator(), root).over(under);
    lines.add(
        Idea.REDUCE,
        "so the stroke becomes a factor; lower the powers",
        term,
        Combination.product(List.of(PolynomialFormula.of(f.numerator(), root), factor)),
        PolynomialFormula.of(reduced, root));
    PowerSumLines sums = PowerSumLines.of(asked, Math.max(0, reduced.degree()));
    sums.write(lines, PowerSumLines.indices(reduced));
    sums.total(lines, asked.formula(), reduced);
    return Attempt.Worked.of(title(), lines.steps(), sums.value(reduced));
  }
}
