package rootwright.algebra.factor;

import rootwright.algebra.number.Rational;

/**
 * A rational root of a polynomial.
 *
 * @param value the root
 * @param multiplicity how often it occurs, at least 1
 */
public record RationalRoot(Rational value, int multiplicity) {}
