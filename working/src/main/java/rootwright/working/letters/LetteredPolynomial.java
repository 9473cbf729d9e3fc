package rootwright.working.letters;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Monomial;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.working.step.LetteredSetting;

/**
 * A polynomial with letters in its coefficients.
 *
 * @param polynomial unknown 0 is its own, unknown k the k-th letter, counted from 1
 * @param unknown the spelling of its own unknown
 * @param letters the spellings of the letters
 */
public record LetteredPolynomial(
    MultivariatePolynomial polynomial, String unknown, List<String> letters) {

  public LetteredPolynomial {
    letters = List.copyOf(letters);
  }

  /** The degree where the lead coefficient is not zero; 0 also for the zero polynomial. */
  public int degree() {
    return polynomial.degreeIn(0);
  }

  /** The coefficient of a power of the unknown, letter k being unknown k as in the polynomial. */
  public MultivariatePolynomial coefficient(int power) {
    List<MultivariatePolynomial> all = polynomial.coefficientsIn(0);
    return power < all.size() ? all.get(power) : MultivariatePolynomial.ZERO;
  }

  /** The coefficient of the highest power. */
  public MultivariatePolynomial lead() {
    return coefficient(degree());
  }

  /**
   * The polynomial by descending powers of its unknown, every coefficient in brackets as needed.
   */
  public Formula formula() {
    List<Formula> terms = new ArrayList<>();
    for (int power = degree(); power >= 0; power--) {
      MultivariatePolynomial coefficient = coefficient(power);
      if (!coefficient.isZero()) {
        Formula term = InLetters.term(coefficient, letters, unknown, power);
        if (power == 0 && term instanceof Formula.Sum sum) {
          terms.addAll(sum.terms());
        } else {
          terms.add(term);
        }
      }
    }
    return Formula.sum(terms);
  }

  /** The setting in which P is this polynomial and its roots have these names. */
  public LetteredSetting setting(List<String> roots) {
    return LetteredSetting.of(letters, polynomial, roots);
  }

  /** The polynomial with numbers put for all letters; its degree may be lower. */
  public Polynomial at(Map<String, Rational> numbers) {
    Rational[] ascending = new Rational[degree() + 1];
    Arrays.fill(ascending, Rational.ZERO);
    polynomial
        .terms()
        .forEach(
            (monomial, coefficient) ->
                ascending[monomial.exponent(0)] =
                    ascending[monomial.exponent(0)].plus(value(monomial, coefficient, numbers)));
    return Polynomial.ofAscending(List.of(ascending));
  }

  /** The polynomial in the one letter that arises when a number is put for the unknown. */
  Polynomial valueAt(Rational number) {
    Polynomial value = Polynomial.ZERO;
    for (int power = degree(); power >= 0; power--) {
      value = value.times(number).plus(InLetters.inOne(coefficient(power), 1));
    }
    return value;
  }

  private Rational value(Monomial monomial, Rational coefficient, Map<String, Rational> numbers) {
    Rational value = coefficient;
    for (int k = 1; k < monomial.length(); k++) {
      if (monomial.exponent(k) > 0) {
        Rational number = numbers.getOrDefault(letters.get(k - 1), Rational.ZERO);
        value = value.times(number.power(monomial.exponent(k)));
      }
    }
    return value;
  }
}
