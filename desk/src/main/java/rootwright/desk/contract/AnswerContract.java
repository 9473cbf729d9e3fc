package rootwright.desk.contract;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.LatexWriter;
import rootwright.algebra.notation.PlainWriter;
import rootwright.algebra.notation.PolynomialFormula;
import rootwright.algebra.value.ExactValue;
import rootwright.working.answer.Answer;

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
    Formula formula = answer.formula();
    forms.write(node, formula);
    if (answer instanceof Answer.Exact exact) {
      decimal(node, exact.value());
    } else if (answer instanceof Answer.Values values) {
      alternatives(node, values.values(), formula);
      node.set("values", values(values.values(), forms));
      ObjectNode orbit = node.putObject("orbit");
      forms.write(orbit, PolynomialFormula.of(values.orbit(), "T"));
    } else if (answer instanceof Answer.Enclosed enclosed) {
      node.put("count", enclosed.images());
      ArrayNode values = node.putArray("values");
      enclosed
          .shown()
          .forEach(
              disc ->
                  disc.decimal(DIGITS)
                      .ifPresent(decimal -> values.addObject().put("decimal", decimal)));
    } else if (answer instanceof Answer.Solutions solutions) {
      alternatives(node, solutions.values(), new Formula.Words("none"));
      node.set("values", values(solutions.values(), forms));
    } else if (answer instanceof Answer.Items items) {
      node.put(
          "text",
          items.items().isEmpty()
              ? "none"
              : String.join(" or ", items.items().stream().map(PlainWriter::write).toList()));
      ArrayNode array = node.putArray("values");
      items.items().forEach(item -> forms.write(array.addObject(), item));
    }
    return node;
  }

  private static void alternatives(ObjectNode node, List<ExactValue> values, Formula otherwise) {
    List<Formula> formulas =
        values.isEmpty() ? List.of(otherwise) : values.stream().map(ExactValue::toFormula).toList();
    node.put("text", String.join(" or ", formulas.stream().map(PlainWriter::write).toList()));
    node.put("latex", LatexWriter.writeAlternatives(formulas));
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
