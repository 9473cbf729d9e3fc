package rootwright.web.job;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;

/** How work in progress speaks to whoever waits for it. */
public interface Progress {

  /**
   * Tells how far the work is.
   *
   * @param done how much is done
   * @param total how much there is, or 0 if nobody can say
   * @param text what is being done, a few words
   */
  default void at(long done, long total, String text) {
    at(done, total, text, JsonNodeFactory.instance.objectNode());
  }

  /** Tells how far the work is, with details for whoever wants more than a few words. */
  void at(long done, long total, String text, ObjectNode details);

  /** Hands over one finding before the work is done. */
  void found(JsonNode finding);

  /** Whether the work should end early; what was found so far may still be returned. */
  boolean stopped();
}
