package rootwright.working.route;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.roots.PowerSums;
import rootwright.working.answer.Answer;
import rootwright.working.ask.Asked;
import rootwright.working.problem.Problem;
import rootwright.working.problem.WholeNumber;
import rootwright.working.step.Idea;
import rootwright.working.step.Step;

/**
 * The ask S_k mod m for a polynomial with whole coefficients and lead 1, whose power sums are whole
 * and follow S_k = c_1·S_(k−1) + … + c_n·S_(k−n).
 *
 * @param index k, at least 1
 * @param modulus m, at least 2
 */
record ResidueAsk(Problem problem, String letter, BigInteger index, BigInteger modulus) {

  static final Attempt OTHER =
      new Attempt.Declined(
          "the ask is no power sum with a positive index of a polynomial with whole coefficients and lead 1");

  static Optional<ResidueAsk> of(Asked asked) {
    Problem problem = asked.problem();
    if (!(problem.ask() instanceof Formula.Modulo ask)
        || !(ask.of() instanceof Formula.Family family)
        || !(family.letter().equals("S") || family.letter().equals("p"))) {
      return Optional.empty();
    }
    Optional<BigInteger> index = WholeNumber.of(family.index()).filter(k -> k.signum() > 0);
    Optional<BigInteger> modulus =
        WholeNumber.of(ask.modulus()).filter(m -> m.compareTo(BigInteger.ONE) > 0);
    Polynomial p = problem.polynomial();
    return index.isPresent()
            && modulus.isPresent()
            && p.lead().isOne()
            && p.denominator().equals(BigInteger.ONE)
        ? Optional.of(new ResidueAsk(problem, family.letter(), index.get(), modulus.get()))
        : Optional.empty();
  }

  int degree() {
    return problem.degree();
  }

  /** c_j. */
  BigInteger factor(int j) {
    return problem.polynomial().numerator(degree() - j).negate();
  }

  /** S_0, …, S_(n−1), exactly. */
  List<BigInteger> start() {
    PowerSums sums = PowerSums.of(problem.polynomial());
    return IntStream.range(0, degree()).mapToObj(k -> sums.value(k).numerator()).toList();
  }

  /** S_k. */
  Formula name(BigInteger k) {
    return new Formula.Family(letter, Formula.number(k));
  }

  /** S_k. */
  Formula name(int k) {
    return name(BigInteger.valueOf(k));
  }

  /** The next residue, the last n being given in order. */
  BigInteger next(List<BigInteger> last) {
    return total(last).mod(modulus);
  }

  /** c_1·(last) + … + c_n·(first), not reduced. */
  BigInteger total(List<BigInteger> last) {
    BigInteger sum = BigInteger.ZERO;
    for (int j = 1; j <= degree(); j++) {
      sum = sum.add(factor(j).multiply(last.get(degree() - j)));
    }
    return sum;
  }

  /** The recurrence with formulas put for the last n members. */
  Formula recurrence(List<Formula> last) {
    Combination sum = new Combination();
    for (int j = 1; j <= degree(); j++) {
      sum.plus(Rational.of(factor(j)), last.get(degree() - j));
    }
    return sum.formula();
  }

  /** {@code q·m + r} for a whole number; the number itself if it is its own residue. */
  Formula divided(BigInteger number) {
    return divided(number, modulus);
  }

  /** {@code q·m + r} for a whole number; the number itself if it is its own residue. */
  static Formula divided(BigInteger number, BigInteger modulus) {
    BigInteger rest = number.mod(modulus);
    BigInteger times = number.subtract(rest).divide(modulus);
    if (times.signum() == 0) {
      return Formula.number(number);
    }
    return new Combination()
        .plus(Formula.number(times).times(Formula.number(modulus)))
        .plus(Rational.of(rest))
        .formula();
  }

  /** Writes S_1, …, S_(n−1) by Newton's identities and the recurrence once. */
  void begin(Lines lines) {
    int n = degree();
    List<Integer> first = IntStream.range(1, n).boxed().toList();
    new PowerSumLines(
            CoefficientLines.of(problem), problem.polynomial(), letter, Math.max(1, n - 1))
        .write(lines, first);
    List<Formula> last = new ArrayList<>();
    IntStream.range(0, n).forEach(k -> last.add(name(k)));
    lines.add(
        Idea.RECURRENCE,
        "P(r) = 0, added up over the roots; likewise for every later index, with %s₀ = %d"
            .formatted(letter, n),
        name(n),
        recurrence(last));
  }

  /** The line that states the residue. */
  Step end(BigInteger residue, String reason) {
    return Step.argument(
        Idea.STATE,
        reason,
        new Formula.Relation(
            List.of(name(index), Formula.number(residue)), List.of(Formula.Comparison.CONGRUENT)));
  }

  Attempt worked(String title, List<Step> steps, BigInteger residue) {
    return new Attempt.Worked(title, steps, new Answer.Residue(residue, modulus), List.of());
  }
}
