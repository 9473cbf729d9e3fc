package rootwright.working.solve;

import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.UnicodeWriter;

/**
 * Thrown when a check refutes something of ours: a bug, which stops the output and names the place.
 */
public final class CheckFailedException extends RuntimeException {

  private static final long serialVersionUID = 1L;

  /**
   * @param place the route and line, or "the answer"
   * @param line what was claimed
   * @param finding what the check found
   */
  public CheckFailedException(String place, Formula line, String finding) {
    super("check failed at %s, “%s”: %s".formatted(place, UnicodeWriter.write(line), finding));
  }
}
