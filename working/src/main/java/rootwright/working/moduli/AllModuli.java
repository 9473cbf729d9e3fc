package rootwright.working.moduli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rootwright.algebra.enclosure.RealBall;
import rootwright.algebra.factor.Factorisation;
import rootwright.algebra.factor.IrreducibleFactor;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.NormalForm;
import rootwright.algebra.notation.PolynomialFormula;
import rootwright.algebra.notation.UnicodeWriter;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.real.SturmSequence;
import rootwright.algebra.roots.PowerSums;
import rootwright.algebra.value.ExactRoot;
import rootwright.algebra.value.ExactValue;
import rootwright.algebra.value.ExactValues;
import rootwright.algebra.value.RationalValue;
import rootwright.algebra.value.RootOf;
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
      steps.add(counted("all roots are real", RootPlace.REAL, distinct));
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
          oneSign.isPresent() ? oneSign : factors(power, ways).or(() -> oneStandsOut(power, ways));
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

  private Step counted(String words, RootPlace place, int count) {
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

  /** Linear and quadratic factors. */
  private Optional<ExactValue> factors(int power, List<Found.Way> ways) {
    List<IrreducibleFactor> factors = Factorisation.of(p).factors();
    List<Step> steps = new ArrayList<>();
    SurdSum total = SurdSum.ZERO;
    List<Formula> parts = new ArrayList<>();
    List<Formula> all = new ArrayList<>();
    for (IrreducibleFactor factor : factors) {
      Formula written = PolynomialFormula.of(factor.polynomial().primitive(), problem.unknown());
      all.add(factor.multiplicity() == 1 ? written : written.power(factor.multiplicity()));
    }
    for (IrreducibleFactor factor : factors) {
      Polynomial q = factor.polynomial().monic();
      if (q.degree() > 2) {
        return Optional.empty();
      }
      SurdSum one = part(q, power, steps);
      SurdSum many = one.times(SurdSum.of(Rational.of(factor.multiplicity())));
      total = total.plus(many);
      parts.add(
          ModulusValue.of(many, enclosed(factor.polynomial(), factor.multiplicity(), power))
              .toFormula());
    }
    if (factors.size() > 1) {
      Rational scale = p.lead();
      for (IrreducibleFactor factor : factors) {
        scale = scale.over(factor.polynomial().primitive().lead().power(factor.multiplicity()));
      }
      Formula product = Formula.product(all);
      steps.add(
          0,
          Step.equation(
              Setting.ofLetters(List.of(problem.unknown())),
              Idea.RATIONAL_ROOT,
              "factor",
              PolynomialFormula.of(p, problem.unknown()),
              NormalForm.of(scale.isOne() ? product : Formula.number(scale).times(product))));
    }
    ExactValue value = ModulusValue.of(total, Moduli.enclosed(problem, ask));
    boolean several = parts.size() > 1;
    steps.add(
        several
            ? new Step(
                Formula.equation(problem.ask(), Formula.sum(parts), value.toFormula()),
                "all together",
                Idea.SUM_OVER_ROOTS,
                value instanceof RootOf
                    ? new Claim.Argument()
                    : Claim.equal(
                        Setting.ofLetters(List.of()), Formula.sum(parts), value.toFormula()))
            : Step.argument(
                Idea.SUM_OVER_ROOTS,
                "both together",
                Formula.equation(problem.ask(), value.toFormula())));
    ways.add(
        new Found.Way(
            "factor-by-factor",
            "factor by factor, conjugate roots together",
            "A number times its conjugate is the square of its modulus.",
            steps));
    return Optional.of(value);
  }

  private static RealBall enclosed(Polynomial factor, int times, int power) {
    RealBall total = RealBall.exact(0);
    for (ExactRoot root : ExactValues.rootsOf(factor)) {
      for (int k = 0; k < times; k++) {
        total = total.plus(root.value().enclosure(60).absolute(240).power(power));
      }
    }
    return total;
  }

  /** The part of one monic factor. */
  private SurdSum part(Polynomial q, int power, List<Step> steps) {
    String written = UnicodeWriter.write(PolynomialFormula.of(q.primitive(), problem.unknown()));
    if (q.degree() == 1) {
      return SurdSum.of(q.coefficient(0).absolute().power(power));
    }
    Rational product = q.coefficient(0);
    Rational sum = q.coefficient(1).negate();
    boolean real = sum.times(sum).compareTo(product.times(4)) > 0;
    steps.add(
        new Step(
            new Formula.Words(
                real ? written + " has two real roots" : written + " has no real root"),
            "its discriminant is %s".formatted(real ? "positive" : "negative"),
            Idea.CONJUGATE,
            new Claim.CountOfRoots(q, NumberDomain.REAL, real ? 2 : 0)));
    if (!real) {
      SurdSum one = SurdSum.squareRoot(product.power(power));
      steps.add(
          Step.argument(
              Idea.CONJUGATE,
              "conjugate roots: each modulus squared is their product",
              Formula.equation(bars(Formula.name("z")).power(2), Formula.number(product))));
      return one.times(SurdSum.of(Rational.TWO));
    }
    Rational powers = PowerSums.of(q).value(power);
    if (power % 2 == 0) {
      return SurdSum.of(powers);
    } else if (product.signum() >= 0) {
      return SurdSum.of(powers.absolute());
    }
    // Opposite signs: |a|^k + |b|^k = |a^k − b^k|, whose square is S_k² − 4(ab)^k.
    Rational square = powers.times(powers).minus(product.power(power).times(4));
    return SurdSum.squareRoot(square);
  }

  /**
   * An irreducible P with one root that stands out: the only real one of a cubic for squares, or
   * the only one of its sign where all are real.
   */
  private Optional<ExactValue> oneStandsOut(int power, List<Found.Way> ways) {
    Polynomial monic = p.monic();
    List<IrreducibleFactor> factors = Factorisation.of(p).factors();
    if (factors.size() != 1 || factors.get(0).multiplicity() != 1) {
      return Optional.empty();
    }
    SturmSequence sturm = SturmSequence.of(p);
    int n = p.degree();
    int above = sturm.countAbove(Rational.ZERO);
    int below = sturm.countUpTo(Rational.ZERO);
    RealBall near = Moduli.enclosed(problem, ask);
    Formula a = Formula.name("a");
    if (n == 3 && power == 2 && sturm.count() == 1) {
      Rational e1 = monic.coefficient(2).negate();
      Rational e3 = monic.coefficient(0).negate();
      // a² + 2·e₃/a, and e₃/a = a² − e₁a + e₂.
      Rational e2 = monic.coefficient(1);
      Polynomial expression =
          Polynomial.ofAscending(List.of(e2.times(2), e1.times(-2), Rational.of(3)));
      ExactValue value = ModulusValue.of(expression, monic, near);
      ways.add(
          new Found.Way(
              "one-real-root",
              "one real root, and two conjugate ones",
              "The product of all roots over the real one is the square of the other moduli.",
              List.of(
                  new Step(
                      new Formula.Words("one root, a, is real; the others are conjugates"),
                      "Sturm, or a sketch of the curve",
                      Idea.DOMAIN,
                      new Claim.CountInPlace(p, RootPlace.REAL, 1)),
                  Step.argument(
                      Idea.CONJUGATE,
                      "the product of the conjugate roots is the product of all over a",
                      Formula.equation(
                          problem.ask(),
                          NormalForm.of(
                              a.power(2)
                                  .plus(Formula.number(2).times(Formula.number(e3).over(a)))))),
                  Step.argument(
                      Idea.ELIMINATE,
                      "as a number of its own",
                      Formula.equation(problem.ask(), value.toFormula())))));
      return Optional.of(value);
    }
    if (power == 1 && sturm.count() == n && (above == 1 || below == 1)) {
      Rational sum = monic.coefficient(n - 1).negate();
      boolean negative = below == 1;
      // The others keep their signs (or all lose them): S − 2a, or 2a − S.
      Polynomial expression =
          negative
              ? Polynomial.ofAscending(List.of(sum, Rational.of(-2)))
              : Polynomial.ofAscending(List.of(sum.negate(), Rational.TWO));
      ExactValue value = ModulusValue.of(expression, monic, near);
      Formula e1 = Formula.number(sum);
      ways.add(
          new Found.Way(
              "one-of-its-sign",
              "one root alone has its sign",
              "The bars change the sign of one root, or of all but one.",
              List.of(
                  counted("all roots are real", RootPlace.REAL, n),
                  counted(
                      negative ? "one of them, a, is negative" : "one of them, a, is positive",
                      negative ? RootPlace.NEGATIVE : RootPlace.POSITIVE,
                      1),
                  Step.argument(
                      Idea.STATE,
                      negative
                          ? "the sum of the roots, with the sign of a changed"
                          : "all signs changed but that of a",
                      Formula.equation(
                          problem.ask(),
                          NormalForm.of(
                              negative
                                  ? sum.isZero()
                                      ? Formula.number(-2).times(a)
                                      : e1.minus(Formula.number(2).times(a))
                                  : sum.isZero()
                                      ? Formula.number(2).times(a)
                                      : Formula.number(2).times(a).minus(e1)))),
                  Step.argument(
                      Idea.ELIMINATE,
                      "as a number of its own",
                      Formula.equation(problem.ask(), value.toFormula())))));
      return Optional.of(value);
    }
    return Optional.empty();
  }

  private static Formula bars(Formula inside) {
    return new Formula.Application("abs", List.of(inside));
  }
}
