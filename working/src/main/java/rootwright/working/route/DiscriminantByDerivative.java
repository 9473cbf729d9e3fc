package rootwright.working.route;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rootwright.algebra.factor.RationalRoot;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.PolynomialFormula;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.symmetric.ElementaryValues;
import rootwright.working.ask.Asked;
import rootwright.working.ask.DiscriminantMeaning;
import rootwright.working.problem.Problem;
import rootwright.working.step.Idea;

/**
 * The discriminant as ±a^(n−2)·Π P′(r), where P has three terms ax^n + bx + c, or P′ has rational
 * zeros only. (P′(r) is a times the product of r − s over the other roots s.)
 */
final class DiscriminantByDerivative implements Route {

  @Override
  public String name() {
    return "derivative-at-roots";
  }

  @Override
  public String title() {
    return "multiply P′(r) over all roots";
  }

  @Override
  public String teaches() {
    return "P′(r) is the lead times the product of r − s over the other roots s.";
  }

  @Override
  public Attempt attempt(Asked asked) {
    Problem problem = asked.problem();
    Polynomial p = problem.polynomial();
    Optional<LinearFactors> zeros = LinearFactors.of(p.derivative());
    boolean threeTerms = threeTerms(p);
    if (p.degree() < 2 || (zeros.isEmpty() && !threeTerms)) {
      return new Attempt.Declined(
          "P has more than the terms ax^n + bx + c, and P′ has zeros that are not rational");
    }
    Lines lines = new Lines(problem.setting());
    begin(lines, problem);
    Rational product =
        threeTerms ? byThreeTerms(lines, problem) : byZeros(lines, problem, zeros.orElseThrow());
    int n = p.degree();
    Rational factor = p.lead().power(n - 2).times(sign(n));
    Rational value = factor.times(product);
    lines.add(
        Idea.DISCRIMINANT,
        "put together",
        DiscriminantMeaning.of(problem),
        new Combination().plus(factor, Formula.number(product)).formula(),
        Formula.number(value));
    return Attempt.Worked.of(title(), lines.steps(), value);
  }

  private static boolean threeTerms(Polynomial p) {
    boolean gap = true;
    for (int k = 2; k < p.degree(); k++) {
      gap = gap && p.coefficient(k).isZero();
    }
    return gap && p.degree() >= 3 && !p.coefficient(0).isZero();
  }

  private static Rational sign(int n) {
    return n * (n - 1) / 2 % 2 == 0 ? Rational.ONE : Rational.MINUS_ONE;
  }

  private static Formula root(Problem problem) {
    return Formula.name(problem.roots().get(0));
  }

  private static Formula slope(Problem problem) {
    return new Formula.Application("P'", List.of(root(problem)));
  }

  private static Formula product(Formula body) {
    return new Formula.Aggregate(Formula.Aggregate.Operation.PRODUCT, body);
  }

  private static void begin(Lines lines, Problem problem) {
    int n = problem.degree();
    Rational factor = problem.polynomial().lead().power(n - 2).times(sign(n));
    lines.add(
        Idea.DISCRIMINANT,
        "every difference stands in two of the factors, once with either sign",
        DiscriminantMeaning.of(problem),
        new Combination().plus(factor, product(slope(problem))).formula());
  }

  /** Π P′(r) = n^n·a·Π P(c) over the zeros c of P′. */
  private static Rational byZeros(Lines lines, Problem problem, LinearFactors zeros) {
    Polynomial p = problem.polynomial();
    int n = p.degree();
    String x = problem.unknown();
    List<Formula> factors = new ArrayList<>(List.of(Formula.number(zeros.lead())));
    for (RationalRoot zero : zeros.points()) {
      factors.add(
          Combination.power(
              PolynomialFormula.of(Polynomial.withRoots(List.of(zero.value())), x),
              zero.multiplicity()));
    }
    lines
        .in(problem.setting().withFree(x))
        .add(
            Idea.RATIONAL_ROOT,
            "the zeros of P′",
            new Formula.Application("P'", List.of(Formula.name(x))),
            PolynomialFormula.of(p.derivative(), x),
            Combination.product(factors));
    Rational power = Rational.of(n).power(n);
    Rational value = power.times(p.lead());
    List<Formula> names = new ArrayList<>();
    List<Formula> numbers = new ArrayList<>();
    for (RationalRoot zero : zeros.points()) {
      Rational at = PolynomialValues.write(lines, "P", p, zero.value());
      value = value.times(at.power(zero.multiplicity()));
      names.add(
          Combination.power(PolynomialValues.applied("P", zero.value()), zero.multiplicity()));
      numbers.add(Combination.power(Formula.number(at), zero.multiplicity()));
    }
    Formula front =
        Combination.product(List.of(Formula.number(n).power(n), Formula.number(p.lead())));
    names.add(0, front);
    numbers.add(0, front);
    lines.add(
        Idea.EVALUATE,
        "the product of c − r over all roots is P(c) over the lead",
        product(slope(problem)),
        Combination.product(names),
        Combination.product(numbers),
        Formula.number(value));
    return value;
  }

  /** r·P′(r) = −(n − 1)·b·r − n·c for P = ax^n + bx + c. */
  private static Rational byThreeTerms(Lines lines, Problem problem) {
    Polynomial p = problem.polynomial();
    int n = p.degree();
    Rational b = p.coefficient(1);
    Rational c = p.coefficient(0);
    Polynomial linear = Polynomial.ofAscending(List.of(c.times(-n), b.times(1 - n)));
    Formula times = root(problem).times(slope(problem));
    lines.add(
        Idea.VANISHING,
        "the highest power by P(%s) = 0".formatted(problem.roots().get(0)),
        times,
        PolynomialFormula.of(p.derivative().times(Polynomial.X), problem.roots().get(0)),
        PolynomialFormula.of(linear, problem.roots().get(0)));
    Formula body = PolynomialFormula.of(linear, problem.roots().get(0));
    Rational all;
    if (b.isZero()) {
      all = linear.coefficient(0).power(n);
      lines.add(
          Idea.ARITHMETIC,
          "the same number for every root",
          product(times),
          Formula.number(linear.coefficient(0)).power(n),
          Formula.number(all));
    } else {
      // Π (u − v·r) = v^n·P(u/v)/a with v = (n − 1)·b, u = −n·c.
      Rational v = b.times(n - 1);
      Rational point = c.times(-n).over(v);
      Rational at = PolynomialValues.write(lines, "P", p, point);
      all = v.power(n).times(at).over(p.lead());
      Formula over = Formula.number(v).power(n).times(PolynomialValues.applied("P", point));
      lines.add(
          Idea.EVALUATE,
          "P in linear factors",
          product(times),
          product(body),
          p.lead().isOne() ? over : over.over(Formula.number(p.lead())),
          Formula.number(all));
    }
    Rational constant = ElementaryValues.of(p).get(n);
    lines.add(
        Idea.READ_COEFFICIENTS,
        "the product of the roots",
        product(root(problem)),
        Formula.number(constant));
    Rational value = all.over(constant);
    lines.add(
        Idea.ARITHMETIC,
        "divide",
        product(slope(problem)),
        Formula.number(all).over(Formula.number(constant)),
        Formula.number(value));
    return value;
  }
}
