package rootwright.algebra.notation;

import java.util.List;
import rootwright.algebra.polynomial.MultivariatePolynomial;

/**
 * A polynomial whose coefficients may hold letters.
 *
 * @param polynomial multiplied out, with everything on one side; its unknowns are numbered by
 *     {@code names}
 * @param names the unknown first, then the letters of the coefficients in the order typed
 * @param stated what was typed
 * @param readings what might have been understood otherwise
 */
public record StatedWithLetters(
    MultivariatePolynomial polynomial, List<String> names, Formula stated, List<Reading> readings) {
  public StatedWithLetters {
    names = List.copyOf(names);
    readings = List.copyOf(readings);
  }

  /** The spelling of the unknown. */
  public String unknown() {
    return names.get(0);
  }

  /** The letters of the coefficients; empty if all are numbers. */
  public List<String> letters() {
    return names.subList(1, names.size());
  }
}
