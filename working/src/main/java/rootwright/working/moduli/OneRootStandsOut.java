package rootwright.working.moduli;

import java.util.List;
import java.util.Optional;
import rootwright.algebra.enclosure.RealBall;
import rootwright.algebra.factor.Factorisation;
import rootwright.algebra.factor.IrreducibleFactor;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.NormalForm;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.real.SturmSequence;
import rootwright.algebra.value.ExactValue;
import rootwright.working.problem.Problem;
import rootwright.working.step.Claim;
import rootwright.working.step.Idea;
import rootwright.working.step.RootPlace;
import rootwright.working.step.Step;

/**
 * The sum of powers of the moduli of an irreducible P with one root that stands out: the only real
 * one of a cubic for squares, or the only one of its sign where all are real.
 */
final class OneRootStandsOut {

  private final Problem problem;
  private final ModulusAsk ask;
  private final Polynomial p;

  OneRootStandsOut(Problem problem, ModulusAsk ask) {
    this.problem = problem;
    this.ask = ask;
    this.p = problem.polynomial();
  }

  /** The value, its way added to {@code ways}; empty if no root stands out. */
  Optional<ExactValue> sum(int power, List<Found.Way> ways) {
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
                  AllModuli.counted(p, "all roots are real", RootPlace.REAL, n),
                  AllModuli.counted(
                      p,
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
}
