package rootwright.working.moduli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rootwright.algebra.enclosure.RealBall;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.real.SturmSequence;
import rootwright.algebra.roots.PowerSums;
import rootwright.algebra.value.ExactValue;
import rootwright.algebra.value.RationalValue;
import rootwright.algebra.value.SurdSum;
import rootwright.working.answer.Answer;
import rootwright.working.problem.Problem;
import rootwright.working.solve.Solution;
import rootwright.working.step.Claim;
import rootwright.working.step.Idea;
import rootwright.working.step.NumberDomain;
import rootwright.working.step.RootPlace;
import rootwright.working.step.Setting;
import rootwright.working.step.Step;

/**
 * Sums and products of powers of the absolute values of all roots, factor by factor: a real root
 * keeps or changes its sign, two conjugate roots have their product for the square of the modulus.
 */
final class AllModuli {

  private final Problem problem;
  private final ModulusAsk ask;
  private final Polynomial p;

  AllModuli(Problem problem, ModulusAsk ask) {
    this.problem = problem;
    this.ask = ask;
    this.p = problem.polynomial();
  }

  Found find() {
    return ask instanceof ModulusAsk.ProductOfPowers product
        ? product(product.power())
        : sum(((ModulusAsk.SumOfPowers) ask).power());
  }

  /** The modulus of a product is the product of the moduli. */
  private Found product(int power) {
    int n = problem.degree();
    Rational product = p.coefficient(0).over(p.lead());
    product = n % 2 == 0 ? product : product.negate();
    Rational value = product.absolute().power(power);
    Formula en = new Formula.Family("e", Formula.number(n));
    List<Step> steps =
        List.of(
            Step.equation(
                problem.setting(),
                Idea.READ_COEFFICIENTS,
                "the product of the roots",
                en,
                Formula.number(product)),
            Step.argument(
                Idea.STATE,
                "the modulus of a product is the product of the moduli",
                Formula.equation(problem.ask(), Formula.number(value))));
    return new Found(
        Optional.of(new RationalValue(value)),
        "",
        List.of(
            new Found.Way(
                "product-of-moduli", "the modulus of the product", "Moduli multiply.", steps)),
        List.of(
            OneModulus.slip(
                "bars-forgotten",
                "An absolute value is not negative.",
                Answer.exact(product.power(power)),
                Idea.READ_COEFFICIENTS)));
  }

  private Found sum(int power) {
    List<Step> steps = new ArrayList<>();
    int real = SturmSequence.of(p.squarefreePart()).count();
    int distinct = p.squarefreePart().degree();
    List<Found.Way> ways = new ArrayList<>();
    Optional<ExactValue> value = Optional.empty();
    if (real == distinct && power % 2 == 0) {
      Rational sum = PowerSums.of(p).value(power);
      value = Optional.of(new RationalValue(sum));
      steps.add(counted(p, "all roots are real", RootPlace.REAL, distinct));
      Formula written = new Formula.Family("S", Formula.number(power));
      steps.add(
          new Step(
              Formula.equation(problem.ask(), written, Formula.number(sum)),
              "the square of a real number is that of its absolute value",
              Idea.NEWTON,
              Claim.equal(problem.setting(), written, Formula.number(sum))));
      ways.add(
          new Found.Way(
              "all-real",
              "all roots are real, so even powers need no bars",
              "For real numbers |r|² is r².",
              steps));
    } else {
      Optional<ExactValue> oneSign = oneSign(power, distinct, ways);
      if (oneSign.isEmpty() && problem.degree() == 2 && power == 1) {
        return quadratic(real == distinct);
      }
      value =
          oneSign.isPresent()
              ? oneSign
              : new ModuliByFactors(problem, ask)
                  .sum(power, ways)
                  .or(() -> new OneRootStandsOut(problem, ask).sum(power, ways));
    }
    if (value.isEmpty()) {
      return Found.none(
          "the moduli of the roots of a factor of degree 3 or more have no short sum that is worked here");
    }
    return new Found(value, "", ways, slips(power));
  }

  private List<Solution.WrongTurning> slips(int power) {
    Rational plain = PowerSums.of(p).value(power);
    List<Solution.WrongTurning> slips = new ArrayList<>();
    slips.add(
        OneModulus.slip(
            "bars-forgotten",
            "For roots that are not real, or negative, a power of the modulus is not the power of the root.",
            Answer.exact(plain),
            Idea.CONJUGATE));
    slips.add(
        OneModulus.slip(
            "modulus-of-the-sum",
            "The modulus of a sum is not the sum of the moduli.",
            Answer.exact(PowerSums.of(p).value(1).absolute().power(power)),
            Idea.CONJUGATE));
    return slips;
  }

  static Step counted(Polynomial p, String words, RootPlace place, int count) {
    return new Step(
        new Formula.Words(words),
        "Sturm, or a sketch of the curve",
        Idea.DOMAIN,
        new Claim.CountInPlace(p, place, count));
  }

  /** All roots positive, or all negative. */
  private Optional<ExactValue> oneSign(int power, int distinct, List<Found.Way> ways) {
    SturmSequence sturm = SturmSequence.of(p.squarefreePart());
    boolean positive = sturm.countAbove(Rational.ZERO) == distinct;
    boolean negative = sturm.countUpTo(Rational.ZERO) == distinct && !p.coefficient(0).isZero();
    if (!positive && !negative) {
      return Optional.empty();
    }
    Rational sum = PowerSums.of(p).value(power);
    Rational value = positive ? sum : sum.negate();
    Formula written = new Formula.Family("S", Formula.number(power));
    Formula signed = positive ? written : new Formula.Negative(written);
    ways.add(
        new Found.Way(
            "one-sign",
            "all roots have the same sign",
            "Where all signs are the same the bars do the same to every root.",
            List.of(
                counted(
                    p,
                    positive ? "all roots are positive" : "all roots are negative",
                    positive ? RootPlace.POSITIVE : RootPlace.NEGATIVE,
                    distinct),
                new Step(
                    Formula.equation(problem.ask(), signed, Formula.number(value)),
                    positive ? "the bars change nothing" : "the bars change every sign",
                    Idea.NEWTON,
                    Claim.equal(problem.setting(), signed, Formula.number(value))))));
    return Optional.of(new RationalValue(value));
  }

  /** (|r| + |s|)² = r² + s² + 2|rs| for real roots, 2√(rs) for conjugate ones. */
  private Found quadratic(boolean real) {
    Formula r = Formula.name(problem.roots().get(0));
    Formula s = Formula.name(problem.roots().get(1));
    Rational sum = p.coefficient(1).over(p.lead()).negate();
    Rational product = p.coefficient(0).over(p.lead());
    Rational squares = sum.times(sum).minus(product.times(2));
    List<Step> steps = new ArrayList<>();
    Rational square;
    steps.add(
        Step.equation(
            problem.setting(),
            Idea.READ_COEFFICIENTS,
            "the product",
            r.times(s),
            Formula.number(product)));
    if (real) {
      square = squares.plus(product.absolute().times(2));
      steps.add(
          Step.equation(
              problem.setting(),
              Idea.BUILD,
              "the sum of the squares",
              r.power(2).plus(s.power(2)),
              Formula.number(squares)));
      steps.add(
          Step.argument(
              Idea.EXPAND,
              "square; for real roots |r|² = r²",
              Formula.equation(
                  bars(r).plus(bars(s)).power(2),
                  r.power(2).plus(s.power(2)).plus(Formula.number(2).times(bars(r.times(s)))),
                  Formula.number(square))));
    } else {
      square = product.times(4);
      steps.add(
          new Step(
              new Formula.Words("no root is real, so the roots are conjugates"),
              "the discriminant is negative",
              Idea.CONJUGATE,
              new Claim.CountOfRoots(p, NumberDomain.REAL, 0)));
      steps.add(
          Step.argument(
              Idea.CONJUGATE,
              "conjugate numbers have the same modulus, and its square is their product",
              Formula.equation(
                  bars(r).plus(bars(s)),
                  Formula.number(2).times(new Formula.Radical(Formula.number(product), 2)))));
    }
    ExactValue value =
        ModulusValue.of(
            SurdSum.squareRoot(square),
            square.isZero() ? RealBall.exact(0) : RealBall.of(square, 400).squareRoot(400));
    Formula root = new Formula.Radical(Formula.number(square), 2);
    steps.add(
        value instanceof RationalValue
            ? Step.argument(
                Idea.DOMAIN,
                "it is not negative",
                Formula.equation(problem.ask(), value.toFormula()))
            : new Step(
                root.equals(value.toFormula())
                    ? Formula.equation(problem.ask(), root)
                    : Formula.equation(problem.ask(), root, value.toFormula()),
                "it is not negative",
                Idea.DOMAIN,
                Claim.equal(Setting.ofLetters(List.of()), root, value.toFormula())));
    return new Found(
        Optional.of(value),
        "",
        List.of(
            new Found.Way(
                "square",
                "square the sum",
                "Squared, a sum of absolute values shows squares and one product.",
                steps)),
        slips(1));
  }

  static Formula bars(Formula inside) {
    return new Formula.Application("abs", List.of(inside));
  }
}
