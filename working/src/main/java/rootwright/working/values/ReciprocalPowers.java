package rootwright.working.values;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.FormulaExpansion;
import rootwright.algebra.notation.UnreadableException;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Monomial;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.polynomial.RationalFunction;
import rootwright.algebra.value.RationalValue;
import rootwright.working.answer.Answer;
import rootwright.working.problem.Problem;
import rootwright.working.route.Combination;
import rootwright.working.route.Working;
import rootwright.working.solve.TwoChecks;
import rootwright.working.step.Idea;
import rootwright.working.step.Step;

/**
 * Powers climb from x + 1/x = c: with u_k = x^k + 1/x^k, u_(k+1) = c·u_k − u_(k−1). For x − 1/x the
 * signs alternate.
 */
final class ReciprocalPowers {

  /** Highest power that is climbed to. */
  private static final int HIGHEST = 14;

  private final Problem problem;
  private final Formula x;
  private final Rational sum;
  private final int sign;
  private final Map<Integer, Rational> values = new TreeMap<>();
  private final List<Step> steps = new ArrayList<>();

  private ReciprocalPowers(Problem problem) {
    this.problem = problem;
    this.x = Formula.name(problem.roots().get(0));
    Polynomial monic = problem.polynomial().monic();
    this.sum = monic.coefficient(1).negate();
    this.sign = monic.coefficient(0).signum();
    values.put(0, Rational.TWO);
    values.put(1, sum);
  }

  /** The working, if x satisfies x² − c·x ± 1 = 0 and the ask is made of such powers. */
  static Optional<Working> of(Problem problem, Answer answer, TwoChecks checks) {
    Polynomial p = problem.polynomial();
    boolean pair =
        p.degree() == 2 && p.coefficient(0).absolute().equals(p.coefficient(2).absolute());
    if (!pair
        || !(answer instanceof Answer.Exact exact)
        || !(exact.value() instanceof RationalValue value)) {
      return Optional.empty();
    }
    ReciprocalPowers climb = new ReciprocalPowers(problem);
    return climb
        .terms()
        .map(terms -> climb.climbed(terms, value.number()))
        .filter(
            steps ->
                steps.stream()
                    .allMatch(
                        step ->
                            checks
                                .confirm("climbing powers", step.shown(), step.claim())
                                .isPresent()))
        .map(
            steps ->
                Working.of(
                    "climb",
                    "climb from one power to the next",
                    "Multiplying by x + 1/x leads from two neighbouring powers to the next.",
                    steps,
                    answer));
  }

  /** The coefficients c_k with ask = c_0 + Σ c_k·(x^k + (±1)^k/x^k). */
  private Optional<Map<Integer, Rational>> terms() {
    RationalFunction f;
    try {
      f = FormulaExpansion.expand(problem.ask(), Map.of(problem.roots().get(0), 0)).lowestTerms();
    } catch (UnreadableException other) {
      return Optional.empty();
    }
    if (f.denominator().terms().size() != 1) {
      return Optional.empty();
    }
    int shift = f.denominator().degree();
    Rational under = f.denominator().terms().firstEntry().getValue();
    Map<Integer, Rational> laurent = new TreeMap<>();
    for (Map.Entry<Monomial, Rational> term : f.numerator().terms().entrySet()) {
      laurent.put(term.getKey().degree() - shift, term.getValue().over(under));
    }
    Map<Integer, Rational> pairs = new TreeMap<>();
    for (int k : laurent.keySet()) {
      Rational here = laurent.getOrDefault(k, Rational.ZERO);
      Rational there = laurent.getOrDefault(-k, Rational.ZERO);
      Rational turned = sign < 0 && k % 2 != 0 ? there.negate() : there;
      if (!here.equals(turned) || Math.abs(k) > HIGHEST) {
        return Optional.empty();
      }
      pairs.put(Math.abs(k), k < 0 ? turned : here);
    }
    return Optional.of(pairs);
  }

  private List<Step> climbed(Map<Integer, Rational> terms, Rational value) {
    int last = terms.keySet().stream().mapToInt(k -> k).max().orElse(0);
    add("given", 1, Formula.number(sum));
    for (int k = 2; k <= last; k++) {
      Rational before = values.getOrDefault(k - 1, Rational.ZERO);
      Rational two = values.getOrDefault(k - 2, Rational.ZERO);
      Rational next = sum.times(before).minus(two.times(Rational.of(sign)));
      values.put(k, next);
      Combination worked =
          new Combination()
              .plus(Combination.product(List.of(Formula.number(sum), Formula.number(before))))
              .plus(two.times(Rational.of(-sign)));
      add(
          k == 2 ? "square, and take the middle term off" : "times the first, less the one before",
          k,
          worked.formula(),
          Formula.number(next));
    }
    Combination total = new Combination();
    Combination numbers = new Combination();
    terms.forEach(
        (k, factor) -> {
          if (k == 0) {
            total.plus(factor);
            numbers.plus(factor);
          } else {
            total.plus(factor, pair(k));
            numbers.plus(factor, Formula.number(values.getOrDefault(k, Rational.ZERO)));
          }
        });
    if (terms.size() > 1 || !total.formula().equals(pair(last))) {
      steps.add(
          DataLines.line(
              problem.setting(),
              Idea.ARITHMETIC,
              "put together",
              problem.ask(),
              total.formula(),
              numbers.formula(),
              Formula.number(value)));
    }
    return steps;
  }

  private void add(String reason, int k, Formula... sides) {
    List<Formula> all = new ArrayList<>(List.of(pair(k)));
    all.addAll(List.of(sides));
    steps.add(
        DataLines.line(
            problem.setting(),
            k == 1 ? Idea.STATE : Idea.RECURRENCE,
            reason,
            all.toArray(Formula[]::new)));
  }

  /** x^k + 1/x^k, or with a minus. */
  private Formula pair(int k) {
    Formula power = Combination.power(x, k);
    Formula reciprocal = Formula.number(1).over(power);
    return sign < 0 && k % 2 != 0 ? power.minus(reciprocal) : power.plus(reciprocal);
  }
}
