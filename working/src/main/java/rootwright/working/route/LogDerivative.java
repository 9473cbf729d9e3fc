package rootwright.working.route;

import java.util.List;
import java.util.Optional;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.UnicodeWriter;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.working.ask.Asked;
import rootwright.working.problem.RootFunction;
import rootwright.working.step.Idea;
import rootwright.working.step.Setting;

/**
 * Sums of 1/(k − r) by P′(k)/P(k), and of 1/(k − r)² by the derivative of that (product rule; any
 * multiplicities).
 */
final class LogDerivative implements Route {

  @Override
  public String name() {
    return "log-derivative";
  }

  @Override
  public String title() {
    return "the derivative over the polynomial";
  }

  @Override
  public String teaches() {
    return "P′/P is the sum of 1/(x − r) over all roots.";
  }

  @Override
  public Attempt attempt(Asked asked) {
    Optional<RootFunction> f = asked.sumOverRoots().filter(sum -> !sum.isPolynomial());
    if (f.isEmpty()) {
      return new Attempt.Declined("no fraction with a root below is added up over the roots");
    }
    Polynomial under = f.get().denominator();
    if (under.degree() == 1) {
      return simplePole(asked, f.get());
    }
    Rational middle = under.degree() == 2 ? centre(under) : Rational.ZERO;
    boolean square =
        under.degree() == 2
            && under.monic().equals(Polynomial.withRoots(List.of(middle, middle)))
            && f.get().numerator().degree() == 0;
    return square
        ? doublePole(asked, f.get(), middle)
        : new Attempt.Declined("below stands no k − r and no (k − r)²; split the fraction first");
  }

  private static Rational centre(Polynomial quadratic) {
    return quadratic.coefficient(1).over(quadratic.lead()).over(Rational.of(-2));
  }

  /** f(r) = quotient(r) + c/(k − r). */
  private static Attempt simplePole(Asked asked, RootFunction f) {
    Polynomial p = asked.problem().polynomial();
    Rational k = f.denominator().coefficient(0).over(f.denominator().lead()).negate();
    Polynomial.Division division = f.numerator().divide(f.denominator());
    Polynomial whole = division.quotient();
    Rational c = division.remainder().coefficient(0).over(f.denominator().lead()).negate();
    if (p.at(k).isZero()) {
      return Reasons.ZERO_DENOMINATOR;
    } else if (whole.degree() > 0) {
      return new Attempt.Declined("powers of the roots would be left over; reduce them first");
    }
    Lines lines = new Lines(asked.problem().setting());
    Formula term = reciprocal(asked, k, 1);
    Formula sum = new Formula.Aggregate(Formula.Aggregate.Operation.SUM, term);
    Rational constant = whole.coefficient(0);
    Rational added = constant.times(p.degree());
    Formula split = split(constant, added, c, sum);
    if (!whole.isZero()) {
      lines.add(Idea.PARTIAL_FRACTIONS, "whole part and remainder", asked.formula(), split);
    }
    identity(asked, lines);
    Rational below = PolynomialValues.write(lines, "P", p, k);
    Rational above = PolynomialValues.write(lines, "P'", p.derivative(), k);
    Rational value = above.over(below);
    lines.add(
        Idea.LOG_DERIVATIVE,
        "P′ over P at " + text(k),
        sum,
        PolynomialValues.applied("P'", k).over(PolynomialValues.applied("P", k)),
        Formula.number(above).over(Formula.number(below)),
        Formula.number(value));
    Rational result = added.plus(c.times(value));
    if (!result.equals(value) || !whole.isZero()) {
      lines.add(
          Idea.ARITHMETIC,
          c.equals(Rational.MINUS_ONE) && whole.isZero()
              ? "every term changes sign"
              : "put together",
          asked.formula(),
          split,
          Formula.number(result));
    }
    return Attempt.Worked.of("P′ over P, at " + text(k), lines.steps(), result);
  }

  private static Formula split(Rational constant, Rational added, Rational c, Formula sum) {
    Formula scaled =
        c.isOne()
            ? sum
            : c.equals(Rational.MINUS_ONE)
                ? new Formula.Negative(sum)
                : Formula.number(c).times(sum);
    return constant.isZero() ? scaled : Formula.number(added).plus(scaled);
  }

  /** Σ c/(k − r)² = c·((P′/P)² − P″/P) at k. */
  private static Attempt doublePole(Asked asked, RootFunction f, Rational k) {
    Polynomial p = asked.problem().polynomial();
    if (p.at(k).isZero()) {
      return Reasons.ZERO_DENOMINATOR;
    }
    Rational c = f.numerator().coefficient(0).over(f.denominator().lead());
    Lines lines = new Lines(asked.problem().setting());
    String x = asked.problem().unknown();
    identity(asked, lines);
    Setting free = lines.setting().withFree(x);
    Formula at = Formula.name(x);
    Formula first = apply("P'", at).over(apply("P", at));
    lines
        .in(free)
        .add(
            Idea.LOG_DERIVATIVE,
            "its derivative, with the sign changed",
            new Formula.Aggregate(
                Formula.Aggregate.Operation.SUM,
                Formula.number(1)
                    .over(at.minus(Formula.name(asked.problem().roots().get(0))).power(2))),
            first.power(2).minus(apply("P''", at).over(apply("P", at))));
    Rational value = PolynomialValues.write(lines, "P", p, k);
    Rational slope = PolynomialValues.write(lines, "P'", p.derivative(), k);
    Rational bend = PolynomialValues.write(lines, "P''", p.derivative().derivative(), k);
    Rational inside = slope.over(value).power(2).minus(bend.over(value));
    Rational result = c.times(inside);
    Formula worked =
        Formula.number(slope.over(value)).power(2).minus(Formula.number(bend.over(value)));
    lines.add(
        Idea.LOG_DERIVATIVE,
        "at " + text(k) + "; the square hides the sign of k − r",
        asked.formula(),
        c.isOne() ? worked : Formula.number(c).times(worked),
        Formula.number(result));
    return Attempt.Worked.of("P′ over P and its derivative, at " + text(k), lines.steps(), result);
  }

  private static void identity(Asked asked, Lines lines) {
    String x = asked.problem().unknown();
    Formula at = Formula.name(x);
    Formula term = Formula.number(1).over(at.minus(Formula.name(asked.problem().roots().get(0))));
    lines
        .in(lines.setting().withFree(x))
        .add(
            Idea.LOG_DERIVATIVE,
            "product rule on P(x) = a·Π(x − r); needs P(x) ≠ 0",
            apply("P'", at).over(apply("P", at)),
            new Formula.Aggregate(Formula.Aggregate.Operation.SUM, term));
  }

  private static Formula reciprocal(Asked asked, Rational k, int power) {
    Formula root = Formula.name(asked.problem().roots().get(0));
    Formula difference = k.isZero() ? new Formula.Negative(root) : Formula.number(k).minus(root);
    return Formula.number(1).over(power == 1 ? difference : difference.power(power));
  }

  private static Formula apply(String function, Formula argument) {
    return new Formula.Application(function, List.of(argument));
  }

  private static String text(Rational number) {
    return UnicodeWriter.write(Formula.number(number));
  }
}
