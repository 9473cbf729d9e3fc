package rootwright.working.answer;

import java.util.ArrayList;
import java.util.List;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.PolynomialFormula;
import rootwright.algebra.value.ExactValue;

/** An answer as it is written. */
public final class AnswerFormula {

  private AnswerFormula() {}

  /** The formula; several values are joined by "or". */
  public static Formula of(Answer answer) {
    if (answer instanceof Answer.Exact exact) {
      return exact.value().toFormula();
    } else if (answer instanceof Answer.Values values) {
      return values.values().isEmpty()
          ? Formula.equation(PolynomialFormula.of(values.orbit(), "T"), Formula.number(0))
          : alternatives(values.values());
    } else if (answer instanceof Answer.Solutions solutions) {
      return solutions.values().isEmpty()
          ? new Formula.Words("no such value")
          : alternatives(solutions.values());
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
    return new Formula.Words(((Answer.None) answer).why());
  }

  private static Formula alternatives(List<ExactValue> values) {
    if (values.size() == 1) {
      return values.get(0).toFormula();
    }
    List<Formula> items = new ArrayList<>();
    for (ExactValue value : values) {
      if (!items.isEmpty()) {
        items.add(new Formula.Words("or"));
      }
      items.add(value.toFormula());
    }
    return new Formula.Listing(items);
  }
}
