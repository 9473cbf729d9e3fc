package rootwright.working.integers;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Collectors;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.PolynomialFormula;
import rootwright.algebra.notation.UnicodeWriter;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.working.route.Combination;
import rootwright.working.step.Idea;
import rootwright.working.step.Setting;
import rootwright.working.step.Step;

/** The lines that show why there are finitely many values of the letter, and which. */
final class IntegerRootLines {

  /** Most solutions that get a line of their own. */
  private static final int MOST_LINES = 16;

  private final LetterProblem problem;
  private final List<Found> found;

  IntegerRootLines(LetterProblem problem, List<Found> found) {
    this.problem = problem;
    this.found = List.copyOf(found);
  }

  /** The lines for a reason. */
  List<Step> of(Finiteness reason) {
    List<Step> steps = new ArrayList<>();
    if (reason instanceof Finiteness.LetterDropsOut drops) {
      dropsOut(drops, steps);
    } else if (reason instanceof Finiteness.SquaresKnown squares) {
      squares(squares, steps);
    }
    for (Found each : found.subList(0, Math.min(MOST_LINES, found.size()))) {
      steps.add(solution(each));
    }
    steps.add(
        Step.argument(
            Idea.CASES,
            found.size() > MOST_LINES
                ? "and the others likewise"
                : found.isEmpty() ? "no case fits" : "no other case fits",
            conclusion()));
    return steps;
  }

  private void dropsOut(Finiteness.LetterDropsOut drops, List<Step> steps) {
    Rational lead = problem.base().lead();
    BigInteger c = drops.point();
    steps.add(
        Step.equation(
            Setting.ofLetters(List.of(problem.letter())),
            Idea.EVALUATE,
            "put in %s: the letter drops out".formatted(number(c)),
            problem.statedAt(c),
            Formula.number(problem.base().at(Rational.of(c)))));
    List<Formula> factors = new ArrayList<>();
    for (int k = 0; k < problem.degree(); k++) {
      Formula root = Formula.name(List.of("r", "s", "t", "u", "v", "w").get(k % 6));
      factors.add(c.signum() == 0 ? new Formula.Negative(root) : Formula.number(c).minus(root));
    }
    steps.add(
        Step.argument(
            Idea.DIVISORS,
            problem.wish().oneIsEnough()
                ? "P is a·(x − r)·Q with whole coefficients, so %s − r divides %s"
                    .formatted(number(c), drops.value())
                : lead.isOne()
                    ? "P is the product of x − r over the roots"
                    : "P is the lead times the product of x − r over the roots",
            problem.wish().oneIsEnough()
                ? new Formula.Words(
                    "%s − r is a divisor of %s".formatted(number(c), number(drops.value())))
                : Formula.equation(Combination.product(factors), Formula.number(drops.value()))));
    steps.add(
        Step.argument(
            Idea.DIVISORS,
            "finitely many cases",
            new Formula.Words(
                problem.wish().oneIsEnough()
                    ? "%d divisors, with their signs".formatted(Divisors.of(drops.value()).size())
                    : "%d ways to write %s as a product of %d whole numbers, whatever their order"
                        .formatted(
                            Divisors.products(drops.value(), problem.degree()).size(),
                            number(drops.value()),
                            problem.degree()))));
  }

  private void squares(Finiteness.SquaresKnown known, List<Step> steps) {
    int n = problem.degree();
    Rational a = problem.base().lead();
    Rational one = problem.base().coefficient(n - 1).over(a).negate();
    Rational two = problem.base().coefficient(n - 2).over(a);
    steps.add(
        Step.equation(
            Setting.ofLetters(List.of()),
            Idea.EXPAND,
            "the sum of the squares of the roots, e_1² − 2e_2: no letter in it",
            Formula.number(one)
                .power(2)
                .minus(Combination.product(List.of(Formula.number(2), Formula.number(two)))),
            Formula.number(known.squares())));
    steps.add(
        Step.argument(
            Idea.INEQUALITY,
            "no square of a whole number is larger than the sum of all",
            new Formula.Words(
                known.squares().signum() < 0
                    ? "no whole numbers have a negative sum of squares"
                    : "every root lies between −%s and %s"
                        .formatted(known.squares().sqrt(), known.squares().sqrt()))));
  }

  /** P for this letter, and its factors. */
  private Step solution(Found each) {
    Formula x = Formula.name(problem.unknown());
    List<Formula> factors = new ArrayList<>();
    var rest = problem.at(each.letter());
    for (BigInteger root : each.roots()) {
      Formula factor =
          root.signum() == 0
              ? x
              : root.signum() > 0
                  ? x.minus(Formula.number(root))
                  : x.plus(Formula.number(root.negate()));
      int times = Collections.frequency(each.roots(), root);
      Formula power = Combination.power(factor, times);
      if (!factors.contains(power)) {
        factors.add(power);
      }
      rest = rest.divide(Polynomial.withRoots(List.of(Rational.of(root)))).quotient();
    }
    List<Formula> all = new ArrayList<>();
    all.add(PolynomialFormula.of(rest, problem.unknown()));
    all.addAll(factors);
    String value =
        UnicodeWriter.write(
            Formula.equation(Formula.name(problem.letter()), Formula.number(each.letter())));
    Formula expanded = PolynomialFormula.of(problem.at(each.letter()), problem.unknown());
    Formula product = Combination.product(all);
    return product.equals(expanded)
        ? Step.argument(Idea.CASES, value, expanded)
        : Step.equation(
            Setting.ofLetters(List.of(problem.unknown())), Idea.CASES, value, expanded, product);
  }

  private Formula conclusion() {
    if (found.isEmpty()) {
      return new Formula.Words("there is no such " + problem.letter());
    }
    String values =
        found.stream()
            .map(each -> UnicodeWriter.write(Formula.number(each.letter())))
            .collect(Collectors.joining(", "));
    return new Formula.Words(
        "%s = %s: %d %s"
            .formatted(
                problem.letter(), values, found.size(), found.size() == 1 ? "value" : "values"));
  }

  private static String number(BigInteger number) {
    return UnicodeWriter.write(Formula.number(number));
  }
}
