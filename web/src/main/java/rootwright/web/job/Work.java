package rootwright.web.job;

import com.fasterxml.jackson.databind.JsonNode;

/** Something that may take long. */
@FunctionalInterface
public interface Work {

  /**
   * Does it.
   *
   * @param progress where to tell how far it is, and to find out whether it is still wanted
   * @return the result as the page receives it
   * @throws Exception whatever went wrong; it becomes a plain message
   */
  JsonNode run(Progress progress) throws Exception;
}
