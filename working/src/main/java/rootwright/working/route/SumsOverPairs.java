package rootwright.working.route;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Monomial;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.algebra.roots.Orbit;
import rootwright.working.ask.Asked;
import rootwright.working.problem.Problem;
import rootwright.working.step.Idea;

/**
 * The polynomial whose roots are the values of a polynomial in two roots over all pairs: r^i·s^j
 * added up over the ordered pairs is S_i·S_j − S_(i+j), so the power sums of the new roots follow
 * from those of the old ones.
 */
final class SumsOverPairs implements Route {

  private static final int MOST_PAIRS = 6;

  private static final int HIGHEST_SUM = 24;

  private final Optional<String> letter;

  /** With the letter of the answer; absent for that of the problem. */
  SumsOverPairs(Optional<String> letter) {
    this.letter = letter;
  }

  @Override
  public String name() {
    return "sums-over-pairs";
  }

  @Override
  public String title() {
    return "add up powers over all pairs";
  }

  @Override
  public String teaches() {
    return "Over all pairs, rⁱsʲ adds up to SᵢSⱼ − Sᵢ₊ⱼ.";
  }

  @Override
  public Attempt attempt(Asked asked) {
    Problem problem = asked.problem();
    int n = problem.degree();
    if (asked.expression().isEmpty()
        || !asked.expression().get().isPolynomial()
        || rootsIn(asked.expression().get().numerator(), n).size() != 2) {
      return new Attempt.Declined("the new root is no polynomial in two of the old ones");
    }
    MultivariatePolynomial map = asked.expression().get().numerator();
    int images = Orbit.sizeOf(asked.expression().get(), n).intValueExact();
    boolean unordered = images == n * (n - 1) / 2;
    if (images > MOST_PAIRS || (!unordered && images != n * (n - 1))) {
      return new Attempt.Declined(
          "there are %d new roots, too many for their power sums".formatted(images));
    }
    List<Integer> roots = rootsIn(map, n);
    int degree = map.degree();
    if (degree * images > HIGHEST_SUM || n < 3) {
      return new Attempt.Declined("the power sums that are needed lie too far out");
    }
    if (Orbit.hasOpposites(asked.expression().get(), n)) {
      return Reasons.OPPOSITES;
    }
    return worked(asked, map, roots, images, unordered);
  }

  private static List<Integer> rootsIn(MultivariatePolynomial map, int n) {
    List<Integer> roots = new ArrayList<>();
    for (int k = 0; k < Math.max(n, map.unknowns()); k++) {
      if (map.degreeIn(k) > 0) {
        roots.add(k);
      }
    }
    return roots;
  }

  private Attempt worked(
      Asked asked, MultivariatePolynomial map, List<Integer> roots, int images, boolean unordered) {
    Problem problem = asked.problem();
    int n = problem.degree();
    PowerSumLines sums = PowerSumLines.of(asked, map.degree() * images);
    Lines lines = new Lines(problem.setting());
    List<MultivariatePolynomial> powers = new ArrayList<>();
    SortedSet<Integer> needed = new TreeSet<>();
    for (int k = 1; k <= images; k++) {
      MultivariatePolynomial power = k == 1 ? map : powers.get(k - 2).times(map);
      powers.add(power);
      for (Monomial monomial : power.terms().keySet()) {
        int i = monomial.exponent(roots.get(0));
        int j = monomial.exponent(roots.get(1));
        for (int index : List.of(i, j, i + j)) {
          if (index > 0) {
            needed.add(index);
          }
        }
      }
    }
    sums.write(lines, needed);
    String y = FreshNames.letter(problem);
    List<Rational> values = new ArrayList<>(List.of(Rational.of(images)));
    Rational share = unordered ? Rational.of(1, 2) : Rational.ONE;
    for (int k = 1; k <= images; k++) {
      Map<Formula, Rational> terms = new LinkedHashMap<>();
      Rational value = Rational.ZERO;
      for (Map.Entry<Monomial, Rational> term : combined(powers.get(k - 1), roots).entrySet()) {
        int i = term.getKey().exponent(0);
        int j = term.getKey().exponent(1);
        Rational factor = term.getValue().times(share);
        if (j == 0) {
          // S_0 = n, so S_i·S_0 − S_i is (n − 1)·S_i.
          terms.merge(sums.name(i), factor.times(n - 1L), Rational::plus);
        } else {
          terms.merge(product(sums, i, j), factor, Rational::plus);
          terms.merge(sums.name(i + j), factor.negate(), Rational::plus);
        }
        value =
            value.plus(
                factor.times(
                    value(sums, i, n).times(value(sums, j, n)).minus(value(sums, i + j, n))));
      }
      Combination written = new Combination();
      terms.forEach((name, factor) -> written.plus(factor, name));
      lines.add(
          k == 1 ? Idea.EXPAND : Idea.SUM_OVER_ROOTS,
          unordered ? "each pair once: half of the ordered pairs" : "over the ordered pairs",
          new Formula.Aggregate(
              Formula.Aggregate.Operation.SUM, Combination.power(problem.ask(), k)),
          written.formula(),
          Formula.number(value));
      values.add(value);
    }
    return new NewCoefficients(title(), letter).finish(problem, lines, values, y);
  }

  /** The factors of r^i·s^j with i ≥ j, both orders together. */
  private static Map<Monomial, Rational> combined(
      MultivariatePolynomial power, List<Integer> roots) {
    Map<Monomial, Rational> combined = new LinkedHashMap<>();
    power
        .terms()
        .forEach(
            (monomial, factor) -> {
              int i = monomial.exponent(roots.get(0));
              int j = monomial.exponent(roots.get(1));
              Monomial key =
                  Monomial.power(0, Math.max(i, j)).times(Monomial.power(1, Math.min(i, j)));
              combined.merge(key, factor, Rational::plus);
            });
    combined.values().removeIf(Rational::isZero);
    return combined;
  }

  private static Rational value(PowerSumLines sums, int k, int n) {
    return k == 0 ? Rational.of(n) : sums.values().get(k);
  }

  private static Formula product(PowerSumLines sums, int i, int j) {
    return i == j
        ? sums.name(i).power(2)
        : Combination.product(List.of(sums.name(i), sums.name(j)));
  }
}
