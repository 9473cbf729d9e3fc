package rootwright.working.values;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.FormulaExpansion;
import rootwright.algebra.notation.NormalForm;
import rootwright.algebra.notation.UnreadableException;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Monomial;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.algebra.polynomial.RationalFunction;
import rootwright.algebra.value.ExactValue;
import rootwright.algebra.value.QuadraticSurd;
import rootwright.algebra.value.RationalValue;
import rootwright.working.solve.CheckFailedException;
import rootwright.working.step.Claim;
import rootwright.working.step.Idea;
import rootwright.working.step.Setting;
import rootwright.working.step.Step;

/**
 * Bounds that are attained where all numbers are equal: of an expression that is linear in the sum
 * of the squares when the sum is known, of the sum when the sum of the squares is known, and of the
 * sum of the reciprocals of positive numbers. All rest on n·Σx² − (Σx)² = Σ(x − y)² (Lagrange's
 * identity).
 */
final class EqualNumbers {

  private static final long SEED = 20_261_125L;
  private static final int SAMPLES = 60;
  private static final String SECOND =
      "sixty seeded choices of numbers, none of which passes the bound";

  private final SymmetricData data;
  private final Formula target;

  EqualNumbers(SymmetricData data, Formula target) {
    this.data = data;
    this.target = target;
  }

  /** n·Σx² − (Σx)² = Σ(x − y)² over pairs. */
  private Step identity() {
    Formula n = Formula.number(data.count());
    return Step.equation(
        Setting.ofLetters(data.names()),
        Idea.INEQUALITY,
        "an identity; the right side is not negative",
        NormalForm.of(n.times(powers(2)).minus(powers(1).power(2))),
        NormalForm.of(Formula.sum(pairs())));
  }

  private List<Formula> pairs() {
    List<Formula> pairs = new ArrayList<>();
    for (int i = 0; i < data.count(); i++) {
      for (int j = i + 1; j < data.count(); j++) {
        pairs.add(name(i).minus(name(j)).power(2));
      }
    }
    return pairs;
  }

  private Formula powers(int k) {
    return Formula.sum(
        data.names().stream()
            .<Formula>map(name -> k == 1 ? Formula.name(name) : Formula.name(name).power(k))
            .toList());
  }

  private Formula name(int k) {
    return Formula.name(data.names().get(k));
  }

  /** All numbers equal to one. */
  private Step attained(Formula each, Formula value) {
    Setting setting = Setting.ofLetters(List.of());
    for (String name : data.names()) {
      setting = setting.withDefinition(name, each);
    }
    List<Formula> sides = new ArrayList<>();
    data.names().forEach(name -> sides.add(Formula.name(name)));
    sides.add(each);
    Formula equal = Formula.equation(sides.toArray(Formula[]::new));
    return new Step(
        new Formula.Listing(List.of(equal, Formula.equation(target, value))),
        "attained when all are equal",
        Idea.INEQUALITY,
        Claim.equal(setting, target, value));
  }

  /**
   * The sum s is known, and the target is a·e₂ + b: e₂ is at most (n − 1)s²/(2n).
   *
   * @param linear the target in e₁, e₂, …
   */
  Optional<Bound> fromSum(MultivariatePolynomial linear, Rational sum, boolean positive) {
    int n = data.count();
    if (n < 2 || (positive && sum.signum() <= 0)) {
      return Optional.empty();
    }
    for (int k = 2; k < n; k++) {
      if (linear.degreeIn(k) > 0) {
        return Optional.empty();
      }
    }
    List<MultivariatePolynomial> put = new ArrayList<>();
    put.add(MultivariatePolynomial.constant(sum));
    put.add(MultivariatePolynomial.unknown(0));
    for (int k = 2; k < n; k++) {
      put.add(MultivariatePolynomial.ZERO);
    }
    MultivariatePolynomial inSecond = linear.substitute(put);
    if (inSecond.degree() != 1) {
      return Optional.empty();
    }
    Rational factor = inSecond.coefficient(Monomial.of(1));
    Rational each = sum.over(Rational.of(n));
    Rational value = valueAt(n, each);
    Formula bound = Formula.number(value);
    boolean least = factor.signum() < 0;
    requireBound(sum, value, least, positive);
    List<Step> steps =
        List.of(
            identity(),
            Step.argument(
                Idea.INEQUALITY,
                "so with this sum the sum of the squares is at least",
                new Formula.Relation(
                    List.of(powers(2), Formula.number(sum.times(sum).over(Rational.of(n)))),
                    List.of(Formula.Comparison.AT_LEAST))),
            Step.argument(
                Idea.STATE,
                "and the expression falls or grows with it",
                new Formula.Relation(
                    List.of(target, bound),
                    List.of(least ? Formula.Comparison.AT_LEAST : Formula.Comparison.AT_MOST))),
            attained(Formula.number(each), bound));
    Optional<ExactValue> end = Optional.of(new RationalValue(value));
    return Optional.of(
        new Bound(
            least ? end : Optional.empty(),
            least ? Optional.empty() : end,
            "squared-differences",
            "squares of differences are not negative",
            "With a given sum the squares are least when all numbers are equal.",
            steps,
            SECOND));
  }

  /** The sum Q of the squares is known, and the target is the sum: its square is at most nQ. */
  Optional<Bound> fromSquares(Rational squares) {
    int n = data.count();
    if (n < 2 || squares.signum() <= 0) {
      return Optional.empty();
    }
    ExactValue high = QuadraticSurd.of(Rational.ZERO, Rational.ONE, squares.times(n));
    ExactValue low = QuadraticSurd.of(Rational.ZERO, Rational.MINUS_ONE, squares.times(n));
    ExactValue each = QuadraticSurd.of(Rational.ZERO, Rational.ONE, squares.over(Rational.of(n)));
    List<Step> steps =
        List.of(
            identity(),
            Step.argument(
                Idea.INEQUALITY,
                "so with these squares",
                new Formula.Relation(
                    List.of(powers(1).power(2), Formula.number(squares.times(n))),
                    List.of(Formula.Comparison.AT_MOST))),
            attained(each.toFormula(), high.toFormula()));
    return Optional.of(
        new Bound(
            Optional.of(low),
            Optional.of(high),
            "squared-differences",
            "squares of differences are not negative",
            "With given squares the sum is greatest when all numbers are equal.",
            steps,
            "the identity multiplied out, and the equality case put in"));
  }

  /** The sum of the reciprocals of positive numbers with the sum s is at least n²/s. */
  Optional<Bound> reciprocals(Rational sum) {
    int n = data.count();
    if (n < 2 || sum.signum() <= 0) {
      return Optional.empty();
    }
    List<Formula> reciprocals =
        data.names().stream()
            .<Formula>map(name -> Formula.number(1).over(Formula.name(name)))
            .toList();
    List<Formula> fractions = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      for (int j = i + 1; j < n; j++) {
        fractions.add(name(i).minus(name(j)).power(2).over(name(i).times(name(j))));
      }
    }
    Rational value = Rational.of((long) n * n).over(sum);
    Rational each = sum.over(Rational.of(n));
    requireBound(sum, value, true, true);
    List<Step> steps =
        List.of(
            Step.equation(
                Setting.ofLetters(data.names()),
                Idea.INEQUALITY,
                "an identity; the right side is not negative for positive numbers",
                NormalForm.of(
                    powers(1).times(Formula.sum(reciprocals)).minus(Formula.number((long) n * n))),
                Formula.sum(fractions)),
            Step.argument(
                Idea.INEQUALITY,
                "divided by the sum",
                new Formula.Relation(
                    List.of(target, Formula.number(value)), List.of(Formula.Comparison.AT_LEAST))),
            attained(Formula.number(each), Formula.number(value)));
    return Optional.of(
        new Bound(
            Optional.of(new RationalValue(value)),
            Optional.empty(),
            "squared-differences",
            "squares of differences are not negative",
            "The sum times the sum of the reciprocals is at least n².",
            steps,
            SECOND));
  }

  private Rational valueAt(int n, Rational each) {
    List<Rational> point = new ArrayList<>();
    for (int k = 0; k < n; k++) {
      point.add(each);
    }
    return valueAt(point);
  }

  private Rational valueAt(List<Rational> point) {
    Map<String, Integer> numbers = new LinkedHashMap<>();
    data.names().forEach(name -> numbers.put(name, numbers.size()));
    try {
      RationalFunction function = FormulaExpansion.expand(target, numbers);
      return function.numerator().at(point).over(function.denominator().at(point));
    } catch (UnreadableException impossible) {
      throw new IllegalStateException("what was read cannot be read", impossible);
    }
  }

  /** As a second opinion, numbers with this sum, drawn with a seed. */
  private void requireBound(Rational sum, Rational bound, boolean least, boolean positive) {
    SplittableRandom random = new SplittableRandom(SEED);
    for (int sample = 0; sample < SAMPLES; sample++) {
      List<Rational> point = new ArrayList<>();
      Rational total = Rational.ZERO;
      for (int k = 0; k < data.count(); k++) {
        Rational one = Rational.of(random.nextInt(positive ? 1 : -50, 51), 7);
        point.add(one);
        total = total.plus(one);
      }
      if (total.isZero()) {
        continue;
      }
      Rational scale = sum.over(total);
      point.replaceAll(one -> one.times(scale));
      if (point.stream().anyMatch(Rational::isZero)) {
        continue;
      }
      int sign = valueAt(point).compareTo(bound);
      if (least ? sign < 0 : sign > 0) {
        throw new CheckFailedException("the answer", target, "numbers pass the bound: " + point);
      }
    }
  }
}
