package rootwright.working.values;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import rootwright.algebra.ideal.Ideal;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.FormulaExpansion;
import rootwright.algebra.notation.PolynomialFormula;
import rootwright.algebra.notation.UnicodeWriter;
import rootwright.algebra.notation.UnreadableException;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Monomial;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.symmetric.GirardWaring;
import rootwright.algebra.value.ExactValue;
import rootwright.algebra.value.RationalValue;
import rootwright.working.answer.Answer;
import rootwright.working.check.exact.Valuation;
import rootwright.working.gate.Warning;
import rootwright.working.gate.WarningCode;
import rootwright.working.route.Combination;
import rootwright.working.route.Working;
import rootwright.working.solve.CheckFailedException;
import rootwright.working.solve.SecondOpinion;
import rootwright.working.solve.Solution;
import rootwright.working.solve.TwoChecks;
import rootwright.working.step.Idea;
import rootwright.working.step.NumberDomain;
import rootwright.working.step.Setting;
import rootwright.working.step.Step;

/**
 * Integers with given symmetric values that do not determine them: finitely many by a known
 * product, a known sum of squares, or a known sum of positive numbers.
 */
final class IntegerNumbers {

  /** Most lists of numbers that are looked at. */
  private static final long MOST = 3_000_000;

  /** Up to this sum of squares the numbers are few enough to be looked at one by one. */
  private static final Rational MOST_SQUARES = Rational.of(100_000);

  private final SymmetricData data;
  private final Ideal ideal;
  private final TwoChecks checks;
  private final boolean positive;

  IntegerNumbers(SymmetricData data, Ideal ideal, TwoChecks checks) {
    this.data = data;
    this.ideal = ideal;
    this.checks = checks;
    this.positive = data.domain().equals(Optional.of(NumberDomain.POSITIVE_INTEGER));
  }

  /** Whether the numbers are said to be integers. */
  static boolean concerns(SymmetricData data) {
    return data.domain()
        .filter(d -> d == NumberDomain.INTEGER || d == NumberDomain.POSITIVE_INTEGER)
        .isPresent();
  }

  /** Which numbers are possible, and why no others. */
  private record Reach(List<Long> numbers, String why) {
    Reach {
      numbers = List.copyOf(numbers);
    }
  }

  /** All solutions; empty if nothing bounds the numbers, or there are too many cases. */
  Optional<Solution> of(DataAskText ask) {
    Optional<Reach> reach = reach();
    if (reach.isEmpty()) {
      return Optional.empty();
    }
    long cases = 1;
    for (int k = 0; k < data.count() && cases <= MOST; k++) {
      cases = cases * (reach.get().numbers().size() + k) / (k + 1);
    }
    if (cases > MOST) {
      return Optional.empty();
    }
    List<List<Long>> found = new ArrayList<>();
    collect(reach.get().numbers(), 0, List.of(), found);
    secondOpinion(found);
    return Optional.of(solution(ask, reach.get(), found));
  }

  private Optional<Reach> reach() {
    int n = data.count();
    Optional<Rational> product =
        ideal.constant(MultivariatePolynomial.unknown(n - 1)).filter(p -> !p.isZero());
    Optional<Rational> squares = ideal.constant(GirardWaring.powerSum(2, n).polynomial());
    Optional<Rational> sum = ideal.constant(MultivariatePolynomial.unknown(0));
    if (product.isPresent() && product.get().absolute().compareTo(Rational.of(1_000_000)) <= 0) {
      if (!product.get().isInteger()) {
        return Optional.of(new Reach(List.of(), "whole numbers have a whole product"));
      }
      long size = product.get().numerator().abs().longValueExact();
      List<Long> divisors =
          LongStream.rangeClosed(-size, size)
              .filter(d -> d != 0 && size % d == 0 && (d > 0 || !positive))
              .boxed()
              .toList();
      return Optional.of(
          new Reach(
              divisors,
              "the product is %s, so every number is one of its %d divisors"
                  .formatted(written(product.get()), divisors.size())));
    } else if (squares.isPresent() && squares.get().compareTo(MOST_SQUARES) <= 0) {
      long most =
          squares.get().signum() < 0
              ? -1
              : squares
                  .get()
                  .numerator()
                  .divide(squares.get().denominator())
                  .sqrt()
                  .longValueExact();
      return Optional.of(
          new Reach(
              LongStream.rangeClosed(positive ? 1 : -most, most).boxed().toList(),
              "the sum of the squares is %s, so every number lies between %s and %d"
                  .formatted(written(squares.get()), positive ? "1" : "−" + most, most)));
    } else if (positive && sum.isPresent() && sum.get().compareTo(Rational.of(2_000)) <= 0) {
      long most = sum.get().numerator().divide(sum.get().denominator()).longValueExact();
      return Optional.of(
          new Reach(
              LongStream.rangeClosed(1, most).boxed().toList(),
              "the sum is %s and the numbers are positive".formatted(written(sum.get()))));
    }
    return Optional.empty();
  }

  private void collect(List<Long> numbers, int from, List<Long> chosen, List<List<Long>> found) {
    if (chosen.size() == data.count()) {
      if (fits(chosen)) {
        found.add(chosen);
      }
      return;
    }
    for (int k = from; k < numbers.size(); k++) {
      List<Long> longer = new ArrayList<>(chosen);
      longer.add(numbers.get(k));
      collect(numbers, data.distinct() ? k + 1 : k, longer, found);
    }
  }

  private boolean fits(List<Long> numbers) {
    List<Rational> elementary = elementary(numbers);
    for (GivenValue given : data.givens()) {
      if (!given.equation().at(elementary).isZero() || given.under().at(elementary).isZero()) {
        return false;
      }
    }
    return true;
  }

  private static List<Rational> elementary(List<Long> numbers) {
    BigInteger[] e = new BigInteger[numbers.size() + 1];
    Arrays.fill(e, BigInteger.ZERO);
    e[0] = BigInteger.ONE;
    for (long number : numbers) {
      for (int k = numbers.size(); k >= 1; k--) {
        e[k] = e[k].add(e[k - 1].multiply(BigInteger.valueOf(number)));
      }
    }
    List<Rational> values = new ArrayList<>();
    for (int k = 1; k <= numbers.size(); k++) {
      values.add(Rational.of(e[k]));
    }
    return values;
  }

  /** Small numbers, put into the expressions as they were typed. */
  private void secondOpinion(List<List<Long>> found) {
    long window = data.count() <= 2 ? 40 : data.count() == 3 ? 12 : 4;
    List<Long> small = LongStream.rangeClosed(positive ? 1 : -window, window).boxed().toList();
    List<List<Long>> all = new ArrayList<>();
    every(small, 0, List.of(), all);
    for (List<Long> numbers : all) {
      if (found.contains(numbers) != holds(numbers)) {
        throw new CheckFailedException(
            "the answer",
            new Formula.Words(numbers.toString()),
            "the given values, worked out for these numbers, say otherwise");
      }
    }
  }

  private void every(List<Long> numbers, int from, List<Long> chosen, List<List<Long>> all) {
    if (chosen.size() == data.count()) {
      all.add(chosen);
      return;
    }
    for (int k = from; k < numbers.size(); k++) {
      List<Long> longer = new ArrayList<>(chosen);
      longer.add(numbers.get(k));
      every(numbers, data.distinct() ? k + 1 : k, longer, all);
    }
  }

  private boolean holds(List<Long> numbers) {
    for (GivenValue given : data.givens()) {
      Optional<Rational> value = value(given.shown(), numbers);
      if (value.isEmpty() || !value.get().equals(given.value())) {
        return false;
      }
    }
    return true;
  }

  /** An expression with numbers put in; empty where a denominator is zero. */
  private Optional<Rational> value(Formula shown, List<Long> numbers) {
    Map<Formula, Formula> images = new HashMap<>();
    for (int k = 0; k < numbers.size(); k++) {
      images.put(Formula.name(data.names().get(k)), Formula.number(numbers.get(k)));
    }
    boolean plain =
        !shown.contains(
            part -> part instanceof Formula.Aggregate || part instanceof Formula.Family);
    if (!plain) {
      return valueOfSums(shown, numbers);
    }
    try {
      var value =
          FormulaExpansion.expand(shown.rewrite(part -> images.getOrDefault(part, part)), Map.of());
      return Optional.of(
          value
              .numerator()
              .coefficient(Monomial.ONE)
              .over(value.denominator().coefficient(Monomial.ONE)));
    } catch (UnreadableException pole) {
      return Optional.empty();
    }
  }

  private Optional<Rational> valueOfSums(Formula shown, List<Long> numbers) {
    Polynomial polynomial = Polynomial.withRoots(numbers.stream().map(Rational::of).toList());
    return Valuation.of(shown, data.problem(polynomial, shown).setting())
            instanceof Valuation.Determined determined
        ? Optional.of(determined.value())
        : Optional.empty();
  }

  private Solution solution(DataAskText ask, Reach reach, List<List<Long>> found) {
    List<Step> steps = new ArrayList<>();
    steps.add(
        Step.argument(
            Idea.DIVISORS,
            reach.why(),
            new Formula.Words("each number is one of %d".formatted(reach.numbers().size()))));
    Formula x = Formula.name(data.unknown());
    for (List<Long> numbers : found.subList(0, Math.min(20, found.size()))) {
      List<Formula> factors = new ArrayList<>();
      for (long number : numbers) {
        factors.add(
            number == 0
                ? x
                : number > 0 ? x.minus(Formula.number(number)) : x.plus(Formula.number(-number)));
      }
      Step step =
          Step.equation(
              Setting.ofLetters(List.of(data.unknown())),
              Idea.CASES,
              "the data hold for " + listed(numbers),
              Combination.product(factors),
              PolynomialFormula.of(polynomial(numbers), data.unknown()));
      checks.require(step.shown(), step.claim());
      steps.add(step);
    }
    steps.add(
        Step.argument(
            Idea.CASES,
            "all others are excluded by the given values",
            new Formula.Words(found.size() == 1 ? "1 solution" : found.size() + " solutions")));
    Answer answer = answer(ask, found);
    Working working =
        Working.of(
            "finite-cases",
            "whole numbers leave finitely many cases",
            "A product, or a sum of squares, that is known makes whole numbers finitely many.",
            steps,
            answer);
    List<Warning> warnings =
        found.isEmpty()
            ? List.of(
                new Warning(
                    WarningCode.NO_PARAMETER,
                    "There are no such numbers; “no such value” is the answer."))
            : List.of();
    return Solution.of(
            "integer-numbers",
            ValuesOfNumbers.given(data, ask.shown(), new Formula.Words("")),
            data.inWords(data.domain().orElseThrow(), true) + " " + wanted(ask),
            answer,
            SecondOpinion.by("small numbers put into the given expressions"))
        .withWarnings(warnings)
        .withRoutes(List.of(working));
  }

  private String wanted(DataAskText ask) {
    return ask instanceof DataAskText.ForPolynomial
        ? "Find all monic polynomials whose roots they can be."
        : ask instanceof DataAskText.ForNumbers
            ? "Find all such numbers, whatever their order."
            : "Find all possible values of %s.".formatted(UnicodeWriter.write(ask.shown()));
  }

  private Answer answer(DataAskText ask, List<List<Long>> found) {
    if (ask instanceof DataAskText.ForPolynomial) {
      return new Answer.Items(
          found.stream()
              .map(numbers -> PolynomialFormula.of(polynomial(numbers), data.unknown()))
              .toList());
    } else if (ask instanceof DataAskText.ForNumbers) {
      return new Answer.Items(
          found.stream().<Formula>map(numbers -> new Formula.Words(listed(numbers))).toList());
    }
    List<ExactValue> values = new ArrayList<>();
    found.stream()
        .map(numbers -> value(ask.shown(), numbers))
        .flatMap(Optional::stream)
        .distinct()
        .sorted()
        .forEach(value -> values.add(new RationalValue(value)));
    return new Answer.Solutions(values);
  }

  private static Polynomial polynomial(List<Long> numbers) {
    return Polynomial.withRoots(numbers.stream().map(Rational::of).toList());
  }

  private static String listed(List<Long> numbers) {
    return numbers.stream()
        .map(number -> UnicodeWriter.write(Formula.number(number)))
        .collect(Collectors.joining(", ", "(", ")"));
  }

  private static String written(Rational number) {
    return UnicodeWriter.write(Formula.number(number));
  }
}
