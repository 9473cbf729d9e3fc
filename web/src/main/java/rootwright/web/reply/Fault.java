package rootwright.web.reply;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;

/**
 * A plain message in place of a result.
 *
 * @param status the HTTP status it travels with
 * @param code a stable short name, lower case with hyphens
 * @param text one sentence for a person; never a stack trace
 */
public record Fault(int status, String code, String text) {

  /** As the error object of the contract: {@code {"error": {"code", "text"}}}. */
  public ObjectNode json() {
    ObjectNode reply = JsonNodeFactory.instance.objectNode();
    reply.putObject("error").put("code", code).put("text", text);
    return reply;
  }
}
