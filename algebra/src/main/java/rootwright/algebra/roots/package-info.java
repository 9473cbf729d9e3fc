/**
 * The algebra of the roots of one polynomial: what can be said exactly about its roots without
 * finding them.
 *
 * <p>Roots are counted with multiplicity throughout. {@link
 * rootwright.algebra.roots.ResidueAlgebra} serves expressions in one root, {@link
 * rootwright.algebra.roots.PowerSums} their power sums, {@link rootwright.algebra.roots.RootTower}
 * and {@link rootwright.algebra.roots.OrbitPolynomial} expressions in several distinct roots.
 */
@NullMarked
package rootwright.algebra.roots;

import org.jspecify.annotations.NullMarked;
