package rootwright.desk.contract;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.PlainWriter;
import rootwright.algebra.notation.PolynomialFormula;
import rootwright.algebra.value.ExactValue;
import rootwright.working.answer.Answer;
import rootwright.working.answer.AnswerFormula;

/** An answer as an object: {@code kind}, {@code text}, {@code decimal}, {@code latex}, … */
final class AnswerContract {

  /** Significant digits of every decimal. */
  private static final int DIGITS = 10;

  private AnswerContract() {}

  static ObjectNode of(Answer answer, FormulaForms forms) {
    ObjectNode node = JsonNodeFactory.instance.objectNode();
    node.put("kind", answer.kind());
    if (answer instanceof Answer.None none) {
      node.put("text", none.why());
      return node;
    }
    Formula formula = AnswerFormula.of(answer);
    forms.write(node, formula);
    if (answer instanceof Answer.Exact exact) {
      decimal(node, exact.value());
    } else if (answer instanceof Answer.Values values) {
      node.put("text", joined(values.values(), formula));
      node.set("values", values(values.values(), forms));
      ObjectNode orbit = node.putObject("orbit");
      forms.write(orbit, PolynomialFormula.of(values.orbit(), "T"));
    } else if (answer instanceof Answer.Solutions solutions) {
      node.put("text", solutions.values().isEmpty() ? "none" : joined(solutions.values(), formula));
      node.set("values", values(solutions.values(), forms));
    }
    return node;
  }

  private static String joined(List<ExactValue> values, Formula otherwise) {
    return values.isEmpty()
        ? PlainWriter.write(otherwise)
        : String.join(" or ", values.stream().map(v -> PlainWriter.write(v.toFormula())).toList());
  }

  private static ArrayNode values(List<ExactValue> values, FormulaForms forms) {
    ArrayNode array = JsonNodeFactory.instance.arrayNode();
    for (ExactValue value : values) {
      ObjectNode node = array.addObject();
      forms.write(node, value.toFormula());
      decimal(node, value);
      if (value.minimalPolynomial().degree() > 2) {
        node.put(
            "polynomial", PlainWriter.write(PolynomialFormula.of(value.minimalPolynomial(), "x")));
      }
    }
    return array;
  }

  private static void decimal(ObjectNode node, ExactValue value) {
    value.decimal(DIGITS).ifPresent(decimal -> node.put("decimal", decimal));
  }
}
