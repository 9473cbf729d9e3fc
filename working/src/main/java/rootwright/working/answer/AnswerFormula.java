package rootwright.working.answer;

import java.util.List;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.PolynomialFormula;
import rootwright.algebra.value.ExactValue;

/** An answer as it is written. */
public final class AnswerFormula {

  private AnswerFormula() {}

  /** The formula; several values are listed. */
  public static Formula of(Answer answer) {
    if (answer instanceof Answer.Exact exact) {
      return exact.value().toFormula();
    } else if (answer instanceof Answer.Values values) {
      return values.values().isEmpty()
          ? Formula.equation(PolynomialFormula.of(values.orbit(), "T"), Formula.number(0))
          : listed(values.values());
    } else if (answer instanceof Answer.Solutions solutions) {
      return solutions.values().isEmpty()
          ? new Formula.Words("no such value")
          : listed(solutions.values());
    } else if (answer instanceof Answer.Items items) {
      return items.items().isEmpty()
          ? new Formula.Words("no such value")
          : items.items().size() == 1 ? items.items().get(0) : new Formula.Listing(items.items());
    } else if (answer instanceof Answer.PolynomialIn in) {
      return PolynomialFormula.of(in.polynomial(), in.letter());
    } else if (answer instanceof Answer.FunctionOf function) {
      return function.formula();
    } else if (answer instanceof Answer.Count count) {
      return Formula.number(count.number());
    } else if (answer instanceof Answer.Truth truth) {
      return new Formula.Words(truth.holds() ? "true" : "false");
    } else if (answer instanceof Answer.Residue residue) {
      return Formula.number(residue.value());
    } else if (answer instanceof Answer.Interval interval) {
      return interval.condition();
    }
    if (answer instanceof Answer.Enclosed enclosed) {
      return new Formula.Words("one of %s values".formatted(enclosed.images()));
    }
    return new Formula.Words(
        answer instanceof Answer.Refused refused ? refused.why() : ((Answer.None) answer).why());
  }

  /**
   * The single formulas an answer is made of, to be joined by "or": one, or each possible value.
   */
  public static List<Formula> alternatives(Answer answer) {
    if (answer instanceof Answer.Values values && !values.values().isEmpty()) {
      return values.values().stream().map(ExactValue::toFormula).toList();
    } else if (answer instanceof Answer.Solutions solutions && !solutions.values().isEmpty()) {
      return solutions.values().stream().map(ExactValue::toFormula).toList();
    } else if (answer instanceof Answer.Items items && !items.items().isEmpty()) {
      return items.items();
    }
    return List.of(of(answer));
  }

  private static Formula listed(List<ExactValue> values) {
    return values.size() == 1
        ? values.get(0).toFormula()
        : new Formula.Listing(values.stream().map(ExactValue::toFormula).toList());
  }
}
