package rootwright.desk.contract;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import rootwright.algebra.notation.Refusal;

/** A refusal as an object: {@code {error: {code, text, input, at, expected, mend}}}. */
public final class RefusalContract {

  private RefusalContract() {}

  /** The object. */
  public static ObjectNode of(Refusal refusal) {
    ObjectNode node = JsonNodeFactory.instance.objectNode();
    node.putObject("error")
        .put("code", refusal.code())
        .put("text", refusal.text())
        .put("input", refusal.input())
        .put("at", refusal.at())
        .put("expected", refusal.expected())
        .put("mend", refusal.mend());
    return node;
  }
}
