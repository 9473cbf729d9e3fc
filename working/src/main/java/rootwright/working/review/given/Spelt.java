package rootwright.working.review.given;

import java.util.ArrayList;
import java.util.List;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.polynomial.Monomial;
import rootwright.algebra.polynomial.MultivariatePolynomial;

/** A polynomial in the unknowns as a formula. */
final class Spelt {

  private Spelt() {}

  static Formula of(MultivariatePolynomial polynomial, Names names) {
    List<Formula> terms = new ArrayList<>();
    polynomial
        .terms()
        .descendingMap()
        .forEach(
            (monomial, coefficient) -> {
              Formula letters = letters(monomial, names);
              boolean alone = monomial.degree() == 0;
              Formula size = Formula.number(coefficient.absolute());
              Formula term =
                  alone ? size : coefficient.absolute().isOne() ? letters : size.times(letters);
              terms.add(coefficient.signum() < 0 ? new Formula.Negative(term) : term);
            });
    return terms.isEmpty() ? Formula.number(0) : Formula.sum(terms);
  }

  private static Formula letters(Monomial monomial, Names names) {
    List<Formula> factors = new ArrayList<>();
    for (int k = 0; k < monomial.length(); k++) {
      if (monomial.exponent(k) > 0) {
        Formula name = Formula.name(names.spelling(k));
        factors.add(monomial.exponent(k) == 1 ? name : name.power(monomial.exponent(k)));
      }
    }
    return factors.isEmpty() ? Formula.number(1) : Formula.product(factors);
  }
}
