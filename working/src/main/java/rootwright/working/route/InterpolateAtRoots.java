package rootwright.working.route;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.PolynomialFormula;
import rootwright.algebra.notation.UnicodeWriter;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.polynomial.RationalFunction;
import rootwright.algebra.roots.ResidueAlgebra;
import rootwright.algebra.symmetric.SymmetricPolynomial;
import rootwright.working.answer.Answer;
import rootwright.working.ask.Asked;
import rootwright.working.step.Idea;

/**
 * Sums Σ r^k/((r − s)(r − t)…) by interpolation at the roots (Euler, Lagrange; from memory of
 * Burnside and Panton and of Serret): the polynomial of lower degree that equals x^k at every root
 * is its own interpolation polynomial, and the sum is its coefficient of x^(n−1).
 */
final class InterpolateAtRoots implements Route {

  private static final int HIGHEST_POWER = 24;

  @Override
  public String name() {
    return "interpolate";
  }

  @Override
  public String title() {
    return "interpolate at the roots";
  }

  @Override
  public String teaches() {
    return "A polynomial of degree below n is known from its values at the n roots.";
  }

  @Override
  public Attempt attempt(Asked asked) {
    Optional<Integer> power = power(asked);
    if (power.isEmpty()) {
      return new Attempt.Declined(
          "below each term does not stand the product of its differences from the other roots");
    }
    if (!asked.problem().polynomial().isSquarefree()) {
      return new Attempt.Declined("a root is repeated, so a denominator is zero");
    }
    return interpolated(asked, power.get());
  }

  private static Attempt interpolated(Asked asked, int k) {
    int n = asked.problem().degree();
    String root = asked.problem().roots().get(0);
    Polynomial reduced =
        ResidueAlgebra.of(asked.problem().polynomial())
            .reduce(Polynomial.monomial(Rational.ONE, k));
    Lines lines = new Lines(asked.problem().setting());
    if (k >= n) {
      lines.add(
          Idea.REDUCE,
          "P(r) = 0 lowers the power, for every root alike",
          Formula.name(root).power(k),
          PolynomialFormula.of(reduced, root));
    }
    Rational value = reduced.coefficient(n - 1);
    Formula first = PolynomialFormula.of(reduced, root).over(differences(asked));
    lines.add(
        Idea.INTERPOLATE,
        "the coefficient of the highest power in the interpolation formula of %s; cleared of fractions it is an identity of polynomials, so a root may be put in although it was excluded"
            .formatted(
                UnicodeWriter.write(PolynomialFormula.of(reduced, asked.problem().unknown()))),
        new Formula.Aggregate(Formula.Aggregate.Operation.SUM, first),
        Formula.number(value));
    List<Formula> sides = new ArrayList<>(List.of(asked.formula()));
    if (k - n + 1 > 0) {
      sides.add(new Formula.Family("h", Formula.number(k - n + 1L)));
    }
    sides.add(Formula.number(value));
    lines.add(
        Idea.STATE,
        "the same sum, since both numerators agree at every root",
        sides.toArray(Formula[]::new));
    return new Attempt.Worked(
        "interpolate at the roots",
        lines.steps(),
        Answer.exact(value),
        List.of("the roots are distinct, since the discriminant is not zero"));
  }

  private static Formula differences(Asked asked) {
    List<Formula> names = asked.problem().roots().stream().map(Formula::name).toList();
    return Formula.product(names.stream().skip(1).map(other -> names.get(0).minus(other)).toList());
  }

  /** k, if the ask is Σ r^k/∏(r − other roots); what it is as a function decides. */
  private static Optional<Integer> power(Asked asked) {
    boolean fraction =
        asked
            .formula()
            .contains(
                part ->
                    part instanceof Formula.Quotient quotient
                        && quotient.under().contains(Formula.Sum.class::isInstance));
    int n = asked.problem().degree();
    if (!fraction || asked.expression().isEmpty() || n < 2 || n > 5) {
      return Optional.empty();
    }
    RationalFunction written = asked.expression().get();
    if (written.numerator().isZero()) {
      return Optional.empty();
    }
    int degree = written.numerator().degree() - written.denominator().degree();
    int k = degree + n - 1;
    if (degree < 0 || k > HIGHEST_POWER) {
      return Optional.empty();
    }
    MultivariatePolynomial complete = SymmetricPolynomial.complete(n, degree).expand();
    return written.isSameFunction(RationalFunction.of(complete))
        ? Optional.of(k)
        : Optional.empty();
  }
}
