package rootwright.working.values;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.PolynomialFormula;
import rootwright.algebra.notation.UnicodeWriter;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.value.ExactValue;
import rootwright.algebra.value.ExactValues;
import rootwright.algebra.value.QuadraticSurd;
import rootwright.algebra.value.RationalValue;
import rootwright.working.route.Combination;
import rootwright.working.solve.CheckFailedException;
import rootwright.working.step.Idea;
import rootwright.working.step.Setting;
import rootwright.working.step.Step;

/**
 * One of n real numbers whose sum and sum of squares are known: by Cauchy's inequality on the
 * others, (S − x)² ≤ (n − 1)(Q − x²), with equality where the others are equal.
 */
final class OneOfMany {

  private static final long SEED = 20_260_107L;
  private static final int SAMPLES = 60;

  private final SymmetricData data;
  private final Formula x;
  private final Rational sum;
  private final Rational squares;
  private final int n;

  OneOfMany(SymmetricData data, Formula x, Rational sum, Rational squares) {
    this.data = data;
    this.x = x;
    this.sum = sum;
    this.squares = squares;
    this.n = data.count();
  }

  /** The bound; empty if no real numbers have this sum and these squares. */
  Optional<Bound> bound() {
    Rational spread = squares.times(n).minus(sum.times(sum)).times(n - 1);
    if (spread.signum() < 0) {
      return Optional.empty();
    }
    Rational middle = sum.over(Rational.of(n));
    Rational part = Rational.of(1, n);
    ExactValue low = QuadraticSurd.of(middle, part.negate(), spread);
    ExactValue high = QuadraticSurd.of(middle, part, spread);
    requireSamplesInside(low, high);
    return Optional.of(
        new Bound(
            Optional.of(low),
            Optional.of(high),
            "cauchy",
            "Cauchy's inequality on the other numbers",
            "Where one number is extreme, the others are equal.",
            steps(low, high),
            "seeded choices of the other numbers, all inside"));
  }

  private List<Step> steps(ExactValue low, ExactValue high) {
    String name = ((Formula.Name) x).spelling();
    String others =
        data.names().stream()
            .filter(other -> !other.equals(name))
            .collect(Collectors.joining(" + "));
    Formula rest = Formula.number(sum).minus(x);
    Formula left = sum.isZero() ? x.power(2) : rest.power(2);
    Formula right =
        Combination.product(
            List.of(Formula.number(n - 1), Formula.number(squares).minus(x.power(2))));
    List<Step> steps = new ArrayList<>();
    steps.add(
        Step.argument(
            Idea.INEQUALITY,
            "Cauchy for %s: the square of their sum is at most %d times the sum of their squares"
                .formatted(others, n - 1),
            new Formula.Relation(List.of(left, right), List.of(Formula.Comparison.AT_MOST))));
    Polynomial quadratic =
        Polynomial.ofAscending(
            List.of(sum.times(sum).minus(squares.times(n - 1)), sum.times(-2), Rational.of(n)));
    steps.add(
        DataLines.line(
            Setting.ofLetters(List.of(name)),
            Idea.ELIMINATE,
            "everything on one side, and the quadratic factored",
            left.minus(right),
            PolynomialFormula.of(quadratic, name),
            Combination.product(List.of(Formula.number(n), factor(low), factor(high)))));
    steps.add(
        Step.argument(
            Idea.INEQUALITY,
            "a product that is not positive: x lies between the zeros".replace("x", name),
            new Formula.Relation(
                List.of(low.toFormula(), x, high.toFormula()),
                List.of(Formula.Comparison.AT_MOST, Formula.Comparison.AT_MOST))));
    for (ExactValue end : low.equals(high) ? List.of(low) : List.of(low, high)) {
      attained(end, steps);
    }
    return steps;
  }

  private Formula factor(ExactValue root) {
    return root.toFormula() instanceof Formula.Numeral numeral && numeral.value().signum() < 0
        ? x.plus(Formula.number(numeral.value().negate()))
        : root.toFormula().equals(Formula.number(0)) ? x : x.minus(root.toFormula());
  }

  /** The others are all (S − x)/(n − 1), and the data hold. */
  private void attained(ExactValue end, List<Step> steps) {
    Formula value = end.toFormula();
    ExactValue equal = shared(end);
    Formula other = equal.toFormula();
    steps.add(
        Step.equation(
            Setting.ofLetters(List.of()),
            Idea.INEQUALITY,
            "attained: %s with the others all %s"
                .formatted(UnicodeWriter.write(value), UnicodeWriter.write(other)),
            value.plus(Formula.number(n - 1).times(other)),
            Formula.number(sum)));
    steps.add(
        Step.equation(
            Setting.ofLetters(List.of()),
            Idea.INEQUALITY,
            "and the squares",
            value.power(2).plus(Formula.number(n - 1).times(other.power(2))),
            Formula.number(squares)));
  }

  /** (S − x)/(n − 1). */
  private ExactValue shared(ExactValue end) {
    Rational part = Rational.of(1, n - 1);
    if (end instanceof QuadraticSurd surd) {
      return new QuadraticSurd(
          sum.minus(surd.a()).times(part), surd.b().negate().times(part), surd.d());
    }
    return new RationalValue(sum.minus(((RationalValue) end).number()).times(part));
  }

  /** Whether the other numbers are all positive at this end. */
  boolean positiveAt(ExactValue end) {
    ExactValue zero = new RationalValue(Rational.ZERO);
    return ExactValues.compareReal(shared(end), zero) > 0 && ExactValues.compareReal(end, zero) > 0;
  }

  /** n − 2 numbers are drawn; the last two solve a quadratic, and all n lie inside. */
  private void requireSamplesInside(ExactValue low, ExactValue high) {
    SplittableRandom random = new SplittableRandom(SEED);
    for (int sample = 0; sample < SAMPLES; sample++) {
      Rational left = sum;
      Rational leftSquares = squares;
      for (int k = 0; k + 2 < n; k++) {
        Rational drawn = sum.over(Rational.of(n)).plus(Rational.of(random.nextInt(-40, 41), 16));
        left = left.minus(drawn);
        leftSquares = leftSquares.minus(drawn.times(drawn));
      }
      Rational root = leftSquares.times(2).minus(left.times(left));
      if (root.signum() < 0) {
        continue;
      }
      Rational half = Rational.of(1, 2);
      for (Rational sign : List.of(half, half.negate())) {
        ExactValue value = QuadraticSurd.of(left.times(half), sign, root);
        if (ExactValues.compareReal(value, low) < 0 || ExactValues.compareReal(value, high) > 0) {
          throw new CheckFailedException("the answer", x, value + " lies outside the bound");
        }
      }
    }
  }
}
