package rootwright.algebra.notation;

/**
 * How a text was understood where another reader might have understood it otherwise. It is shown
 * back to the person, so that nothing is guessed in silence.
 *
 * @param code a stable short name for scripts: {@code read-as}
 * @param text one plain sentence for a person
 */
public record Reading(String code, String text) {

  /** The reading {@code read-as}: what stood there and how it was taken. */
  static Reading readAs(String written, String taken) {
    return new Reading("read-as", "“" + written + "” is read as " + taken + ".");
  }
}
