package rootwright.working.values;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import rootwright.algebra.factor.RationalRoots;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.UnicodeWriter;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.symmetric.ElementaryValues;
import rootwright.algebra.value.ExactValue;
import rootwright.algebra.value.QuadraticSurd;
import rootwright.algebra.value.RationalValue;
import rootwright.working.route.Combination;
import rootwright.working.solve.CheckFailedException;
import rootwright.working.step.Idea;
import rootwright.working.step.Setting;
import rootwright.working.step.Step;

/**
 * e_j of positive numbers whose e_i is known: with E_k = e_k / C(n, k), the numbers E_k^(1/k) fall
 * as k grows (Maclaurin 1729, Philosophical Transactions 36, p 59, from memory; Hardy, Littlewood
 * and Pólya 1934, Inequalities, theorem 52), and are equal where all numbers are. For i = 1 and j =
 * n this is the inequality of the arithmetic and the geometric mean.
 */
final class MeansOfProducts {

  private static final long SEED = 20_260_108L;
  private static final int SAMPLES = 60;

  private final SymmetricData data;
  private final int known;
  private final Rational value;
  private final int wanted;

  /**
   * @param known i
   * @param value e_i, positive
   * @param wanted j, another index
   */
  MeansOfProducts(SymmetricData data, int known, Rational value, int wanted) {
    this.data = data;
    this.known = known;
    this.value = value;
    this.wanted = wanted;
  }

  /**
   * The bound, from above for j > i and from below for j < i; empty if it is no number we write.
   */
  Optional<Bound> bound() {
    Rational mean = value.over(Rational.of(choose(known)));
    Optional<ExactValue> common = root(mean);
    if (value.signum() <= 0 || common.isEmpty()) {
      return Optional.empty();
    }
    ExactValue end = power(common.get(), Rational.of(choose(wanted)));
    requireAtSamples();
    boolean upper = wanted > known;
    return Optional.of(
        new Bound(
            upper ? Optional.empty() : Optional.of(end),
            upper ? Optional.of(end) : Optional.empty(),
            "maclaurin",
            known == 1 && wanted == data.count()
                ? "the geometric mean is at most the arithmetic mean"
                : "Maclaurin's inequality between means of products",
            "Means of products of positive numbers are equal only where all numbers are.",
            steps(common.get(), end, upper),
            "the inequality at seeded positive numbers"));
  }

  private List<Step> steps(ExactValue common, ExactValue end, boolean upper) {
    List<Step> steps = new ArrayList<>();
    Formula given = mean(known);
    Formula asked = mean(wanted);
    Formula left = rooted(asked, wanted);
    Formula right = rooted(given, known);
    steps.add(
        Step.argument(
            Idea.INEQUALITY,
            "for positive numbers, with equality only where all are equal",
            new Formula.Relation(
                List.of(left, right),
                List.of(upper ? Formula.Comparison.AT_MOST : Formula.Comparison.AT_LEAST))));
    Setting numbers = Setting.ofLetters(List.of());
    Formula x = common.toFormula();
    steps.add(
        DataLines.line(
            numbers,
            Idea.INEQUALITY,
            "the equality case keeps what is given: all numbers %s"
                .formatted(UnicodeWriter.write(x)),
            Combination.product(
                List.of(Formula.number(choose(known)), Combination.power(x, known))),
            Formula.number(value)));
    steps.add(
        DataLines.line(
            numbers,
            Idea.ARITHMETIC,
            "and gives the bound, so it is attained",
            Combination.product(
                List.of(Formula.number(choose(wanted)), Combination.power(x, wanted))),
            end.toFormula()));
    return steps;
  }

  private Formula mean(int k) {
    Formula e =
        k == 1 || k == data.count()
            ? ElementaryNames.inNames(data.names(), k)
            : ElementaryNames.letter(k);
    BigInteger count = choose(k);
    return count.equals(BigInteger.ONE) ? e : e.over(Formula.number(count));
  }

  private static Formula rooted(Formula formula, int k) {
    return k == 1 ? formula : new Formula.Radical(formula, k);
  }

  /** The i-th root of the mean, if it is rational or a square root. */
  private Optional<ExactValue> root(Rational mean) {
    Optional<Rational> exact = exactRoot(mean, known);
    if (exact.isPresent()) {
      return exact.map(RationalValue::new);
    }
    return known % 2 == 0
        ? exactRoot(mean, known / 2)
            .map(square -> QuadraticSurd.of(Rational.ZERO, Rational.ONE, square))
        : Optional.empty();
  }

  private static Optional<Rational> exactRoot(Rational number, int k) {
    Polynomial equation = Polynomial.monomial(Rational.ONE, k).minus(Polynomial.constant(number));
    return RationalRoots.of(equation).stream()
        .map(root -> root.value())
        .filter(root -> root.signum() > 0)
        .findFirst();
  }

  /** factor·common^j. */
  private ExactValue power(ExactValue common, Rational factor) {
    if (common instanceof RationalValue rational) {
      return new RationalValue(rational.number().power(wanted).times(factor));
    }
    Rational square =
        Rational.of(((QuadraticSurd) common).d())
            .times(((QuadraticSurd) common).b())
            .times(((QuadraticSurd) common).b());
    Rational whole = square.power(wanted / 2).times(factor);
    return wanted % 2 == 0 ? new RationalValue(whole) : ((QuadraticSurd) common).times(whole);
  }

  private BigInteger choose(int k) {
    BigInteger count = BigInteger.ONE;
    for (int i = 1; i <= k; i++) {
      count =
          count.multiply(BigInteger.valueOf(data.count() - i + 1L)).divide(BigInteger.valueOf(i));
    }
    return count;
  }

  /** E_j^i against E_i^j at positive numbers. */
  private void requireAtSamples() {
    SplittableRandom random = new SplittableRandom(SEED);
    int larger = Math.max(known, wanted);
    int smaller = Math.min(known, wanted);
    for (int sample = 0; sample < SAMPLES; sample++) {
      List<Rational> numbers = new ArrayList<>();
      for (int k = 0; k < data.count(); k++) {
        numbers.add(Rational.of(random.nextInt(1, 60), random.nextInt(1, 12)));
      }
      List<Rational> e = ElementaryValues.of(Polynomial.withRoots(numbers));
      Rational high = e.get(smaller).over(Rational.of(choose(smaller))).power(larger);
      Rational low = e.get(larger).over(Rational.of(choose(larger))).power(smaller);
      if (low.compareTo(high) > 0) {
        throw new CheckFailedException(
            "the answer", Formula.name("e"), "the inequality fails at " + numbers);
      }
    }
  }
}
