package rootwright.working.route;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.NormalForm;
import rootwright.algebra.notation.PolynomialFormula;
import rootwright.algebra.notation.UnicodeWriter;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.roots.ResidueAlgebra;
import rootwright.working.answer.Answer;
import rootwright.working.ask.Asked;
import rootwright.working.problem.Problem;
import rootwright.working.problem.RootFunction;
import rootwright.working.step.Idea;
import rootwright.working.step.Setting;

/**
 * Sums Σ F(r)/P′(r) by the partial fractions of F/P, whose numerators they are (Euler; Hardy, A
 * Course of Pure Mathematics, 1921, Examples XLVIII): multiplied by x, both sides tend to the same
 * as x grows.
 */
final class EulerSums implements Route {

  private static final int HIGHEST_POWER = 40;

  @Override
  public String name() {
    return "euler";
  }

  @Override
  public String title() {
    return "compare partial fractions for large x";
  }

  @Override
  public String teaches() {
    return "F(r)/P′(r) is what stands over x − r in the partial fractions of F/P.";
  }

  @Override
  public Attempt attempt(Asked asked) {
    Problem problem = asked.problem();
    Polynomial derivative = problem.polynomial().derivative();
    Optional<Polynomial> above =
        asked.sumOverRoots().filter(f -> !f.isPolynomial()).flatMap(f -> above(f, derivative));
    if (above.isEmpty() || problem.degree() < 2) {
      return new Attempt.Declined("below each term does not stand P′ of its root");
    } else if (!problem.polynomial().isSquarefree()) {
      return new Attempt.Declined("a root is repeated, so P′ is zero at it");
    } else if (above.get().degree() > HIGHEST_POWER) {
      return new Attempt.Declined("the power above is too high to be lowered by hand");
    }
    return worked(asked, above.get());
  }

  /** F with f = F/P′. */
  private static Optional<Polynomial> above(RootFunction f, Polynomial derivative) {
    Polynomial.Division division = derivative.divide(f.denominator());
    return f.denominator().degree() > 0 && division.remainder().isZero()
        ? Optional.of(f.numerator().times(division.quotient()))
        : Optional.empty();
  }

  private Attempt worked(Asked asked, Polynomial above) {
    Problem problem = asked.problem();
    Polynomial p = problem.polynomial();
    int n = p.degree();
    String root = problem.roots().get(0);
    String unknown = problem.unknown();
    Setting setting = problem.setting();
    Lines lines = new Lines(setting);
    Polynomial low = ResidueAlgebra.of(p).reduce(above);
    if (above.degree() >= n) {
      lines.add(
          Idea.REDUCE,
          "P(%s) = 0 lowers the power, for every root alike".formatted(root),
          PolynomialFormula.of(above, root),
          PolynomialFormula.of(low, root));
    }
    Formula under = new Formula.Application("P'", List.of(Formula.name(root)));
    Formula distance = Formula.name(unknown).minus(Formula.name(root));
    Formula fraction = PolynomialFormula.of(low, root).over(under);
    lines
        .in(setting.withFree(unknown))
        .add(
            Idea.PARTIAL_FRACTIONS,
            "cleared of fractions this is an identity of polynomials of degree below n, so %s may"
                    .formatted(unknown)
                + " be put equal to a root although it was excluded: that gives the numerators",
            PolynomialFormula.of(low, unknown)
                .over(new Formula.Application("P", List.of(Formula.name(unknown)))),
            new Formula.Aggregate(
                Formula.Aggregate.Operation.SUM,
                NormalForm.of(PolynomialFormula.of(low, root).over(under.times(distance)))));
    Rational top = low.coefficient(n - 1);
    Rational value = top.over(p.lead());
    List<Formula> sides =
        new ArrayList<>(List.of(new Formula.Aggregate(Formula.Aggregate.Operation.SUM, fraction)));
    if (!p.lead().isOne() && !top.isZero()) {
      sides.add(Formula.number(top).over(Formula.number(p.lead())));
    }
    sides.add(Formula.number(value));
    lines.add(
        Idea.INTERPOLATE,
        "times %s, for large %s: what stands before %s, over the lead"
            .formatted(
                unknown,
                unknown,
                UnicodeWriter.write(Combination.power(Formula.name(unknown), n - 1))),
        sides);
    List<Formula> last = new ArrayList<>(List.of(asked.formula()));
    int k = above.degree();
    if (above.equals(Polynomial.monomial(Rational.ONE, k)) && k >= n) {
      Formula h = new Formula.Family("h", Formula.number(k - n + 1L));
      last.add(p.lead().isOne() ? h : h.over(Formula.number(p.lead())));
    }
    last.add(Formula.number(value));
    lines.add(Idea.STATE, "the same sum", last);
    return new Attempt.Worked(
        title(),
        lines.steps(),
        Answer.exact(value),
        List.of("the roots are distinct, since the discriminant is not zero"));
  }
}
