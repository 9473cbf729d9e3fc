/**
 * Floor 1: exact mathematics that knows nothing of problems, students or paper.
 *
 * <p>Numbers, polynomials, symmetric polynomials, the algebra of the roots of one polynomial,
 * certified enclosures of the roots, and the notation in which formulas are read and written.
 * Nothing here reads a file, looks at a clock or answers in floating point.
 */
@NullMarked
package rootwright.algebra;

import org.jspecify.annotations.NullMarked;
