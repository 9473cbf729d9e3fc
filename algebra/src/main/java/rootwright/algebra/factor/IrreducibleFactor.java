package rootwright.algebra.factor;

import rootwright.algebra.polynomial.Polynomial;

/**
 * A factor that does not split further over the rational numbers.
 *
 * @param polynomial irreducible, primitive, with positive lead
 * @param multiplicity how often it divides, at least 1
 */
public record IrreducibleFactor(Polynomial polynomial, int multiplicity) {}
