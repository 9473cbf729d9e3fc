package rootwright.web.job;

import com.fasterxml.jackson.databind.JsonNode;

/**
 * Something that happened to a job.
 *
 * @param name {@code progress}, {@code found}, {@code done} or {@code failed}; the last two end it
 * @param data what goes with it
 */
public record Event(String name, JsonNode data) {

  /** Whether nothing can follow. */
  public boolean isLast() {
    return name.equals("done") || name.equals("failed");
  }
}
