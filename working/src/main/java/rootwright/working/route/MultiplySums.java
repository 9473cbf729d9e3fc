package rootwright.working.route;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.TreeSet;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Monomial;
import rootwright.algebra.polynomial.RationalFunction;
import rootwright.working.ask.Asked;
import rootwright.working.check.exact.Expansion;
import rootwright.working.problem.Problem;
import rootwright.working.step.Idea;

/**
 * A sum over pairs of roots, one above and one below the stroke, as a product of two sums over
 * single roots less what that product has too much: Σ r/s = Σ r·Σ 1/r − n.
 */
final class MultiplySums implements Route {

  private static final String TITLE = "multiply two sums and take off what is too much";

  @Override
  public String name() {
    return "multiply-sums";
  }

  @Override
  public String title() {
    return TITLE;
  }

  @Override
  public String teaches() {
    return "A product of two sums has every pair in it, and every root with itself.";
  }

  @Override
  public Attempt attempt(Asked asked) {
    Optional<Pair> pair = Pair.of(asked.problem());
    if (pair.isEmpty()) {
      return new Attempt.Declined("it adds up no power of a root over a power of another");
    } else if (!pair.get().isWithinReach()) {
      return new Attempt.Declined("the powers of the roots are too high or too low");
    } else if (asked.problem().polynomial().coefficient(0).isZero()) {
      return Reasons.ZERO_DENOMINATOR;
    }
    return worked(asked, pair.get());
  }

  private static Attempt worked(Asked asked, Pair pair) {
    Problem problem = asked.problem();
    LaurentTotal sums =
        new LaurentTotal(
            problem.polynomial(), problem.roots(), problem.unknown(), PowerSumLines.letter(asked));
    int a = pair.first();
    int b = pair.second();
    Rational factor = pair.factor();
    Lines lines = new Lines(problem.setting());
    lines.add(
        Idea.EXPAND,
        "the product also has every root with itself",
        problem.ask(),
        pair.written(sums.name(a), sums.name(b), sums.name(a + b)));
    NavigableSet<Integer> exponents = new TreeSet<>(List.of(a, b, a + b));
    sums.write(lines, exponents, Map.of());
    Rational product = sums.sum(a).times(sums.sum(b));
    Rational value = factor.times(product.minus(sums.sum(a + b)));
    lines.add(
        Idea.ARITHMETIC,
        "with these numbers",
        problem.ask(),
        pair.written(
            Formula.number(sums.sum(a)),
            Formula.number(sums.sum(b)),
            Formula.number(sums.sum(a + b))),
        Formula.number(value));
    return Attempt.Worked.of(TITLE, lines.steps(), value);
  }

  /**
   * What is added up over all ordered pairs: factor·r^first·s^second, first positive and second
   * negative.
   */
  private record Pair(Rational factor, int first, int second) {

    static Optional<Pair> of(Problem problem) {
      return problem.ask() instanceof Formula.Aggregate sum
              && sum.operation() == Formula.Aggregate.Operation.SUM
          ? Expansion.of(sum.body(), problem).flatMap(Pair::of)
          : Optional.empty();
    }

    private static Optional<Pair> of(RationalFunction body) {
      if (body.numerator().terms().size() != 1 || body.denominator().terms().size() != 1) {
        return Optional.empty();
      }
      Monomial over = body.numerator().terms().firstKey();
      Monomial under = body.denominator().terms().firstKey();
      int[] exponents = new int[body.unknowns()];
      Arrays.setAll(exponents, k -> over.exponent(k) - under.exponent(k));
      int[] occurring = Arrays.stream(exponents).filter(e -> e != 0).toArray();
      boolean fraction = occurring.length == 2 && occurring[0] * (long) occurring[1] < 0;
      return fraction
          ? Optional.of(
              new Pair(
                  body.numerator()
                      .terms()
                      .firstEntry()
                      .getValue()
                      .over(body.denominator().terms().firstEntry().getValue()),
                  Math.max(occurring[0], occurring[1]),
                  Math.min(occurring[0], occurring[1])))
          : Optional.empty();
    }

    boolean isWithinReach() {
      return Math.min(second, first + second) >= LaurentTotal.LOWEST
          && first <= LaurentTotal.HIGHEST;
    }

    /** factor·(one·other − both). */
    Formula written(Formula one, Formula other, Formula both) {
      Formula product = one.equals(other) ? one.power(2) : Combination.product(List.of(one, other));
      return new Combination().plus(factor, product).plus(factor.negate(), both).formula();
    }
  }
}
