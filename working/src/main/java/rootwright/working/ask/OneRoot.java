package rootwright.working.ask;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Monomial;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.polynomial.RationalFunction;
import rootwright.working.problem.RootFunction;

/** An expression with exactly one root in it: which root, and the function of it. */
record OneRoot(int root, RootFunction function) {

  static Optional<OneRoot> of(RationalFunction written, int roots) {
    List<Integer> occurring = new ArrayList<>();
    for (int k = 0; k < Math.max(roots, written.unknowns()); k++) {
      if (written.numerator().degreeIn(k) > 0 || written.denominator().degreeIn(k) > 0) {
        occurring.add(k);
      }
    }
    if (occurring.size() != 1 || occurring.get(0) >= roots) {
      return Optional.empty();
    }
    int root = occurring.get(0);
    return Optional.of(
        new OneRoot(
            root,
            new RootFunction(in(root, written.numerator()), in(root, written.denominator()))));
  }

  private static Polynomial in(int root, MultivariatePolynomial polynomial) {
    List<Rational> ascending = new ArrayList<>();
    for (int k = 0; k <= polynomial.degreeIn(root); k++) {
      ascending.add(polynomial.coefficient(Monomial.power(root, k)));
    }
    return Polynomial.ofAscending(ascending);
  }
}
