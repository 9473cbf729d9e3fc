package rootwright.working.route;

import java.util.List;
import java.util.Optional;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.PolynomialFormula;
import rootwright.algebra.notation.UnicodeWriter;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.symmetric.ElementaryValues;
import rootwright.working.ask.Asked;
import rootwright.working.problem.RootFunction;
import rootwright.working.step.Claim;
import rootwright.working.step.Idea;
import rootwright.working.step.Setting;

/**
 * Passes to the polynomial whose roots are r − k, 1/r, 1/(r − k) or r², and reads the ask off that
 * one.
 */
final class TransformRoots implements Route {

  /** Highest power of the new roots that is added up here. */
  private static final int HIGHEST = 3;

  @Override
  public String name() {
    return "transform";
  }

  @Override
  public String title() {
    return "pass to a polynomial with other roots";
  }

  @Override
  public String teaches() {
    return "Moving, turning round or squaring the roots changes the coefficients by a rule.";
  }

  @Override
  public Attempt attempt(Asked asked) {
    Optional<RootFunction> f = asked.sumOverRoots();
    if (f.isEmpty()) {
      return new Attempt.Declined("the ask is no sum of one term for each root");
    }
    if (!f.get().isPolynomial()) {
      return reciprocals(asked, f.get());
    }
    Optional<Integer> index = asked.powerSumIndex();
    return index.isPresent()
            && index.get() % 2 == 0
            && index.get() >= 4
            && index.get() / 2 <= HIGHEST
        ? squares(asked, index.get() / 2)
        : new Attempt.Declined("no change of the roots makes the ask simpler");
  }

  /** Σ c/(r − k)^m: move the roots by k, turn the coefficients round, add up m-th powers. */
  private static Attempt reciprocals(Asked asked, RootFunction f) {
    int m = f.denominator().degree();
    Rational k =
        f.denominator().coefficient(m - 1).over(f.denominator().lead()).over(Rational.of(-m));
    boolean purePower = f.denominator().monic().equals(Polynomial.withRoots(List.of(k)).power(m));
    if (!purePower || f.numerator().degree() != 0 || m > HIGHEST) {
      return new Attempt.Declined("below stands no power of r − k; split the fraction first");
    } else if (asked.problem().polynomial().at(k).isZero()) {
      return Reasons.ZERO_DENOMINATOR;
    }
    Rational c = f.numerator().coefficient(0).over(f.denominator().lead());
    Setting setting = asked.problem().setting();
    Lines lines = new Lines(setting);
    Polynomial current = asked.problem().polynomial();
    Formula root = Formula.name(asked.problem().roots().get(0));
    Formula moved = root;
    if (!k.isZero()) {
      moved =
          k.signum() > 0 ? root.minus(Formula.number(k)) : root.plus(Formula.number(k.negate()));
      current = current.compose(Polynomial.ofAscending(List.of(k, Rational.ONE)));
      lines.addRoots(
          Idea.SHIFT,
          "put %s = y %s %s; the roots are now %s"
              .formatted(
                  asked.problem().unknown(),
                  k.signum() > 0 ? "+" : "−",
                  UnicodeWriter.write(Formula.number(k.absolute())),
                  UnicodeWriter.write(moved)),
          vanishing(current, "y"),
          new Claim.HasRoots(setting, current, moved));
    }
    Formula turned = Formula.number(1).over(moved);
    Polynomial reversed = current.reversed().primitive();
    lines.addRoots(
        Idea.REVERSE,
        "turn the coefficients round; the roots are now " + UnicodeWriter.write(turned),
        vanishing(reversed, "z"),
        new Claim.HasRoots(setting, reversed, turned));
    Rational sum = powerSum(lines, reversed, m, turned);
    Rational result = c.times(sum);
    if (!c.isOne()) {
      lines.add(
          Idea.ARITHMETIC,
          "every term has the factor " + UnicodeWriter.write(Formula.number(c)),
          asked.formula(),
          Formula.number(c).times(Formula.number(sum)),
          Formula.number(result));
    }
    return Attempt.Worked.of(
        k.isZero()
            ? "turn the coefficients round"
            : "move the roots by %s, then turn the coefficients round"
                .formatted(UnicodeWriter.write(Formula.number(k))),
        lines.steps(),
        result);
  }

  /** Σ r^(2m) as the sum of the m-th powers of the squares. */
  private static Attempt squares(Asked asked, int m) {
    Setting setting = asked.problem().setting();
    Polynomial p = asked.problem().polynomial();
    // P(x)·P(−x) has only even powers; with y = x² its roots are the squares.
    Polynomial product = p.times(p.compose(Polynomial.X.negate()));
    Rational[] even = new Rational[p.degree() + 1];
    for (int j = 0; j <= p.degree(); j++) {
      even[j] = product.coefficient(2 * j);
    }
    Polynomial squares = Polynomial.ofAscending(List.of(even)).primitive();
    Lines lines = new Lines(setting);
    Formula x = Formula.name(asked.problem().unknown());
    lines
        .in(setting.withFree(asked.problem().unknown()))
        .add(
            Idea.EXPAND,
            "multiply out: only even powers are left",
            Combination.product(
                List.of(
                    new Formula.Application("P", List.of(x)),
                    new Formula.Application("P", List.of(new Formula.Negative(x))))),
            PolynomialFormula.of(product, asked.problem().unknown()));
    Formula square = Formula.name(asked.problem().roots().get(0)).power(2);
    lines.addRoots(
        Idea.SQUARE_ROOTS,
        "put y = %s² in it; the roots are now the squares".formatted(asked.problem().unknown()),
        vanishing(squares, "y"),
        new Claim.HasRoots(setting, squares, square));
    Rational sum = powerSum(lines, squares, m, square);
    return Attempt.Worked.of("pass to the squares of the roots", lines.steps(), sum);
  }

  /** Writes the line that adds up the m-th powers of the new roots, and gives the sum. */
  private static Rational powerSum(Lines lines, Polynomial image, int m, Formula map) {
    List<Rational> e = ElementaryValues.of(image);
    Formula each = m == 1 ? map : powered(map, m);
    Formula sum = new Formula.Aggregate(Formula.Aggregate.Operation.SUM, each);
    Formula first = Formula.number(e.get(1));
    Rational second = e.size() > 2 ? e.get(2) : Rational.ZERO;
    Rational third = e.size() > 3 ? e.get(3) : Rational.ZERO;
    Rational value =
        switch (m) {
          case 1 -> e.get(1);
          case 2 -> e.get(1).power(2).minus(second.times(2));
          default -> e.get(1).power(3).minus(e.get(1).times(second).times(3)).plus(third.times(3));
        };
    Formula worked =
        switch (m) {
          case 1 -> first;
          case 2 -> first.power(2).minus(Formula.number(2).times(Formula.number(second)));
          default ->
              first
                  .power(3)
                  .minus(Formula.number(3).times(first).times(Formula.number(second)))
                  .plus(Formula.number(3).times(Formula.number(third)));
        };
    String reason =
        switch (m) {
          case 1 -> "minus the second coefficient over the lead";
          case 2 -> "sum of squares: e₁² − 2e₂ of the new polynomial";
          default -> "sum of cubes: e₁³ − 3e₁e₂ + 3e₃ of the new polynomial";
        };
    lines.add(
        m == 1 ? Idea.READ_COEFFICIENTS : Idea.EXPAND, reason, sum, worked, Formula.number(value));
    return value;
  }

  /** (1/g)^m as 1/g^m, other powers with the exponents multiplied. */
  private static Formula powered(Formula map, int m) {
    if (map instanceof Formula.Quotient quotient) {
      return quotient.over().over(quotient.under().power(m));
    } else if (map instanceof Formula.Power power) {
      return power.base().power(2L * m);
    }
    return map.power(m);
  }

  private static Formula vanishing(Polynomial polynomial, String letter) {
    return Formula.equation(PolynomialFormula.of(polynomial, letter), Formula.number(0));
  }
}
