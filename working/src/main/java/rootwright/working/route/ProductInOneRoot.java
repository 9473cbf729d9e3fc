package rootwright.working.route;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import rootwright.algebra.factor.RationalRoot;
import rootwright.algebra.factor.RationalRoots;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.working.ask.Asked;
import rootwright.working.problem.Problem;
import rootwright.working.problem.RootFunction;
import rootwright.working.step.Idea;

/**
 * The lines that multiply, over the roots, a fraction that is linear in its factors: ∏(k − r) =
 * P(k)/a.
 */
final class ProductInOneRoot {

  private final Problem problem;
  private final Polynomial polynomial;
  private final Lines lines;
  private final String title;
  private final Formula term;
  private final RootFunction f;
  private final Formula root;

  /**
   * @param lines what stands already
   * @param title of the working
   * @param term one factor of the ask, as it is written
   * @param f the function of the root that the factor is
   * @param root that root
   */
  ProductInOneRoot(
      Asked asked, Lines lines, String title, Formula term, RootFunction f, Formula root) {
    this.problem = asked.problem();
    this.polynomial = problem.polynomial();
    this.lines = lines;
    this.title = title;
    this.term = term;
    this.f = f;
    this.root = root;
  }

  /** The lines and the value, or why not. */
  Attempt worked() {
    List<RationalRoot> zeros = RationalRoots.of(f.numerator());
    List<RationalRoot> poles = RationalRoots.of(f.denominator());
    if (count(zeros) < f.numerator().degree() || count(poles) < f.denominator().degree()) {
      return new Attempt.Declined("the factors are not linear in the root that is left");
    } else if (poles.stream().anyMatch(pole -> polynomial.at(pole.value()).isZero())) {
      return Reasons.ZERO_DENOMINATOR;
    }
    Rational scale = f.numerator().lead().over(f.denominator().lead());
    for (RationalRoot zero : zeros) {
      scale = scale.times(turned(zero));
    }
    for (RationalRoot pole : poles) {
      scale = scale.times(turned(pole));
    }
    lines.add(
        Idea.SUBSTITUTE,
        "one root is left",
        term,
        fraction(scale, zeros, poles, zero -> linear(zero.value())));
    boolean bare =
        scale.isOne() && poles.isEmpty() && zeros.size() == 1 && zeros.get(0).multiplicity() == 1;
    for (RationalRoot zero : zeros) {
      evaluate(zero.value(), bare ? List.of(problem.ask()) : List.of());
    }
    for (RationalRoot pole : poles) {
      evaluate(pole.value(), List.of());
    }
    Rational value = scale.power(problem.degree());
    for (RationalRoot zero : zeros) {
      value = value.times(product(zero.value()).power(zero.multiplicity()));
    }
    for (RationalRoot pole : poles) {
      value = value.over(product(pole.value()).power(pole.multiplicity()));
    }
    if (!bare) {
      lines.add(
          Idea.ARITHMETIC,
          "all factors together",
          problem.ask(),
          fraction(
              scale.power(problem.degree()),
              zeros,
              poles,
              zero -> Formula.number(product(zero.value()))),
          Formula.number(value));
    }
    return Attempt.Worked.of(title, lines.steps(), value);
  }

  /** The sign that turning r − k into k − r takes, as often as the factor occurs. */
  private static Rational turned(RationalRoot zero) {
    return Rational.of(zero.value().signum() > 0 && zero.multiplicity() % 2 == 1 ? -1 : 1);
  }

  /** k − r for positive k, r + |k| for negative, r for 0. */
  private Formula linear(Rational k) {
    return k.signum() > 0
        ? Formula.number(k).minus(root)
        : new Combination().plus(root).plus(k.negate()).formula();
  }

  /** The product over all roots of what {@link #linear} writes. */
  private Rational product(Rational k) {
    Rational value = polynomial.at(k).over(polynomial.lead());
    return k.signum() <= 0 && problem.degree() % 2 == 1 ? value.negate() : value;
  }

  private void evaluate(Rational k, List<Formula> called) {
    List<Formula> sides = new ArrayList<>(called);
    sides.add(new Formula.Aggregate(Formula.Aggregate.Operation.PRODUCT, linear(k)));
    boolean minus = k.signum() <= 0 && problem.degree() % 2 == 1;
    Formula applied = new Formula.Application("P", List.of(Formula.number(k)));
    for (Formula over : List.of(applied, PutIn.of(polynomial, k))) {
      Formula quotient =
          polynomial.lead().isOne() ? over : over.over(Formula.number(polynomial.lead()));
      sides.add(minus ? new Formula.Negative(quotient) : quotient);
    }
    sides.add(Formula.number(product(k)));
    lines.add(
        Idea.EVALUATE,
        minus ? "P in linear factors; an odd number of signs changes" : "P in linear factors",
        sides);
  }

  private static Formula fraction(
      Rational scale,
      List<RationalRoot> zeros,
      List<RationalRoot> poles,
      Function<RationalRoot, Formula> written) {
    Formula over = factors(zeros, written);
    Formula above = new Combination().plus(scale, over).formula();
    return poles.isEmpty() ? above : above.over(factors(poles, written));
  }

  private static Formula factors(
      List<RationalRoot> zeros, Function<RationalRoot, Formula> written) {
    return Combination.product(
        zeros.stream()
            .map(zero -> Combination.power(written.apply(zero), zero.multiplicity()))
            .toList());
  }

  private static int count(List<RationalRoot> roots) {
    return roots.stream().mapToInt(RationalRoot::multiplicity).sum();
  }
}
