package rootwright.algebra.notation;

import java.util.List;
import rootwright.algebra.polynomial.Polynomial;

/**
 * A polynomial as it was typed and as it is.
 *
 * @param polynomial multiplied out, with everything on one side; not scaled
 * @param stated what was typed
 * @param unknown the spelling of its unknown
 * @param readings what might have been understood otherwise
 */
public record StatedPolynomial(
    Polynomial polynomial, Formula stated, String unknown, List<Reading> readings) {
  public StatedPolynomial {
    readings = List.copyOf(readings);
  }
}
