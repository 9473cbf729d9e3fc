package rootwright.working.values;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.PolynomialFormula;
import rootwright.algebra.notation.UnicodeWriter;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.value.ExactValue;
import rootwright.algebra.value.RationalValue;
import rootwright.working.answer.Answer;
import rootwright.working.check.exact.Valuation;
import rootwright.working.gate.Warning;
import rootwright.working.gate.WarningCode;
import rootwright.working.problem.Problem;
import rootwright.working.route.NamedForm;
import rootwright.working.route.Working;
import rootwright.working.solve.SecondOpinion;
import rootwright.working.solve.Solution;
import rootwright.working.solve.TwoChecks;
import rootwright.working.step.Claim;
import rootwright.working.step.Idea;
import rootwright.working.step.NumberDomain;
import rootwright.working.step.Step;

/** Data that leave finitely many possibilities for the elementary symmetric polynomials. */
final class SeveralCases {

  private final TwoChecks checks;

  SeveralCases(TwoChecks checks) {
    this.checks = checks;
  }

  /** The values of an expression in all the cases. */
  Solution of(SymmetricData data, DataAskText ask, List<List<Rational>> cases) {
    String listed =
        cases.stream()
            .map(e -> UnicodeWriter.write(PolynomialFormula.of(data.polynomial(e), data.unknown())))
            .collect(Collectors.joining(" or "));
    Warning warning =
        new Warning(
            WarningCode.SEVERAL_PARAMETERS,
            "The data leave %d cases: the numbers are the roots of %s."
                .formatted(cases.size(), listed));
    if (!(ask instanceof DataAskText.ForExpression expression)) {
      return Unsolved.none(
          data, ask, "the data leave several cases: the roots of " + listed, List.of(warning));
    }
    List<Rational> values = new ArrayList<>();
    List<Step> steps = new ArrayList<>();
    Optional<SecondOpinion> second = Optional.empty();
    for (List<Rational> elementary : cases) {
      Polynomial polynomial = data.polynomial(elementary);
      Problem problem = data.problem(polynomial, expression.formula());
      if (!(Valuation.of(problem.ask(), problem.setting())
          instanceof Valuation.Determined determined)) {
        return Unsolved.none(
            data,
            ask,
            "the data leave %d cases, and in one of them the ask has no single value"
                .formatted(cases.size()),
            List.of(warning));
      }
      for (GivenValue given : data.givens()) {
        checks.require(
            given.relation(),
            Claim.equal(problem.setting(), given.shown(), Formula.number(given.value())));
      }
      Claim claim =
          Claim.equal(problem.setting(), problem.ask(), Formula.number(determined.value()));
      second = Optional.of(checks.require(problem.ask(), claim));
      values.add(determined.value());
      steps.addAll(lines(data, problem, elementary, determined.value()));
    }
    List<Rational> distinct = values.stream().distinct().sorted().toList();
    boolean one = distinct.size() == 1;
    List<ExactValue> exact = new ArrayList<>();
    distinct.forEach(value -> exact.add(new RationalValue(value)));
    Answer answer =
        one
            ? Answer.exact(distinct.get(0))
            : new Answer.Values(exact, Polynomial.withRoots(distinct).primitive());
    Working working =
        Working.of(
            "cases",
            "case by case",
            "Equations of higher degree between symmetric values may leave several cases.",
            steps,
            answer);
    return Solution.of(
            "value",
            ValuesOfNumbers.given(data, ask.shown(), new Formula.Words("")),
            data.inWords(data.domain().orElse(NumberDomain.COMPLEX), true)
                + (one
                    ? " Find %s.".formatted(UnicodeWriter.write(ask.shown()))
                    : " Find all possible values of %s."
                        .formatted(UnicodeWriter.write(ask.shown()))),
            answer,
            second.orElseThrow())
        .withWarnings(List.of(warning))
        .withRoutes(List.of(working));
  }

  private static List<Step> lines(
      SymmetricData data, Problem problem, List<Rational> elementary, Rational value) {
    List<Step> steps = new ArrayList<>();
    steps.add(
        Step.argument(
            Idea.CASES,
            "a case that the data allow",
            new Formula.Listing(
                IntStream.rangeClosed(1, data.count())
                    .mapToObj(
                        k ->
                            Formula.equation(
                                ElementaryNames.letter(k), Formula.number(elementary.get(k - 1))))
                    .toList())));
    for (GivenValue given : data.givens()) {
      steps.add(
          Step.equation(
              problem.setting(),
              Idea.BUILD,
              "the data hold in this case",
              given.shown(),
              given.written(NamedForm::elementary),
              Formula.number(given.value())));
    }
    steps.add(
        Step.equation(
            problem.setting(),
            Idea.EVALUATE,
            "and the ask is",
            problem.ask(),
            Formula.number(value)));
    return steps;
  }
}
