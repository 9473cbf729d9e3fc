package rootwright.working.values;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.PolynomialFormula;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.value.ExactValue;
import rootwright.algebra.value.ExactValues;
import rootwright.algebra.value.QuadraticSurd;
import rootwright.algebra.value.RationalValue;
import rootwright.working.check.second.RealRootCount;
import rootwright.working.route.Combination;
import rootwright.working.solve.CheckFailedException;
import rootwright.working.step.Idea;
import rootwright.working.step.Setting;
import rootwright.working.step.Step;

/**
 * The product of three real numbers whose sum and sum of products are known: a cubic with three
 * real roots whose constant term moves has them until two become equal.
 */
final class ThirdOfCubic {

  private final String letter;
  private final Rational one;
  private final Rational two;

  /**
   * @param letter a letter for the cubic
   * @param one e_1
   * @param two e_2
   */
  ThirdOfCubic(String letter, Rational one, Rational two) {
    this.letter = letter;
    this.one = one;
    this.two = two;
  }

  /** The bound on e_3 itself; empty if no three real numbers have these values. */
  Optional<Bound> bound() {
    Rational spread = one.times(one).minus(two.times(3));
    if (spread.signum() < 0) {
      return Optional.empty();
    }
    Rational third = Rational.of(1, 3);
    ExactValue first = QuadraticSurd.of(one.times(third), third.negate(), spread);
    ExactValue last = QuadraticSurd.of(one.times(third), third, spread);
    ExactValue high = product(first);
    ExactValue low = product(last);
    requireRealInside(low, high);
    return Optional.of(
        new Bound(
            Optional.of(low),
            Optional.of(high),
            "double-root",
            "the ends are where two of the numbers are equal",
            "Real roots meet before they vanish: at the ends of a range two of them are equal.",
            steps(List.of(first, last), low, high),
            "real roots counted inside and outside the range"));
  }

  /** e_3 = m²(e_1 − 2m) for the numbers m, m, e_1 − 2m. */
  private ExactValue product(ExactValue m) {
    if (m instanceof RationalValue rational) {
      Rational value = rational.number();
      return new RationalValue(value.times(value).times(one.minus(value.times(2))));
    }
    QuadraticSurd surd = (QuadraticSurd) m;
    QuadraticSurd rest = (QuadraticSurd) other(m);
    ExactValue square = surd.times(surd);
    return square instanceof QuadraticSurd still
        ? still.times(rest)
        : rest.times(((RationalValue) square).number());
  }

  private List<Step> steps(List<ExactValue> doubles, ExactValue low, ExactValue high) {
    Formula t = Formula.name(letter);
    Polynomial f = Polynomial.ofAscending(List.of(Rational.ZERO, two, one.negate(), Rational.ONE));
    Setting setting = Setting.ofLetters(List.of(letter)).withFunction("f", f);
    Formula applied = new Formula.Application("f", List.of(t));
    List<Step> steps = new ArrayList<>();
    steps.add(
        Step.equation(
            setting,
            Idea.STATE,
            "each number is a root of f(%s) = e_3".formatted(letter),
            applied,
            PolynomialFormula.of(f, letter)));
    List<Formula> factors = new ArrayList<>(List.of(Formula.number(3)));
    doubles.forEach(m -> factors.add(factor(t, m)));
    steps.add(
        DataLines.line(
            setting,
            Idea.DISCRIMINANT,
            "f rises, falls and rises; it turns where its derivative is zero",
            new Formula.Application("f'", List.of(t)),
            PolynomialFormula.of(f.derivative(), letter),
            Combination.product(factors)));
    for (ExactValue m : doubles.get(0).equals(doubles.get(1)) ? doubles.subList(0, 1) : doubles) {
      ExactValue value = m.equals(doubles.get(0)) ? high : low;
      steps.add(
          Step.equation(
              setting,
              Idea.EVALUATE,
              "here two of the numbers are equal",
              new Formula.Application("f", List.of(m.toFormula())),
              value.toFormula()));
      ExactValue other = other(m);
      steps.add(
          DataLines.line(
              setting,
              Idea.INEQUALITY,
              "attained by these three numbers: their product",
              m.toFormula().power(2).times(other.toFormula()),
              value.toFormula()));
    }
    steps.add(
        Step.argument(
            Idea.INEQUALITY,
            "a horizontal line meets the curve three times only between its turning values",
            new Formula.Relation(
                List.of(low.toFormula(), ElementaryNames.letter(3), high.toFormula()),
                List.of(Formula.Comparison.AT_MOST, Formula.Comparison.AT_MOST))));
    return steps;
  }

  private ExactValue other(ExactValue m) {
    return m instanceof QuadraticSurd surd
        ? new QuadraticSurd(one.minus(surd.a().times(2)), surd.b().times(-2), surd.d())
        : new RationalValue(one.minus(((RationalValue) m).number().times(2)));
  }

  private static Formula factor(Formula t, ExactValue root) {
    Formula value = root.toFormula();
    return value instanceof Formula.Numeral numeral && numeral.value().signum() <= 0
        ? numeral.value().isZero() ? t : t.plus(Formula.number(numeral.value().negate()))
        : t.minus(value);
  }

  /** By enclosures of the roots: three real ones inside, fewer outside. */
  private void requireRealInside(ExactValue low, ExactValue high) {
    Rational below = low.enclosure(30).real().low().toRational();
    Rational above = high.enclosure(30).real().high().toRational();
    Rational little = Rational.of(1, 1_000_000);
    boolean inside = count(below.plus(above).times(Rational.of(1, 2))) == 3 || low.equals(high);
    boolean outside = count(below.minus(little)) < 3 && count(above.plus(little)) < 3;
    if (!inside || !outside || ExactValues.compareReal(low, high) > 0) {
      throw new CheckFailedException(
          "the answer", Formula.name(letter), "the real roots say otherwise");
    }
  }

  private int count(Rational three) {
    return RealRootCount.of(
            Polynomial.ofAscending(List.of(three.negate(), two, one.negate(), Rational.ONE)))
        .withMultiplicity();
  }
}
