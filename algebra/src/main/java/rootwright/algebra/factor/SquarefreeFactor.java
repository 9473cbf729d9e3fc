package rootwright.algebra.factor;

import rootwright.algebra.polynomial.Polynomial;

/**
 * The product of all factors that occur equally often.
 *
 * @param polynomial primitive with positive lead, squarefree, not constant
 * @param multiplicity how often it divides, at least 1
 */
public record SquarefreeFactor(Polynomial polynomial, int multiplicity) {}
