package rootwright.working.route;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.PolynomialFormula;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.real.SturmSequence;
import rootwright.working.answer.Answer;
import rootwright.working.ask.Asked;
import rootwright.working.ask.RealRange;
import rootwright.working.problem.Problem;
import rootwright.working.step.Idea;
import rootwright.working.step.Setting;
import rootwright.working.step.Step;

/**
 * Counts the distinct real roots, or those of one sign, by Sturm's sequence (Sturm 1829), repeated
 * factors divided out.
 */
final class SturmCount implements Route {

  private final RealRange range;

  SturmCount(RealRange range) {
    this.range = range;
  }

  /** Longest division chain that is written down. */
  private static final int HIGHEST_DEGREE = 8;

  @Override
  public String name() {
    return "sturm";
  }

  @Override
  public String title() {
    return "Sturm's sequence";
  }

  @Override
  public String teaches() {
    return "The changes of sign that a chain of remainders loses count the real roots.";
  }

  @Override
  public Attempt attempt(Asked asked) {
    Problem problem = asked.problem();
    if (problem.degree() > HIGHEST_DEGREE) {
      return new Attempt.Declined("the chain of remainders is too long to be written");
    }
    Polynomial counted =
        range == RealRange.ALL ? problem.polynomial() : withoutZero(problem.polynomial());
    if (counted.degree() < 1) {
      return new Attempt.Declined("0 is the only root");
    }
    List<Polynomial> members = SturmSequence.of(counted).members();
    String x = problem.unknown();
    Setting setting = problem.setting().withFunction("Q", members.get(0)).withFree(x);
    Lines lines = new Lines(setting);
    start(lines, problem, members);
    for (int k = 1; k + 1 < members.size(); k++) {
      divide(lines, x, members.subList(k - 1, k + 2));
    }
    List<Step> steps = new ArrayList<>(lines.steps());
    List<Integer> negative =
        members.stream()
            .map(m -> m.degree() % 2 == 0 ? m.lead().signum() : -m.lead().signum())
            .toList();
    List<Integer> atZero = members.stream().map(m -> m.coefficient(0).signum()).toList();
    List<Integer> positive = members.stream().map(m -> m.lead().signum()).toList();
    List<Integer> low = range == RealRange.POSITIVE ? atZero : negative;
    List<Integer> high = range == RealRange.NEGATIVE ? atZero : positive;
    steps.add(
        signs(low, range == RealRange.POSITIVE ? "at " + x + " = 0" : "for very negative " + x));
    steps.add(
        signs(high, range == RealRange.NEGATIVE ? "at " + x + " = 0" : "for very large " + x));
    int count = changes(low) - changes(high);
    steps.add(
        Step.argument(
            Idea.ARITHMETIC,
            "Sturm: %d %s less %d"
                .formatted(changes(low), changes(low) == 1 ? "change" : "changes", changes(high)),
            new Formula.Words(
                "%d distinct %s %s"
                    .formatted(count, range.adjective(), count == 1 ? "root" : "roots"))));
    return new Attempt.Worked(
        title(), steps, new Answer.Count(BigInteger.valueOf(count)), List.of());
  }

  private void start(Lines lines, Problem problem, List<Polynomial> members) {
    String x = problem.unknown();
    Polynomial p = problem.polynomial();
    Polynomial first = members.get(0);
    Polynomial divisor = p.divide(first).quotient();
    String letter = first.equals(p) ? "P" : "Q";
    if (!first.equals(p)) {
      lines.add(
          Idea.ELIMINATE,
          divisor.degree() > 0
              ? p.coefficient(0).isZero() && range != RealRange.ALL
                  ? "without the root 0, and every root once"
                  : "every root once: divide by what P and P′ have in common"
              : "without the factor in front",
          new Formula.Application("P", List.of(Formula.name(x))),
          Combination.product(
              List.of(PolynomialFormula.of(divisor, x), PolynomialFormula.of(first, x))));
    }
    if (members.size() > 1) {
      Rational content = first.derivative().lead().over(members.get(1).lead());
      lines.add(
          Idea.STATE,
          "the derivative" + (content.isOne() ? "" : ", its positive factor left out from here on"),
          new Formula.Application(letter + "'", List.of(Formula.name(x))),
          multiple(content, members.get(1), x));
    }
  }

  /** f = q·g − c·h with c > 0. */
  private static void divide(Lines lines, String x, List<Polynomial> three) {
    Polynomial.Division division = three.get(0).divide(three.get(1));
    Rational content = division.remainder().lead().negate().over(three.get(2).lead());
    lines.add(
        Idea.ELIMINATE,
        "divide; the sign of the remainder is changed",
        PolynomialFormula.of(three.get(0), x),
        Combination.product(
                List.of(
                    PolynomialFormula.of(division.quotient(), x),
                    PolynomialFormula.of(three.get(1), x)))
            .minus(multiple(content, three.get(2), x)));
  }

  private static Formula multiple(Rational factor, Polynomial polynomial, String x) {
    Formula written = PolynomialFormula.of(polynomial, x);
    return factor.isOne()
        ? written
        : polynomial.degree() == 0
            ? Formula.number(factor.times(polynomial.coefficient(0)))
            : Combination.product(List.of(Formula.number(factor), written));
  }

  private static Step signs(List<Integer> signs, String where) {
    String shown =
        signs.stream().map(s -> s > 0 ? "+" : s < 0 ? "−" : "0").collect(Collectors.joining(" "));
    int changes = changes(signs);
    return Step.argument(
        Idea.CASES,
        where + ": " + changes + (changes == 1 ? " change of sign" : " changes of sign"),
        new Formula.Words(shown));
  }

  /** Zeros are passed over. */
  private static int changes(List<Integer> signs) {
    List<Integer> seen = signs.stream().filter(sign -> sign != 0).toList();
    int changes = 0;
    for (int k = 1; k < seen.size(); k++) {
      changes += seen.get(k).equals(seen.get(k - 1)) ? 0 : 1;
    }
    return changes;
  }

  private static Polynomial withoutZero(Polynomial p) {
    int zeros = 0;
    while (p.coefficient(zeros).isZero()) {
      zeros++;
    }
    return p.divide(Polynomial.monomial(Rational.ONE, zeros)).quotient();
  }
}
