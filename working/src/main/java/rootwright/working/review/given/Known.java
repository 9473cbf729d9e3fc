package rootwright.working.review.given;

import rootwright.algebra.polynomial.MultivariatePolynomial;

/**
 * Something that a line may lean on: a polynomial that is zero, or that a wrong line makes zero.
 *
 * @param zero the polynomial in the unknowns
 * @param source how to point to it: "line 3", "the coefficients"
 * @param sound whether it is true
 */
record Known(MultivariatePolynomial zero, String source, boolean sound) {}
