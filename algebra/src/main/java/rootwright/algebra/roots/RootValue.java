package rootwright.algebra.roots;

import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;

/** A sum or product over all roots of a quotient, which may be undefined at a root. */
public sealed interface RootValue {

  /**
   * The quotient is defined at every root.
   *
   * @param value the sum or product
   */
  record Exact(Rational value) implements RootValue {}

  /**
   * A root makes the denominator zero.
   *
   * @param common the monic polynomial whose roots are those culprits
   */
  record ZeroDenominator(Polynomial common) implements RootValue {}
}
