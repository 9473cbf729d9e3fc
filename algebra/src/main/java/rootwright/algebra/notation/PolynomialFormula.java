package rootwright.algebra.notation;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Monomial;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.polynomial.RationalFunction;

/** Polynomials as formulas: highest power first, no factor 1, a minus instead of plus minus. */
public final class PolynomialFormula {

  /** Higher degree first; within a degree the one that has more of the earlier names. */
  private static final Comparator<Monomial> ORDER =
      Comparator.comparingInt(Monomial::degree).thenComparing(Comparator.naturalOrder()).reversed();

  private PolynomialFormula() {}

  /** {@code x^3 - 17*x + 25}; 0 for the zero polynomial. */
  public static Formula of(Polynomial polynomial, String unknown) {
    return of(polynomial, named(unknown));
  }

  /** The polynomial with a formula put for its unknown, not multiplied out. */
  public static Formula of(Polynomial polynomial, Formula unknown) {
    List<Formula> terms = new ArrayList<>();
    for (int k = polynomial.degree(); k >= 0; k--) {
      if (!polynomial.coefficient(k).isZero()) {
        List<Formula> powers = new ArrayList<>();
        if (k > 0) {
          powers.add(k == 1 ? unknown : unknown.power(k));
        }
        terms.add(term(polynomial.coefficient(k), powers));
      }
    }
    return Formula.sum(terms);
  }

  /**
   * {@code e_1^2 - 2*e_2}: by total degree, then by the order of the names.
   *
   * @param names the spelling of each unknown by its number
   * @throws IllegalArgumentException if an unknown has no name
   */
  public static Formula of(MultivariatePolynomial polynomial, List<String> names) {
    if (polynomial.unknowns() > names.size()) {
      throw new IllegalArgumentException(
          "%d names for %d unknowns: %s".formatted(names.size(), polynomial.unknowns(), names));
    }
    List<Formula> unknowns = names.stream().map(PolynomialFormula::named).toList();
    List<Formula> terms = new ArrayList<>();
    polynomial.terms().keySet().stream()
        .sorted(ORDER)
        .forEach(
            monomial ->
                terms.add(term(polynomial.coefficient(monomial), powers(monomial, unknowns))));
    return Formula.sum(terms);
  }

  /** The fraction of two polynomials, or the one polynomial if the denominator is 1. */
  public static Formula of(RationalFunction function, List<String> names) {
    Formula over = of(function.numerator(), names);
    return function.denominator().equals(MultivariatePolynomial.ONE)
        ? over
        : NormalForm.of(over.over(of(function.denominator(), names)));
  }

  /** The name with this spelling; {@code e_1} is a member of its family. */
  public static Formula named(String spelling) {
    return NormalForm.of(Formula.name(spelling));
  }

  private static List<Formula> powers(Monomial monomial, List<Formula> unknowns) {
    List<Formula> powers = new ArrayList<>();
    for (int k = 0; k < monomial.length(); k++) {
      int exponent = monomial.exponent(k);
      if (exponent > 0) {
        powers.add(exponent == 1 ? unknowns.get(k) : unknowns.get(k).power(exponent));
      }
    }
    return powers;
  }

  private static Formula term(Rational coefficient, List<Formula> powers) {
    Rational size = coefficient.absolute();
    List<Formula> factors = new ArrayList<>();
    if (!size.isOne() || powers.isEmpty()) {
      factors.add(Formula.number(size));
    }
    factors.addAll(powers);
    Formula term = Formula.product(factors);
    return coefficient.signum() < 0 ? NormalForm.negativeOf(term) : term;
  }
}
