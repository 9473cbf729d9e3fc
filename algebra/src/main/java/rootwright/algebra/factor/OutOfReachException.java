package rootwright.algebra.factor;

/**
 * Thrown where a polynomial splits into so many factors modulo every prime tried that putting them
 * together would take too long.
 */
public final class OutOfReachException extends RuntimeException {

  private static final long serialVersionUID = 1L;

  OutOfReachException(int degree, int parts) {
    super(
        "a polynomial of degree %d that splits into %d or more factors modulo every prime tried is not factored"
            .formatted(degree, parts));
  }
}
