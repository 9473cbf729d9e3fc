package rootwright.working.review;

import rootwright.algebra.notation.Formula;

/**
 * Something a line may lean on: two formulas that are equal, or that a wrong line says are equal.
 *
 * @param left one side
 * @param right the other
 * @param source how to point to it: "line 3", "the coefficients"
 * @param sound whether it is true
 */
record Fact(Formula left, Formula right, String source, boolean sound) {}
