package rootwright.composing.scan.filter;

import java.util.function.Predicate;
import rootwright.algebra.polynomial.Polynomial;

/**
 * Exact tests by division of polynomials with wide numbers; factorisation is handed in.
 *
 * @param irreducible whether a polynomial of degree 4 or more without a rational root is
 *     irreducible over Q
 */
public record PolynomialTests(Predicate<Polynomial> irreducible) implements ExactTests {

  @Override
  public boolean isSquarefree(Polynomial polynomial) {
    return polynomial.isSquarefree();
  }

  @Override
  public boolean hasRationalRoot(Polynomial polynomial) {
    return RationalRootSearch.hasRoot(polynomial);
  }

  /** Up to degree 3 a proper factor brings a linear one; above, the predicate is asked. */
  @Override
  public boolean isIrreducible(Polynomial polynomial) {
    if (polynomial.degree() <= 1) {
      return polynomial.degree() == 1;
    }
    return !hasRationalRoot(polynomial)
        && (polynomial.degree() <= 3 || irreducible.test(polynomial));
  }

  @Override
  public int realRoots(Polynomial polynomial) {
    int count = 0;
    // A root of multiplicity m is a root of multiplicity m - 1 of gcd(P, P').
    for (Polynomial rest = polynomial; rest.degree() > 0; rest = rest.gcd(rest.derivative())) {
      count += SturmCount.distinctRealRoots(rest);
    }
    return count;
  }
}
