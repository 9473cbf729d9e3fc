package rootwright.working.check.exact;

import java.math.BigInteger;
import java.util.List;
import java.util.Optional;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Monomial;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.polynomial.RationalFunction;
import rootwright.algebra.roots.OrbitPolynomial;
import rootwright.algebra.roots.RootTower;
import rootwright.algebra.symmetric.SymmetricPolynomial;
import rootwright.algebra.symmetric.SymmetricRecognition;

/**
 * Whether a polynomial in the roots is zero for every naming of the roots, decided by its normal
 * form: modulo P for one root, by symmetric reduction where it is symmetric, else modulo the Cauchy
 * modules.
 */
final class NormalForm {

  /** Largest dimension of the algebra of several roots that is entered. */
  private static final BigInteger LARGEST_TOWER = BigInteger.valueOf(5_040);

  private final Polynomial polynomial;
  private final Unknowns unknowns;

  NormalForm(Polynomial polynomial, Unknowns unknowns) {
    this.polynomial = polynomial;
    this.unknowns = unknowns;
  }

  /** Whether the expression vanishes identically on the roots; square roots are independent. */
  boolean isZero(MultivariatePolynomial expression) {
    return unknowns.coefficientsOverRoots(expression).stream().allMatch(this::vanishes);
  }

  private boolean vanishes(MultivariatePolynomial expression) {
    if (expression.isZero()) {
      return true;
    }
    List<Integer> roots = unknowns.rootsIn(expression);
    if (roots.isEmpty()) {
      return false;
    }
    if (roots.size() == 1) {
      // A repeated root is a root all the same: what vanishes there need not be a multiple of P.
      return Unknowns.inOne(expression, roots.get(0))
          .remainder(polynomial.squarefreePart())
          .isZero();
    }
    int n = polynomial.degree();
    if (roots.size() >= n - 1
        && SymmetricPolynomial.recognise(expression, n)
            instanceof SymmetricRecognition.Symmetric symmetric) {
      return new SumsOverChoices(polynomial).of(symmetric.polynomial()).isZero();
    }
    RootTower tower = RootTower.of(polynomial, roots.get(roots.size() - 1) + 1);
    if (tower.dimension().compareTo(LARGEST_TOWER) > 0) {
      throw Unevaluable.tooLarge("the expression has too many roots in it");
    }
    return tower.isZero(expression) || (!polynomial.isSquarefree() && everyValueIsZero(expression));
  }

  /** With repeated roots the algebra has nilpotents; the values decide. */
  private boolean everyValueIsZero(MultivariatePolynomial expression) {
    if (OrbitPolynomial.of(polynomial, RationalFunction.of(expression))
        instanceof OrbitPolynomial.Exact orbit) {
      return orbit.polynomial().squarefreePart().equals(Polynomial.X);
    }
    throw Unevaluable.tooLarge("the expression has too many images under renaming the roots");
  }

  /** The value if the expression, without square roots, is the same number for every naming. */
  Optional<Rational> constant(MultivariatePolynomial expression) {
    List<Integer> roots = unknowns.rootsIn(expression);
    if (roots.isEmpty()) {
      return Optional.of(expression.coefficient(Monomial.ONE));
    }
    int n = polynomial.degree();
    if (roots.size() >= n - 1
        && SymmetricPolynomial.recognise(expression, n)
            instanceof SymmetricRecognition.Symmetric symmetric) {
      return Optional.of(new SumsOverChoices(polynomial).of(symmetric.polynomial()));
    }
    RootTower tower = RootTower.of(polynomial, roots.get(roots.size() - 1) + 1);
    if (tower.dimension().compareTo(LARGEST_TOWER) > 0) {
      throw Unevaluable.tooLarge("the expression has too many roots in it");
    }
    return tower.constant(expression);
  }
}
