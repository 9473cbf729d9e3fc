package rootwright.working.values;

import java.util.List;
import java.util.Optional;
import rootwright.algebra.ideal.Ideal;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.Refusal;
import rootwright.algebra.notation.UnicodeWriter;
import rootwright.algebra.notation.UnreadableException;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Monomial;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.algebra.symmetric.GirardWaring;
import rootwright.algebra.symmetric.SymmetricQuotient;
import rootwright.algebra.value.ExactValue;
import rootwright.algebra.value.ExactValues;
import rootwright.algebra.value.QuadraticSurd;
import rootwright.algebra.value.RationalValue;
import rootwright.working.answer.Answer;
import rootwright.working.gate.Warning;
import rootwright.working.gate.WarningCode;
import rootwright.working.route.ClassProfile;
import rootwright.working.route.Working;
import rootwright.working.solve.Given;
import rootwright.working.solve.SecondOpinion;
import rootwright.working.solve.Solution;
import rootwright.working.solve.TwoChecks;
import rootwright.working.step.Idea;
import rootwright.working.step.NumberDomain;
import rootwright.working.step.Step;
import rootwright.working.subject.Inquiry;
import rootwright.working.subject.Subject;

/**
 * The greatest and the least value of an expression in real or positive numbers with given values.
 */
public final class BoundsOnNumbers implements Subject {

  private final TwoChecks checks = new TwoChecks();

  @Override
  public boolean recognises(Inquiry inquiry) {
    return inquiry.polynomial().isEmpty()
        && BoundAsk.isBound(inquiry.ask())
        && inquiry.conditions().stream().anyMatch(condition -> condition.contains("="));
  }

  @Override
  public Given read(Inquiry inquiry) throws UnreadableException {
    SymmetricData data = DataReader.read(inquiry);
    return given(data, BoundAsk.read(inquiry, data));
  }

  @Override
  public Solution work(Inquiry inquiry, ClassProfile profile) throws UnreadableException {
    SymmetricData data = DataReader.read(inquiry);
    BoundAsk ask = BoundAsk.read(inquiry, data);
    boolean positive = data.domain().filter(d -> d == NumberDomain.POSITIVE).isPresent();
    boolean real = positive || data.domain().filter(d -> d == NumberDomain.REAL).isPresent();
    if (!real) {
      throw refused(
          inquiry,
          "domain-open",
          "A bound needs numbers that can be compared: say “real” or “positive”.",
          "such as “, x, y, z real” behind the conditions");
    }
    Ideal ideal =
        Ideal.of(Elimination.equations(data), data.count() + 1)
            .orElseThrow(() -> new IllegalStateException("no ideal of short data"));
    Optional<Rational> sum = ideal.constant(MultivariatePolynomial.unknown(0));
    Optional<Rational> squares =
        ideal.constant(GirardWaring.powerSum(2, data.count()).polynomial());
    if (ask.number().isPresent() && data.count() > 1) {
      if (sum.isEmpty() || squares.isEmpty()) {
        throw tooHard(
            inquiry, "the sum and the sum of the squares of the numbers are not both known");
      }
      OneOfMany one = new OneOfMany(data, ask.target(), sum.get(), squares.get());
      return solution(
          data,
          ask,
          one.bound().map(bound -> positive ? positiveOnly(bound, one) : bound),
          squareRoot(squares.get()),
          profile);
    }
    return symmetric(inquiry, data, ask, ideal, positive, profile);
  }

  /** An end that takes numbers which are not positive is no end for positive numbers. */
  private static Bound positiveOnly(Bound bound, OneOfMany one) {
    return new Bound(
        bound.low().filter(one::positiveAt),
        bound.high().filter(one::positiveAt),
        bound.route(),
        bound.title(),
        bound.teaches(),
        bound.steps(),
        bound.second());
  }

  private Solution symmetric(
      Inquiry inquiry,
      SymmetricData data,
      BoundAsk ask,
      Ideal ideal,
      boolean positive,
      ClassProfile profile)
      throws UnreadableException {
    Optional<MultivariatePolynomial> target =
        DataReader.symmetric(ask.target(), data.names())
            .filter(q -> q.denominator().toElementary().polynomial().isConstant())
            .map(SymmetricQuotient::numerator)
            .map(over -> over.toElementary().polynomial());
    EqualNumbers equal = new EqualNumbers(data, ask.target());
    if (target.isEmpty() && positive && isSumOfReciprocals(ask, data)) {
      Optional<Rational> total = ideal.constant(MultivariatePolynomial.unknown(0));
      if (total.isPresent()) {
        return solution(data, ask, equal.reciprocals(total.get()), Optional.empty(), profile);
      }
    }
    if (target.isEmpty()) {
      throw tooHard(inquiry, "the expression is no symmetric polynomial in the numbers");
    }
    Optional<Rational> one = ideal.constant(MultivariatePolynomial.unknown(0));
    Optional<Rational> two =
        data.count() < 2 ? Optional.empty() : ideal.constant(MultivariatePolynomial.unknown(1));
    if (data.count() == 3 && one.isPresent() && two.isPresent()) {
      Optional<Bound> bound =
          new ThirdOfCubic(data.unknown(), one.get(), two.get())
              .bound()
              .map(found -> positive ? aboveZero(found) : found)
              .flatMap(found -> linear(found, target.get(), one.get(), two.get()));
      return solution(data, ask, bound, Optional.empty(), profile);
    }
    if (one.isPresent() && two.isEmpty()) {
      Optional<Bound> bound = equal.fromSum(target.get(), one.get(), positive);
      if (bound.isPresent()) {
        return solution(data, ask, bound, Optional.empty(), profile);
      }
    }
    Optional<Rational> squares =
        ideal.constant(GirardWaring.powerSum(2, data.count()).polynomial());
    if (one.isEmpty()
        && squares.isPresent()
        && target.get().equals(MultivariatePolynomial.unknown(0))) {
      Optional<Bound> bound =
          equal.fromSquares(squares.get()).map(found -> positive ? aboveZero(found) : found);
      if (bound.isPresent()) {
        return solution(data, ask, bound, Optional.empty(), profile);
      }
    }
    for (int j = 1; j <= data.count() && positive; j++) {
      if (target.get().equals(MultivariatePolynomial.unknown(j - 1))) {
        for (int i = 1; i <= data.count(); i++) {
          Optional<Rational> known = ideal.constant(MultivariatePolynomial.unknown(i - 1));
          if (i != j && known.isPresent()) {
            Optional<Bound> bound = new MeansOfProducts(data, i, known.get(), j).bound();
            if (bound.isPresent()) {
              return solution(data, ask, bound, Optional.empty(), profile);
            }
          }
        }
      }
    }
    throw tooHard(inquiry, "none of the inequalities that are known here fits these data");
  }

  /** Whether the target is 1/x + 1/y + …, that is e_(n−1)/e_n. */
  private static boolean isSumOfReciprocals(BoundAsk ask, SymmetricData data) {
    int n = data.count();
    return n > 1
        && DataReader.symmetric(ask.target(), data.names())
            .filter(
                q ->
                    q.numerator()
                            .toElementary()
                            .polynomial()
                            .equals(MultivariatePolynomial.unknown(n - 2))
                        && q.denominator()
                            .toElementary()
                            .polynomial()
                            .equals(MultivariatePolynomial.unknown(n - 1)))
            .isPresent();
  }

  /** For positive numbers the product is positive as well. */
  private static Bound aboveZero(Bound bound) {
    ExactValue zero = new RationalValue(Rational.ZERO);
    return new Bound(
        bound.low().filter(low -> ExactValues.compareReal(low, zero) > 0),
        bound.high().filter(high -> ExactValues.compareReal(high, zero) > 0),
        bound.route(),
        bound.title(),
        bound.teaches(),
        bound.steps(),
        bound.second());
  }

  /** The bound of a·e_3 + b from that of e_3; empty if the expression is of another form. */
  private static Optional<Bound> linear(
      Bound bound, MultivariatePolynomial target, Rational one, Rational two) {
    MultivariatePolynomial inThird =
        target.substitute(
            List.of(
                MultivariatePolynomial.constant(one),
                MultivariatePolynomial.constant(two),
                MultivariatePolynomial.unknown(0)));
    if (inThird.degree() != 1) {
      return Optional.empty();
    }
    Rational factor = inThird.coefficient(Monomial.of(1));
    Rational constant = inThird.coefficient(Monomial.ONE);
    Optional<ExactValue> low = bound.low().map(v -> image(v, factor, constant));
    Optional<ExactValue> high = bound.high().map(v -> image(v, factor, constant));
    return Optional.of(
        new Bound(
            factor.signum() > 0 ? low : high,
            factor.signum() > 0 ? high : low,
            bound.route(),
            bound.title(),
            bound.teaches(),
            bound.steps(),
            bound.second()));
  }

  private static ExactValue image(ExactValue value, Rational factor, Rational constant) {
    return value instanceof QuadraticSurd surd
        ? ((QuadraticSurd) surd.times(factor)).plus(constant)
        : new RationalValue(((RationalValue) value).number().times(factor).plus(constant));
  }

  private Solution solution(
      SymmetricData data,
      BoundAsk ask,
      Optional<Bound> bound,
      Optional<ExactValue> slip,
      ClassProfile profile) {
    if (bound.isEmpty()) {
      return none(
          data,
          ask,
          "no real numbers have these values",
          new Warning(WarningCode.NOT_REAL, "No real numbers have these values."));
    }
    Optional<Answer> answer = answer(ask, bound.get());
    if (answer.isEmpty()) {
      return none(
          data,
          ask,
          "the value is not attained, or not bounded by the inequality that is known here",
          new Warning(
              WarningCode.NO_PARAMETER,
              "An equality case must exist: here it would take numbers that are not allowed."));
    }
    for (Step step : bound.get().steps()) {
      if (!step.isArgument()) {
        checks.require(step.shown(), step.claim());
      }
    }
    Working working =
        Working.of(
            bound.get().route(),
            bound.get().title(),
            bound.get().teaches(),
            bound.get().steps(),
            answer.get());
    List<Solution.WrongTurning> slips =
        slip.filter(wrong -> ask.side() == BoundAsk.Side.GREATEST)
            .map(Answer.Exact::new)
            .filter(wrong -> !wrong.equals(answer.get()))
            .map(
                wrong ->
                    List.of(
                        new Solution.WrongTurning(
                            "sum-forgotten",
                            "x² ≤ Q alone is true, but with the sum given it is not attained.",
                            wrong,
                            Idea.INEQUALITY,
                            10)))
            .orElse(List.of());
    return Solution.of(
            "bound",
            given(data, ask),
            statement(data, ask),
            answer.get(),
            SecondOpinion.by(bound.get().second()))
        .withRoutes(profile.has(working.route()) ? List.of(working) : List.of())
        .withSlips(slips);
  }

  private static Optional<Answer> answer(BoundAsk ask, Bound bound) {
    return switch (ask.side()) {
      case GREATEST -> bound.high().map(Answer.Exact::new);
      case LEAST -> bound.low().map(Answer.Exact::new);
      case BOTH ->
          bound
              .low()
              .flatMap(
                  low ->
                      bound
                          .high()
                          .map(
                              high ->
                                  new Answer.Interval(
                                      new Formula.Relation(
                                          List.of(low.toFormula(), ask.target(), high.toFormula()),
                                          List.of(
                                              Formula.Comparison.AT_MOST,
                                              Formula.Comparison.AT_MOST)))));
    };
  }

  private static Optional<ExactValue> squareRoot(Rational squares) {
    return squares.signum() < 0
        ? Optional.empty()
        : Optional.of(QuadraticSurd.of(Rational.ZERO, Rational.ONE, squares));
  }

  private static Solution none(SymmetricData data, BoundAsk ask, String why, Warning warning) {
    return Solution.none("bound", given(data, ask), statement(data, ask), why)
        .withWarnings(List.of(warning));
  }

  private static String statement(SymmetricData data, BoundAsk ask) {
    return "%s Find %s %s."
        .formatted(
            data.inWords(data.domain().orElse(NumberDomain.REAL), true),
            ask.inWords(),
            UnicodeWriter.write(ask.target()));
  }

  private static Given given(SymmetricData data, BoundAsk ask) {
    return ValuesOfNumbers.given(data, ask.target(), new Formula.Words(""));
  }

  private static UnreadableException tooHard(Inquiry inquiry, String why) {
    return refused(
        inquiry,
        "too-hard",
        "No bound is found: %s.".formatted(why),
        "one number with the sum and the squares, three numbers with e_1 and e_2, or an e_k of positive numbers");
  }

  private static UnreadableException refused(
      Inquiry inquiry, String code, String sentence, String expected) {
    return new UnreadableException(
        new Refusal(code, sentence, inquiry.statement().find(), 0, expected, ""));
  }
}
