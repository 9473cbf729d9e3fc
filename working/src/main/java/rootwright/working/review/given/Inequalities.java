package rootwright.working.review.given;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Monomial;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.algebra.polynomial.RationalFunction;
import rootwright.working.answer.Answer;
import rootwright.working.review.LineFindings;
import rootwright.working.review.LineVerdict;

/** Judges the inequalities of a working and remembers them. */
final class Inequalities {

  /** Something that is not negative, and where it is said. */
  private record NotNegative(MultivariatePolynomial value, String source) {}

  private record Ranged(Range range, String source) {}

  private final Ground ground;
  private final Truths truths;
  private final Order order;
  private final List<NotNegative> known = new ArrayList<>();
  private final List<Ranged> ranges = new ArrayList<>();
  private final Optional<Range> answer;

  Inequalities(Ground ground, Truths truths) {
    this.ground = ground;
    this.truths = truths;
    this.order = new Order(ground, truths);
    this.answer =
        ground.solution().answer() instanceof Answer.Interval interval
            ? Range.of(relations(interval.condition()), ground.writing())
            : Optional.empty();
    if (ground.says("all roots are real")) {
      ground
          .writing()
          .of(new Formula.Application("discriminant", List.of()))
          .ifPresent(d -> known.add(new NotNegative(d.numerator(), "the roots are real")));
    }
  }

  /** The relations that a range is written with. */
  static List<Formula.Relation> relations(Formula condition) {
    return condition instanceof Formula.Relation relation
        ? List.of(relation)
        : condition.parts().stream().flatMap(part -> relations(part).stream()).toList();
  }

  /** Whether the range is exactly what our own working finds. */
  boolean isAnswer(List<Formula.Relation> relations) {
    Optional<Range> said = Range.of(relations, ground.writing());
    return said.isPresent()
        && answer.isPresent()
        && said.get().isWithin(answer.get())
        && answer.get().isWithin(said.get());
  }

  /** Judges inequalities of which one holds, or a single chain of them. */
  void judge(List<Formula.Relation> alternatives, LineFindings findings) {
    Formula shown =
        alternatives.size() == 1
            ? alternatives.get(0)
            : new Formula.Listing(List.copyOf(alternatives));
    Optional<Range> range = Range.of(alternatives, ground.writing());
    String source = "line " + findings.number();
    Optional<String> step = range.flatMap(this::solved);
    if (step.isPresent()) {
      findings.add(shown, LineVerdict.FOLLOWS, step.get());
    } else if (range.isPresent()
        && answer.isPresent()
        && range.get().unknown() == answer.get().unknown()) {
      if (answer.get().isWithin(range.get())) {
        findings.add(
            shown, LineVerdict.UNEXPLAINED, "true of the answer; nothing above leads to it");
      } else {
        findings.wrong(shown, "it is not so for every value of the answer", List.of());
        return;
      }
    } else if (alternatives.size() == 1) {
      single(alternatives.get(0), findings, source);
    } else {
      findings.add(shown, LineVerdict.REMARK, "alternatives, for you to judge");
    }
    range.ifPresent(r -> ranges.add(new Ranged(r, source)));
  }

  private Optional<String> solved(Range range) {
    return ranges.stream()
        .filter(known -> known.range().isWithin(range))
        .map(known -> known.source() + ", solved")
        .findFirst();
  }

  private void single(Formula.Relation chain, LineFindings findings, String source) {
    for (int k = 1; k < chain.sides().size(); k++) {
      Formula.Comparison sign = chain.comparisons().get(k - 1);
      if (sign != Formula.Comparison.EQUAL) {
        pair(chain.sides().get(k - 1), sign, chain.sides().get(k), findings, source);
      }
    }
  }

  private void pair(
      Formula left, Formula.Comparison sign, Formula right, LineFindings findings, String source) {
    Formula shown = new Formula.Relation(List.of(left, right), List.of(sign));
    boolean downwards = sign == Formula.Comparison.AT_MOST || sign == Formula.Comparison.LESS;
    boolean upwards = sign == Formula.Comparison.AT_LEAST || sign == Formula.Comparison.GREATER;
    Optional<MultivariatePolynomial> difference =
        ground
            .writing()
            .of(downwards ? right.minus(left) : left.minus(right))
            .filter(RationalFunction::isPolynomial)
            .map(RationalFunction::numerator);
    boolean strict = sign == Formula.Comparison.LESS || sign == Formula.Comparison.GREATER;
    if (difference.isPresent() && difference.get().isConstant()) {
      int signum = difference.get().coefficient(Monomial.ONE).signum();
      boolean holds = Signs.allows(sign, downwards ? -signum : signum);
      if (holds) {
        findings.add(shown, LineVerdict.FOLLOWS, "arithmetic");
      } else {
        findings.wrong(shown, "the numbers are the other way round", List.of());
      }
      return;
    }
    Optional<String> step =
        difference.isPresent() && (upwards || downwards) && !strict
            ? step(difference.get())
            : Optional.empty();
    if (step.isPresent()) {
      findings.add(shown, LineVerdict.FOLLOWS, step.get());
    } else {
      byOrder(left, sign, right, shown, findings);
    }
    if (findings.finding().verdict() != LineVerdict.WRONG && (upwards || downwards)) {
      difference.ifPresent(d -> known.add(new NotNegative(d, source)));
    }
  }

  private void byOrder(
      Formula left, Formula.Comparison sign, Formula right, Formula shown, LineFindings findings) {
    switch (order.holds(left, sign, right)) {
      case ALWAYS -> findings.add(shown, LineVerdict.FOLLOWS, "so it is at every solution");
      case NOT ->
          findings.wrong(shown, "it is not so at every solution of what is given", List.of());
      case AT_SAMPLES ->
          findings.add(shown, LineVerdict.UNDECIDED, "true at every sample, which is no proof");
      default -> findings.add(shown, LineVerdict.REMARK, "an inequality, for you to judge");
    }
  }

  /** Why this is not negative, if it is a square or said above in other words. */
  private Optional<String> step(MultivariatePolynomial value) {
    if (Squares.isSum(value)) {
      return Optional.of("a sum of squares is not negative");
    }
    for (NotNegative fact : known) {
      if (isPositiveMultiple(value, fact.value())) {
        return Optional.of(fact.source());
      }
    }
    return Optional.empty();
  }

  private boolean isPositiveMultiple(MultivariatePolynomial value, MultivariatePolynomial of) {
    Optional<MultivariatePolynomial> one = truths.value(value, false);
    Optional<MultivariatePolynomial> other = truths.value(of, false);
    if (one.isEmpty() || other.isEmpty() || other.get().isZero() || one.get().isZero()) {
      return false;
    }
    Monomial lead = other.get().terms().lastKey();
    Rational factor = one.get().coefficient(lead).over(other.get().coefficient(lead));
    return factor.signum() > 0 && one.get().equals(other.get().times(factor));
  }
}
