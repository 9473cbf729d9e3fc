package rootwright.algebra.value;

/**
 * A root of a polynomial, exactly.
 *
 * @param value the root
 * @param multiplicity how often it occurs, at least 1
 */
public record ExactRoot(ExactValue value, int multiplicity) {}
