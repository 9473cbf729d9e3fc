package rootwright.working.ask;

import java.util.Optional;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.polynomial.RationalFunction;
import rootwright.algebra.symmetric.SymmetricPolynomial;
import rootwright.algebra.symmetric.SymmetricQuotient;
import rootwright.working.problem.Problem;
import rootwright.working.problem.RootFunction;

/**
 * The ask of a problem, seen from every side that a route or a slip may start from.
 *
 * <p>Several views may be present at once: Σr² is a sum over one root at a time and a symmetric
 * polynomial; 1/(r−3) + 1/(s−3) + 1/(t−3), typed out, is seen as a sum over the roots as well.
 *
 * @param problem what was asked
 * @param singleRoot f, if the ask is f(r) for one named root r
 * @param sumOverRoots f, if the ask is Σ f(r) over all roots
 * @param productOverRoots f, if the ask is Π f(r) over all roots
 * @param symmetric the ask as a symmetric polynomial of the roots
 * @param quotient the ask as a quotient of symmetric polynomials, also when {@code symmetric}
 * @param expression the ask written out in the roots, the k-th root being unknown k; absent when it
 *     would be too long
 * @param value the value, if the ask has a single rational one; by the exact normal form
 */
public record Asked(
    Problem problem,
    Optional<RootFunction> singleRoot,
    Optional<RootFunction> sumOverRoots,
    Optional<RootFunction> productOverRoots,
    Optional<SymmetricPolynomial> symmetric,
    Optional<SymmetricQuotient> quotient,
    Optional<RationalFunction> expression,
    Optional<Rational> value) {

  /** The formula that is asked for. */
  public Formula formula() {
    return problem.ask();
  }

  /** Whether the ask has a single rational value, whatever that is. */
  public boolean hasSingleValue() {
    return value.isPresent();
  }

  /** k, if the ask is the power sum S_k with k from −∞ to ∞, not 0. */
  public Optional<Integer> powerSumIndex() {
    return sumOverRoots.flatMap(Asked::powerIndex);
  }

  /** The name of the root, if the ask is f(r) for one named root r. */
  public Optional<String> singleRootName() {
    return singleRoot.flatMap(
        f ->
            problem.roots().stream()
                .filter(
                    root ->
                        formula()
                            .contains(
                                part ->
                                    part instanceof Formula.Name name
                                        && name.spelling().equals(root)))
                .findFirst());
  }

  private static Optional<Integer> powerIndex(RootFunction f) {
    boolean upright = f.isPolynomial();
    var power = upright ? f.numerator() : f.denominator();
    boolean bare =
        power.degree() > 0
            && power.equals(Polynomial.monomial(Rational.ONE, power.degree()))
            && (upright || f.numerator().equals(Polynomial.ONE));
    return bare ? Optional.of(upright ? power.degree() : -power.degree()) : Optional.empty();
  }
}
