package rootwright.web.endpoint;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.UUID;

/** The name that a page gives to the work it asks for. */
final class JobName {

  private JobName() {}

  /** The name under {@code job}, or a fresh one if there is none that can be one. */
  static UUID in(JsonNode body) {
    try {
      return UUID.fromString(body.path("job").asText(""));
    } catch (IllegalArgumentException none) {
      return UUID.randomUUID();
    }
  }
}
