package rootwright.algebra.factor;

import java.util.ArrayList;
import java.util.List;
import rootwright.algebra.polynomial.Polynomial;

/** Sorts the roots of a polynomial by their multiplicity without finding them. */
public final class SquarefreeDecomposition {

  private SquarefreeDecomposition() {}

  /**
   * The squarefree factors by ascending multiplicity: the polynomial is a constant times the
   * product of factor^multiplicity, the factors have no root in common. Empty for a constant. By
   * Yun's algorithm (1976, Proc. SYMSAC, pp 26–35).
   *
   * @throws IllegalArgumentException for the zero polynomial
   */
  public static List<SquarefreeFactor> of(Polynomial polynomial) {
    if (polynomial.isZero()) {
      throw new IllegalArgumentException("the zero polynomial has no factors");
    }
    if (polynomial.degree() == 0) {
      return List.of();
    }
    if (ResiduePolynomial.provesSquarefree(polynomial)) {
      return List.of(new SquarefreeFactor(polynomial.primitive(), 1));
    }
    List<SquarefreeFactor> factors = new ArrayList<>();
    Polynomial derivative = polynomial.derivative();
    Polynomial repeated = polynomial.gcd(derivative);
    Polynomial rest = polynomial.divide(repeated).quotient();
    Polynomial difference = derivative.divide(repeated).quotient().minus(rest.derivative());
    for (int multiplicity = 1; rest.degree() > 0; multiplicity++) {
      Polynomial factor = rest.gcd(difference);
      if (factor.degree() > 0) {
        factors.add(new SquarefreeFactor(factor.primitive(), multiplicity));
      }
      rest = rest.divide(factor).quotient();
      difference = difference.divide(factor).quotient().minus(rest.derivative());
    }
    return List.copyOf(factors);
  }
}
