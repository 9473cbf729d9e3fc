package rootwright.working.sequence;

import java.util.List;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.NormalForm;
import rootwright.algebra.notation.PolynomialFormula;
import rootwright.algebra.notation.UnicodeWriter;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.working.answer.Answer;
import rootwright.working.problem.Problem;
import rootwright.working.solve.TwoChecks;
import rootwright.working.step.Claim;
import rootwright.working.step.Idea;
import rootwright.working.step.Setting;
import rootwright.working.step.Step;

/**
 * S_0 + S_1·x + S_2·x² + … = Σ 1/(1 − rx) = n − x·R′/R, where R is the polynomial with its
 * coefficients reversed.
 */
final class GeneratingFunctionOfSums {

  private GeneratingFunctionOfSums() {}

  static SequenceFinding find(SumSequence sequence) {
    Problem problem = sequence.problem();
    int n = sequence.degree();
    String x = problem.unknown();
    Polynomial p = sequence.polynomial().primitive();
    Polynomial reversed = reversed(p, n);
    Polynomial over =
        reversed.times(Rational.of(n)).minus(Polynomial.X.times(reversed.derivative()));
    Formula fraction = fraction(over, reversed, x);
    Formula root = Formula.name(problem.roots().get(0));
    Formula factor = Formula.number(1).minus(root.times(Formula.name(x)));
    Formula sum =
        new Formula.Aggregate(Formula.Aggregate.Operation.SUM, Formula.number(1).over(factor));
    Setting setting = problem.setting().withFree(x).withFunction("R", reversed);
    Formula product = new Formula.Aggregate(Formula.Aggregate.Operation.PRODUCT, factor);
    Formula r = new Formula.Application("R", List.of(Formula.name(x)));
    Formula derivative = new Formula.Application("R'", List.of(Formula.name(x)));
    Formula logarithmic = Formula.name(x).times(derivative).over(r);
    List<Step> steps =
        List.of(
            Step.argument(
                Idea.SUM_OVER_ROOTS,
                "1 + r%s + r²%s² + … = 1/(1 − r%s), added up over the roots".formatted(x, x, x),
                Formula.equation(new Formula.Words("S₀ + S₁%s + S₂%s² + …".formatted(x, x)), sum)),
            Step.equation(
                setting,
                Idea.REVERSE,
                "the coefficients reversed",
                r,
                PolynomialFormula.of(reversed, x),
                NormalForm.of(
                    p.lead().isOne() ? product : Formula.number(p.lead()).times(product))),
            Step.equation(
                setting,
                Idea.LOG_DERIVATIVE,
                "product rule",
                NormalForm.of(new Formula.Negative(derivative.over(r))),
                new Formula.Aggregate(Formula.Aggregate.Operation.SUM, root.over(factor))),
            Step.equation(
                setting,
                Idea.LOG_DERIVATIVE,
                "1/(1 − rx) is 1 + x·r/(1 − rx); 1 for each of the %d roots".formatted(n),
                sum,
                Formula.number(n).minus(logarithmic),
                fraction));
    return new SequenceFinding(
        "generating-function",
        new Answer.FunctionOf(fraction),
        "log-derivative",
        "the derivative of the reversed polynomial over itself",
        "A generating function of power sums is a logarithmic derivative.",
        steps,
        List.of(
            "%s so small that |r%s| < 1 for every root, or a formal power series".formatted(x, x)),
        List.of(),
        wrong(p, n, x),
        new TwoChecks().require(fraction, Claim.equal(setting, sum, fraction)));
  }

  /** x^n·P(1/x), also where P(0) = 0. */
  private static Polynomial reversed(Polynomial p, int n) {
    Polynomial reversed = Polynomial.ZERO;
    for (int k = 0; k <= n; k++) {
      reversed = reversed.plus(Polynomial.monomial(p.coefficient(k), n - k));
    }
    return reversed;
  }

  private static Formula fraction(Polynomial over, Polynomial under, String x) {
    return NormalForm.of(PolynomialFormula.of(over, x).over(PolynomialFormula.of(under, x)));
  }

  private static List<SequenceFinding.Wrong> wrong(Polynomial p, int n, String x) {
    Polynomial reversed = reversed(p, n);
    Polynomial straight = p.times(Rational.of(n)).minus(Polynomial.X.times(p.derivative()));
    return List.of(
        new SequenceFinding.Wrong(
            "reversal-forgotten",
            "The factors 1 − rx belong to the polynomial with its coefficients reversed.",
            new Answer.FunctionOf(fraction(straight, p, x)),
            Idea.REVERSE,
            15),
        new SequenceFinding.Wrong(
            "starts-at-1",
            "%s is left out: the series begins with S₀, the number of roots."
                .formatted(UnicodeWriter.write(Formula.number(n))),
            new Answer.FunctionOf(
                fraction(Polynomial.X.times(reversed.derivative()).negate(), reversed, x)),
            Idea.SUM_OVER_ROOTS,
            12));
  }
}
