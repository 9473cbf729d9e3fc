package rootwright.working.values;

import java.util.List;
import java.util.Optional;
import rootwright.algebra.ideal.Ideal;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.UnicodeWriter;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.working.gate.Warning;
import rootwright.working.gate.WarningCode;
import rootwright.working.solve.Solution;
import rootwright.working.step.NumberDomain;

/** Data from which nothing, or not one thing, follows. */
final class Unsolved {

  private Unsolved() {}

  /** No answer, with the reason. */
  static Solution none(SymmetricData data, DataAskText ask, String why, List<Warning> warnings) {
    return Solution.none(
            "value",
            ValuesOfNumbers.given(data, ask.shown(), new Formula.Words("")),
            data.inWords(data.domain().orElse(NumberDomain.COMPLEX), data.domain().isPresent())
                + " "
                + SolvedData.wanted(data, ask),
            why)
        .withWarnings(warnings);
  }

  /** The data contradict one another from the one at this place on. */
  static Solution contradictory(SymmetricData data, DataAskText ask, int place) {
    GivenValue culprit = data.givens().get(place);
    Optional<Rational> follows = follows(data, place);
    String text =
        follows
            .map(
                value ->
                    "The data contradict one another: from what stands before, %s = %s follows, but %s is given."
                        .formatted(
                            UnicodeWriter.write(culprit.shown()),
                            UnicodeWriter.write(Formula.number(value)),
                            UnicodeWriter.write(culprit.relation())))
            .orElse(
                "The data contradict one another: no numbers, not even complex ones, satisfy %s together with what stands before."
                    .formatted(UnicodeWriter.write(culprit.relation())));
    return none(
        data,
        ask,
        "the data contradict one another",
        List.of(new Warning(WarningCode.CONTRADICTORY, text)));
  }

  /** What the values before one say of it. */
  private static Optional<Rational> follows(SymmetricData data, int place) {
    GivenValue culprit = data.givens().get(place);
    List<MultivariatePolynomial> before =
        data.givens().subList(0, place).stream().map(GivenValue::equation).toList();
    return Ideal.of(before, data.count())
        .filter(ideal -> !culprit.isFraction() && !before.isEmpty())
        .flatMap(ideal -> ideal.constant(culprit.over()));
  }
}
