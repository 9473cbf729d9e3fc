package rootwright.working.route;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.PolynomialFormula;
import rootwright.algebra.notation.UnicodeWriter;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.working.answer.Answer;
import rootwright.working.ask.Asked;
import rootwright.working.ask.RealRange;
import rootwright.working.problem.Problem;
import rootwright.working.step.Idea;
import rootwright.working.step.Setting;
import rootwright.working.step.Step;

/**
 * Counts real roots, or those of one sign, between two bounds that meet: Descartes' rule from above
 * (La Géométrie, 1637), changes of sign of the values of P from below.
 */
final class SignRule implements Route {

  private final RealRange range;

  SignRule(RealRange range) {
    this.range = range;
  }

  private static final int LAST_BY_ONES = 10;
  private static final int LAST = 1_000_000;

  @Override
  public String name() {
    return "sign-rule";
  }

  @Override
  public String title() {
    return "Descartes' rule of signs, and values of P";
  }

  @Override
  public String teaches() {
    return "Signs of coefficients bound the roots from above, signs of values from below.";
  }

  @Override
  public Attempt attempt(Asked asked) {
    Problem problem = asked.problem();
    Polynomial p = problem.polynomial();
    int zeros = 0;
    while (p.coefficient(zeros).isZero()) {
      zeros++;
    }
    Polynomial rest = p.divide(Polynomial.monomial(Rational.ONE, zeros)).quotient();
    List<Side> sides =
        switch (range) {
          case ALL -> List.of(Side.of(rest, 1), Side.of(rest, -1));
          case POSITIVE -> List.of(Side.of(rest, 1));
          case NEGATIVE -> List.of(Side.of(rest, -1));
        };
    for (Side side : sides) {
      if (!side.isSettled()) {
        return new Attempt.Declined(
            "the rule leaves open %s %s roots, and the values of P do not settle it"
                .formatted(side.possible(), side.word()));
      }
    }
    return worked(problem, rest, zeros, sides);
  }

  private Attempt worked(Problem problem, Polynomial rest, int zeros, List<Side> sides) {
    Setting setting = problem.setting().withFunction("Q", rest);
    String letter = zeros == 0 ? "P" : "Q";
    Formula x = Formula.name(problem.unknown());
    List<Step> steps = new ArrayList<>();
    if (zeros > 0) {
      steps.add(
          Step.equation(
              setting.withFree(problem.unknown()),
              Idea.RATIONAL_ROOT,
              "0 is a root; look at the other factor",
              new Formula.Application("P", List.of(x)),
              Combination.power(x, zeros).times(new Formula.Application("Q", List.of(x)))));
    }
    for (Side side : sides) {
      Lines identity = new Lines(setting.withFree(problem.unknown()));
      Formula argument = side.direction() > 0 ? x : new Formula.Negative(x);
      identity.add(
          Idea.STATE,
          side.direction() > 0 ? "the signs of its coefficients" : "the same for negative roots",
          new Formula.Application(letter, List.of(argument)),
          PolynomialFormula.of(side.mirrored(), problem.unknown()));
      steps.addAll(identity.steps());
      steps.add(side.rule());
      Lines values = new Lines(setting);
      for (int point : side.shown()) {
        PolynomialValues.write(values, letter, rest, Rational.of((long) side.direction() * point));
      }
      steps.addAll(values.steps());
      if (!side.shown().isEmpty()) {
        steps.add(side.between());
      }
    }
    int count = sides.stream().mapToInt(Side::changes).sum();
    if (range != RealRange.ALL) {
      return new Attempt.Worked(
          title(), steps, new Answer.Count(BigInteger.valueOf(count)), List.of());
    }
    count += zeros > 0 ? 1 : 0;
    Combination total = new Combination();
    sides.forEach(side -> total.plus(Formula.number(side.changes())));
    if (zeros > 0) {
      total.plus(Rational.ONE);
    }
    steps.add(
        Step.equation(
            problem.setting(),
            Idea.ARITHMETIC,
            zeros > 0
                ? "the positive, the negative and 0 together"
                : "the positive and the negative together",
            total.formula(),
            Formula.number(count)));
    return new Attempt.Worked(
        title(), steps, new Answer.Count(BigInteger.valueOf(count)), List.of());
  }

  /**
   * The roots of one sign.
   *
   * @param direction 1 for positive roots, −1 for negative
   * @param mirrored P(x) or P(−x), whose positive roots are meant
   * @param changes changes of sign along its coefficients
   * @param runs for each run of equal signs of its values the first point in it
   */
  private record Side(int direction, Polynomial mirrored, int changes, List<Integer> runs) {

    static Side of(Polynomial p, int direction) {
      Polynomial mirrored = direction > 0 ? p : p.compose(Polynomial.X.negate());
      List<Integer> signs =
          IntStream.rangeClosed(0, mirrored.degree())
              .map(k -> mirrored.coefficient(k).signum())
              .filter(sign -> sign != 0)
              .boxed()
              .toList();
      int changes =
          (int)
              IntStream.range(1, signs.size())
                  .filter(k -> !signs.get(k).equals(signs.get(k - 1)))
                  .count();
      List<Integer> runs = new ArrayList<>();
      int last = 0;
      for (int point = 0; point <= LAST; point = point < LAST_BY_ONES ? point + 1 : point * 10) {
        int sign = mirrored.at(Rational.of(point)).signum();
        if (sign != 0 && sign != last) {
          runs.add(point);
          last = sign;
        }
      }
      return new Side(direction, mirrored, changes, runs);
    }

    /** One change means one root; otherwise as many roots must be seen as there are changes. */
    boolean isSettled() {
      return changes <= 1 || runs.size() - 1 == changes;
    }

    List<Integer> shown() {
      return changes <= 1 ? List.of() : runs;
    }

    String word() {
      return direction > 0 ? "positive" : "negative";
    }

    String possible() {
      return IntStream.rangeClosed(0, changes / 2)
          .mapToObj(k -> String.valueOf(changes - 2 * k))
          .collect(Collectors.joining(" or "));
    }

    Step rule() {
      String signs =
          IntStream.rangeClosed(0, mirrored.degree())
              .map(k -> mirrored.coefficient(mirrored.degree() - k).signum())
              .filter(sign -> sign != 0)
              .mapToObj(sign -> sign > 0 ? "+" : "−")
              .collect(Collectors.joining(" "));
      return Step.argument(
          Idea.CASES,
          "%s: %s %s root%s"
              .formatted(
                  changes == 1 ? "1 change" : changes + " changes",
                  changes == 0 ? "no" : possible(),
                  word(),
                  changes == 1 ? "" : "s"),
          new Formula.Words(signs));
    }

    Step between() {
      String places =
          IntStream.range(1, runs.size())
              .mapToObj(k -> "(%s, %s)".formatted(end(k, true), end(k, false)))
              .collect(Collectors.joining(", "));
      return Step.argument(
          Idea.INEQUALITY,
          "the values change their sign %d times, so all %d are there".formatted(changes, changes),
          new Formula.Words("a root in each of " + places));
    }

    private String end(int run, boolean low) {
      int inner = runs.get(run - 1);
      int outer = runs.get(run);
      int point = direction > 0 == low ? inner : outer;
      return UnicodeWriter.write(Formula.number((long) direction * point));
    }
  }
}
