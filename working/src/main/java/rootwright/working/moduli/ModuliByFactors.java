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
import rootwright.algebra.roots.PowerSums;
import rootwright.algebra.value.ExactRoot;
import rootwright.algebra.value.ExactValue;
import rootwright.algebra.value.ExactValues;
import rootwright.algebra.value.RootOf;
import rootwright.algebra.value.SurdSum;
import rootwright.working.problem.Problem;
import rootwright.working.step.Claim;
import rootwright.working.step.Idea;
import rootwright.working.step.NumberDomain;
import rootwright.working.step.Setting;
import rootwright.working.step.Step;

/** The sum of powers of the moduli where every irreducible factor is linear or quadratic. */
final class ModuliByFactors {

  private final Problem problem;
  private final ModulusAsk ask;
  private final Polynomial p;

  ModuliByFactors(Problem problem, ModulusAsk ask) {
    this.problem = problem;
    this.ask = ask;
    this.p = problem.polynomial();
  }

  /** The value, its way added to {@code ways}; empty if a factor has degree 3 or more. */
  Optional<ExactValue> sum(int power, List<Found.Way> ways) {
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
              Formula.equation(
                  AllModuli.bars(Formula.name("z")).power(2), Formula.number(product))));
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
}
