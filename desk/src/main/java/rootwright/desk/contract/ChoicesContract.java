package rootwright.desk.contract;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import rootwright.composing.option.Choices;
import rootwright.composing.option.Option;
import rootwright.working.solve.Solution;

/**
 * Choices as an object: {@code options} with the {@code slips} that lead to each, the place of the
 * {@code key}, and why there are {@code fewerOptions} than wanted.
 */
public final class ChoicesContract {

  private ChoicesContract() {}

  /** The object. */
  static ObjectNode of(Choices choices, FormulaForms forms) {
    ObjectNode node = JsonNodeFactory.instance.objectNode();
    ArrayNode options = node.putArray("options");
    for (Option option : choices.options()) {
      ObjectNode each = options.addObject();
      forms.write(each, option.value().formula());
      ArrayNode slips = each.putArray("slips");
      option.slips().forEach(slips::add);
    }
    node.put("key", choices.keyIndex());
    choices.fewer().ifPresent(why -> node.put("fewerOptions", why));
    return node;
  }

  /** The best choices for a problem, one object for each number of choices, fewest first. */
  public static ArrayNode ofEveryNumber(Solution solution, FormulaForms forms) {
    ArrayNode all = JsonNodeFactory.instance.arrayNode();
    for (int wanted = Choices.FEWEST; wanted <= Choices.MOST; wanted++) {
      all.add(of(Choices.of(solution, wanted), forms).put("wanted", wanted));
    }
    return all;
  }
}
