package rootwright.working.letters;

import java.math.BigInteger;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Monomial;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.algebra.roots.PowerSum;
import rootwright.algebra.roots.PowerSums;
import rootwright.algebra.roots.Resultant;
import rootwright.algebra.value.ExactValue;
import rootwright.working.answer.Answer;
import rootwright.working.slip.SlipOn;
import rootwright.working.step.Idea;

/** The wrong turnings with two polynomials. */
final class PairSlips {

  static final List<SlipOn<PairAsked>> LETTER =
      List.of(
          new Turned<>(
              "identical-case-kept",
              "Where all roots are shared, not exactly one is: the case in which both are the same polynomial falls out.",
              Idea.DOMAIN,
              15,
              asked -> {
                List<ExactValue> kept =
                    asked.candidates().stream()
                        .filter(
                            candidate ->
                                candidate.kept()
                                    || candidate
                                        .objection()
                                        .filter(
                                            objection ->
                                                objection.sort() == Candidate.Objection.Sort.ROOTS)
                                        .isPresent())
                        .map(Candidate::value)
                        .toList();
                return kept.size() == asked.kept().size()
                    ? List.of()
                    : List.of(new Answer.Solutions(kept));
              }),
          new Turned<>(
              "second-solution-lost",
              "The first value that works is not the answer: solve the equation to the end.",
              Idea.CASES,
              15,
              asked ->
                  asked.kept().size() < 2
                      ? List.of()
                      : asked.kept().stream()
                          .map(value -> new Answer.Solutions(List.of(value)))
                          .toList()));

  static final List<SlipOn<PairsAsked>> PAIRS =
      List.of(
          new Turned<>(
              "product-undivided",
              "A value of the polynomial holds its lead as a factor: divide it out, once for each root of the other.",
              Idea.EVALUATE,
              15,
              asked ->
                  difference(asked)
                      ? List.of(Answer.exact(Resultant.of(asked.first(), asked.second())))
                      : List.of()),
          new Turned<>(
              "product-sign",
              "Every factor changes its sign when r − s becomes s − r; count the pairs.",
              Idea.EVALUATE,
              10,
              asked ->
                  difference(asked) ? List.of(Answer.exact(asked.value().negate())) : List.of()),
          new Turned<>(
              "constant-once",
              "A term with one root in it is met once for every root of the other polynomial.",
              Idea.SUM_OVER_ROOTS,
              15,
              asked ->
                  metOnce(asked).map(value -> List.of(Answer.exact(value))).orElse(List.of())));

  private PairSlips() {}

  /** Whether the ask is the product of r − s. */
  private static boolean difference(PairsAsked asked) {
    return asked.aggregate().operation() == Formula.Aggregate.Operation.PRODUCT
        && asked
            .aggregate()
            .body()
            .equals(Formula.name(asked.firstName()).minus(Formula.name(asked.secondName())));
  }

  /** Σ c·S_i·S_j with S_0 taken for 1. */
  private static Optional<Rational> metOnce(PairsAsked asked) {
    Optional<MultivariatePolynomial> body = PairsRoutes.body(asked);
    if (asked.aggregate().operation() != Formula.Aggregate.Operation.SUM || body.isEmpty()) {
      return Optional.empty();
    }
    Rational sum = Rational.ZERO;
    for (Map.Entry<Monomial, Rational> term : body.get().terms().entrySet()) {
      Optional<Rational> left = power(PowerSums.of(asked.first()), term.getKey().exponent(0));
      Optional<Rational> right = power(PowerSums.of(asked.second()), term.getKey().exponent(1));
      if (left.isEmpty() || right.isEmpty()) {
        return Optional.empty();
      }
      sum = sum.plus(term.getValue().times(left.get()).times(right.get()));
    }
    return Optional.of(sum);
  }

  private static Optional<Rational> power(PowerSums sums, int k) {
    if (k == 0) {
      return Optional.of(Rational.ONE);
    }
    return sums.exact(BigInteger.valueOf(k)) instanceof PowerSum.Exact exact
        ? Optional.of(exact.value())
        : Optional.empty();
  }

  /** A slip given by what it leads to. */
  record Turned<Q>(
      String name, String text, Idea spot, int weight, Function<Q, List<? extends Answer>> way)
      implements SlipOn<Q> {
    @Override
    public List<? extends Answer> answers(Q asked) {
      return way.apply(asked);
    }
  }
}
