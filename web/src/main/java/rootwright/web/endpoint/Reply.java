package rootwright.web.endpoint;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.javalin.http.Context;
import io.javalin.http.HttpResponseException;
import java.io.IOException;
import java.io.UncheckedIOException;
import rootwright.web.reply.Fault;
import rootwright.web.reply.FaultException;

/** JSON in and out. */
public final class Reply {

  private static final ObjectMapper JSON = new ObjectMapper();

  private Reply() {}

  /** Sends a value. */
  public static void json(Context context, JsonNode value) {
    context.contentType("application/json; charset=utf-8").result(text(value));
  }

  /** Sends any record or list of records. */
  public static void value(Context context, Object value) {
    json(context, JSON.valueToTree(value));
  }

  /** Sends a plain message. */
  public static void fault(Context context, Fault fault) {
    json(context.status(fault.status()), fault.json());
  }

  /**
   * The body of a request as JSON.
   *
   * @throws FaultException if it is no JSON object
   */
  public static JsonNode body(Context context) {
    try {
      JsonNode body = JSON.readTree(context.bodyAsBytes());
      if (!body.isObject()) {
        throw new FaultException(400, "no-object", "The request should be a JSON object.");
      }
      return body;
    } catch (IOException unreadable) {
      throw new FaultException(400, "no-json", "The request is not readable JSON.");
    }
  }

  /** A value as text. */
  public static String text(JsonNode value) {
    try {
      return JSON.writeValueAsString(value);
    } catch (JsonProcessingException impossible) {
      throw new UncheckedIOException(impossible);
    }
  }

  /** What is said of a refusal by the server itself. */
  public static String words(HttpResponseException refusal) {
    return switch (refusal.getStatus()) {
      case 404 -> "There is nothing at this address.";
      case 405 -> "This address does not take such a request.";
      case 413 -> "The text is too long for the desk.";
      default -> "The desk refused this request.";
    };
  }
}
