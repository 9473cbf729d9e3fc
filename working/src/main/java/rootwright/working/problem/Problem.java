package rootwright.working.problem;

import java.util.List;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.working.step.Setting;

/**
 * A polynomial with numbers for coefficients, names for its roots, and a formula that is asked for.
 *
 * @param polynomial everything moved to one side and multiplied out; any degree, also constant
 * @param stated the polynomial as it was written, factored form included
 * @param unknown the letter the polynomial is written in
 * @param roots one name for every root, as many as the degree
 * @param ask what is wanted
 * @param reading how doubtful notation was understood, one sentence each
 */
public record Problem(
    Polynomial polynomial,
    Formula stated,
    String unknown,
    List<String> roots,
    Formula ask,
    List<String> reading) {

  public Problem {
    roots = List.copyOf(roots);
    reading = List.copyOf(reading);
  }

  /** The degree of the polynomial. */
  public int degree() {
    return polynomial.degree();
  }

  /** The setting of this problem: its root names, and P for its polynomial. */
  public Setting setting() {
    return Setting.of(polynomial, roots);
  }

  /** The same problem with another ask. */
  public Problem asking(Formula other) {
    return new Problem(polynomial, stated, unknown, roots, other, reading);
  }
}
