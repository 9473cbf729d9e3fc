package rootwright.working.letters;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.NormalForm;
import rootwright.algebra.notation.PolynomialFormula;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Monomial;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.polynomial.RationalFunction;

/** Functions of the letters, whose k-th letter is unknown k, counted from 1. */
final class InLetters {

  private InLetters() {}

  /**
   * The function in lowest terms with whole coefficients above and below the stroke, the first term
   * below it being positive.
   */
  static RationalFunction cleared(RationalFunction function) {
    RationalFunction lowest = function.lowestTerms();
    if (lowest.isPolynomial()) {
      return lowest;
    }
    Rational factor = toWhole(lowest.denominator());
    return new RationalFunction(
        lowest.numerator().times(factor), lowest.denominator().times(factor));
  }

  /** As it is written. */
  static Formula formula(RationalFunction function, List<String> letters) {
    RationalFunction cleared = cleared(function);
    if (cleared.isPolynomial()) {
      return formula(cleared.numerator(), letters);
    }
    Rational scale = commonDenominator(cleared.numerator());
    Formula over = formula(cleared.numerator().times(scale), letters);
    Formula under = formula(cleared.denominator().times(scale), letters);
    boolean minus = over instanceof Formula.Negative;
    Formula size = over instanceof Formula.Negative negative ? negative.of() : over;
    Formula quotient = size.over(under);
    return NormalForm.of(minus ? new Formula.Negative(quotient) : quotient);
  }

  /** As it is written. */
  static Formula formula(MultivariatePolynomial polynomial, List<String> letters) {
    List<String> names = new ArrayList<>(List.of("x"));
    names.addAll(letters);
    return NormalForm.of(PolynomialFormula.of(polynomial, names));
  }

  /** A coefficient times a power of the unknown: {@code (m - 3)*x^2}, {@code -2*m*x}. */
  static Formula term(
      MultivariatePolynomial coefficient, List<String> letters, String unknown, int power) {
    Formula x = Formula.name(unknown);
    Formula raised = power == 1 ? x : x.power(power);
    Formula written = formula(coefficient, letters);
    if (power == 0) {
      return written;
    } else if (coefficient.equals(MultivariatePolynomial.ONE)) {
      return raised;
    } else if (coefficient.equals(MultivariatePolynomial.ONE.negate())) {
      return new Formula.Negative(raised);
    }
    if (written instanceof Formula.Negative negative) {
      return NormalForm.of(new Formula.Negative(negative.of().times(raised)));
    } else if (written instanceof Formula.Sum sum
        && sum.terms().get(0) instanceof Formula.Negative) {
      Formula turned = formula(coefficient.negate(), letters);
      return NormalForm.of(new Formula.Negative(turned.times(raised)));
    }
    return NormalForm.of(written.times(raised));
  }

  /** A polynomial in the one letter with this number. */
  static Polynomial inOne(MultivariatePolynomial polynomial, int letter) {
    List<Rational> ascending = new ArrayList<>();
    for (int k = 0; k <= polynomial.degreeIn(letter); k++) {
      ascending.add(polynomial.coefficient(Monomial.power(letter, k)));
    }
    return Polynomial.ofAscending(ascending);
  }

  private static Rational toWhole(MultivariatePolynomial polynomial) {
    BigInteger common = commonDenominator(polynomial).numerator();
    BigInteger shared = BigInteger.ZERO;
    for (Rational coefficient : polynomial.terms().values()) {
      shared = shared.gcd(coefficient.times(Rational.of(common)).numerator());
    }
    return new Rational(common, shared);
  }

  private static Rational commonDenominator(MultivariatePolynomial polynomial) {
    BigInteger common = BigInteger.ONE;
    for (Rational coefficient : polynomial.terms().values()) {
      BigInteger under = coefficient.denominator();
      common = common.multiply(under.divide(common.gcd(under)));
    }
    return Rational.of(common);
  }
}
