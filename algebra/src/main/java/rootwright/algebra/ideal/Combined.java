package rootwright.algebra.ideal;

import java.util.ArrayList;
import java.util.List;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Monomial;
import rootwright.algebra.polynomial.MultivariatePolynomial;

/**
 * A polynomial together with the factors by which it is a combination of the generators.
 *
 * @param value Σ factor_k · generator_k
 * @param factors one for each generator
 */
record Combined(MultivariatePolynomial value, List<MultivariatePolynomial> factors) {

  Combined {
    factors = List.copyOf(factors);
  }

  /** How many terms there are in all. */
  int size() {
    return value.terms().size() + factors.stream().mapToInt(factor -> factor.terms().size()).sum();
  }

  /** This less coefficient·monomial times another. */
  Combined minus(Rational coefficient, Monomial monomial, Combined other) {
    MultivariatePolynomial by = MultivariatePolynomial.term(coefficient, monomial);
    List<MultivariatePolynomial> left = new ArrayList<>();
    for (int k = 0; k < factors.size(); k++) {
      left.add(factors.get(k).minus(by.times(other.factors.get(k))));
    }
    return new Combined(value.minus(by.times(other.value)), left);
  }

  /** The same times a number. */
  Combined times(Rational number) {
    return new Combined(
        value.times(number), factors.stream().map(factor -> factor.times(number)).toList());
  }

  /** The same times a monomial. */
  Combined times(Monomial monomial) {
    MultivariatePolynomial by = MultivariatePolynomial.term(Rational.ONE, monomial);
    return new Combined(value.times(by), factors.stream().map(factor -> factor.times(by)).toList());
  }
}
