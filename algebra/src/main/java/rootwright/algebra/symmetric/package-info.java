/**
 * Symmetric polynomials, kept by partition: one coefficient for each orbit of monomials, never the
 * n!-times larger expansion; and the forms they take in elementary symmetric polynomials e_k, power
 * sums p_k and complete symmetric polynomials h_k.
 *
 * <p>Main declarations: {@link rootwright.algebra.symmetric.Partition}, {@link
 * rootwright.algebra.symmetric.SymmetricPolynomial} (the m-basis), {@link
 * rootwright.algebra.symmetric.ElementaryForm}, {@link rootwright.algebra.symmetric.PowerSumForm},
 * {@link rootwright.algebra.symmetric.ClassroomReduction}, {@link
 * rootwright.algebra.symmetric.NewtonIdentities}, {@link
 * rootwright.algebra.symmetric.Discriminant}.
 *
 * <p>Reference: I. G. Macdonald, Symmetric Functions and Hall Polynomials, chapter I.
 */
@NullMarked
package rootwright.algebra.symmetric;

import org.jspecify.annotations.NullMarked;
