package rootwright.working.integers;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.UnicodeWriter;
import rootwright.working.step.Idea;
import rootwright.working.step.Setting;
import rootwright.working.step.Step;

/** The descent, line by line. */
final class JumpLines {

  private final JumpProblem problem;
  private final SortedMap<BigInteger, List<Long>> found;
  private final Formula a;
  private final Formula b;
  private final Formula k;
  private final Formula other;
  private final Setting letters;
  private final List<Step> steps = new ArrayList<>();

  JumpLines(JumpProblem problem, SortedMap<BigInteger, List<Long>> found) {
    this.problem = problem;
    this.found = found;
    this.a = Formula.name(problem.first());
    this.b = Formula.name(problem.second());
    this.k = Formula.name(problem.quotient());
    this.other = Formula.name(problem.first() + "'");
    this.letters =
        Setting.ofLetters(List.of(problem.first(), problem.second(), problem.quotient()))
            .withDefinition(problem.first() + "'", k.times(b).minus(a));
  }

  List<Step> steps() {
    Formula left = squares(a, b).minus(k.times(below(a, b)));
    Formula rest = problem.offset() == 0 ? squareOfB() : b.power(2).minus(k);
    steps.add(
        Step.equation(
            letters,
            Idea.STATE,
            "the equation is a quadratic in %s".formatted(text(a)),
            left,
            a.power(2).minus(k.times(b).times(a)).plus(rest)));
    steps.add(
        Step.equation(
            letters,
            Idea.CONJUGATE,
            "its other root, by the sum of the roots: a whole number",
            other,
            k.times(b).minus(a)));
    steps.add(
        Step.equation(
            letters,
            Idea.CONJUGATE,
            "and by their product: what differs is the equation itself",
            a.times(other).plus(left),
            rest));
    if (problem.offset() == 0) {
      smallest();
    } else {
      squares();
    }
    return List.copyOf(steps);
  }

  private void smallest() {
    String c = number(problem.constant());
    argument(
        Idea.DOMAIN,
        "%s·%s = %s is positive, so %s is a positive integer"
            .formatted(text(a), text(other), text(squareOfB()), text(other)),
        relation(other, Formula.Comparison.GREATER, Formula.number(0)));
    argument(
        Idea.CASES,
        "take a solution with this %s and the least sum, %s ≥ %s; then %s is not smaller than %s"
            .formatted(text(k), text(a), text(b), text(other), text(a)),
        relation(a.power(2), Formula.Comparison.AT_MOST, a.times(other)));
    argument(
        Idea.INEQUALITY,
        "so the two squares differ by at most " + c,
        relation(
            a.power(2).minus(b.power(2)),
            Formula.Comparison.AT_MOST,
            Formula.number(problem.constant())));
    Formula two = k.minus(Formula.number(2));
    steps.add(
        Step.equation(
            letters,
            Idea.CASES,
            "if %s = %s: then (%s − 2)·%s² = %s, and %s² divides %s"
                .formatted(text(a), text(b), text(k), text(b), c, text(b), c),
            squares(b, b).minus(k.times(b.power(2))),
            Formula.number(problem.constant()).minus(two.times(b.power(2)))));
    found.forEach(this::example);
    argument(
        Idea.CASES,
        "every other pair with squares so close gives no whole number",
        new Formula.Words("%s is one of %s".formatted(text(k), VietaJumping.listed(found))));
  }

  private void example(BigInteger value, List<Long> pair) {
    Formula x = Formula.number(pair.get(0));
    Formula y = Formula.number(pair.get(1));
    steps.add(
        Step.equation(
            Setting.ofLetters(List.of()),
            Idea.CASES,
            "%s = %d, %s = %d".formatted(text(a), pair.get(0), text(b), pair.get(1)),
            squares(x, y).over(below(x, y)),
            Formula.number(value)));
  }

  /** a² + b² = k(ab + 1): the descent ends at 0, and k = b². */
  private void squares() {
    argument(
        Idea.DOMAIN,
        "if %s were negative, %s·%s + 1 would not be positive, but the squares are"
            .formatted(text(other), text(other), text(b)),
        relation(other, Formula.Comparison.AT_LEAST, Formula.number(0)));
    argument(
        Idea.CASES,
        "take a solution with this %s and the least sum, %s ≥ %s: a positive %s would be smaller, for %s·%s < %s²"
            .formatted(text(k), text(a), text(b), text(other), text(a), text(other), text(b)),
        Formula.equation(other, Formula.number(0)));
    argument(Idea.ELIMINATE, "so the product is 0", Formula.equation(k, b.power(2)));
    Formula cube = b.power(3);
    steps.add(
        Step.equation(
            letters,
            Idea.EVALUATE,
            "every square occurs: take %s = %s³".formatted(text(a), text(b)),
            squares(cube, b),
            b.power(2).times(below(cube, b))));
  }

  private Formula squares(Formula x, Formula y) {
    Formula sum = x.power(2).plus(y.power(2));
    return problem.constant().signum() == 0 ? sum : sum.plus(Formula.number(problem.constant()));
  }

  private Formula squareOfB() {
    return b.power(2).plus(Formula.number(problem.constant()));
  }

  private Formula below(Formula x, Formula y) {
    return problem.offset() == 0 ? x.times(y) : x.times(y).plus(Formula.number(1));
  }

  private void argument(Idea idea, String reason, Formula shown) {
    steps.add(Step.argument(idea, reason, shown));
  }

  private static Formula relation(Formula left, Formula.Comparison sign, Formula right) {
    return new Formula.Relation(List.of(left, right), List.of(sign));
  }

  private static String text(Formula formula) {
    return UnicodeWriter.write(formula);
  }

  private static String number(BigInteger number) {
    return UnicodeWriter.write(Formula.number(number));
  }
}
