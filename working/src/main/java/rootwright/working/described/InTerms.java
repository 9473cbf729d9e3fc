package rootwright.working.described;

import java.util.ArrayList;
import java.util.List;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.NormalForm;
import rootwright.algebra.notation.PolynomialFormula;
import rootwright.algebra.notation.UnicodeWriter;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;

/**
 * A base value c in terms of the number v that is wanted: c = over(v)/under(v), both linear.
 *
 * @param over of degree at most 1
 * @param under of degree at most 1, not zero
 */
record InTerms(Polynomial over, Polynomial under) {

  /** v = f·c. */
  static InTerms multiple(Rational f) {
    return scaled(line(Rational.ONE, Rational.ZERO), Polynomial.constant(f));
  }

  /** v = f/c. */
  static InTerms reciprocal(Rational f) {
    return scaled(Polynomial.constant(f), line(Rational.ONE, Rational.ZERO));
  }

  /** v = f·(1 ± c)/2, the square of cos or sin by the double angle. */
  static InTerms square(Rational f, int sign) {
    return scaled(line(Rational.of(2L * sign), f.times(-sign)), Polynomial.constant(f));
  }

  /** v = 2f/(1 ± c), one over the square of cos or sin by the double angle. */
  static InTerms overSquare(Rational f, int sign) {
    return scaled(line(Rational.of(-sign), f.times(2L * sign)), line(Rational.ONE, Rational.ZERO));
  }

  private static Polynomial line(Rational slope, Rational constant) {
    return Polynomial.ofAscending(List.of(constant, slope));
  }

  private static InTerms scaled(Polynomial over, Polynomial under) {
    Polynomial both = over.plus(under.times(Polynomial.monomial(Rational.ONE, 2)));
    Rational scale = both.primitive().lead().over(both.lead());
    return new InTerms(over.times(scale), under.times(scale));
  }

  boolean isIdentity() {
    return over.equals(Polynomial.X) && under.equals(Polynomial.ONE);
  }

  String reason(String letter, String unknown) {
    return isIdentity()
        ? "the letter " + unknown
        : "put in %s = %s".formatted(letter, UnicodeWriter.write(written(unknown)));
  }

  private Formula written(String unknown) {
    return NormalForm.of(
        under.equals(Polynomial.ONE)
            ? PolynomialFormula.of(over, unknown)
            : PolynomialFormula.of(over, unknown).over(PolynomialFormula.of(under, unknown)));
  }

  /** factor·under^n·base(over/under), which is the wanted polynomial. */
  Formula cleared(Polynomial base, Polynomial wanted, String letter, String unknown) {
    int n = base.degree();
    Polynomial raw = Polynomial.ZERO;
    for (int k = 0; k <= n; k++) {
      raw = raw.plus(over.power(k).times(under.power(n - k)).times(base.coefficient(k)));
    }
    Rational factor = wanted.lead().over(raw.lead());
    Formula put =
        PolynomialFormula.of(base, letter)
            .rewrite(part -> part.equals(Formula.name(letter)) ? written(unknown) : part);
    List<Formula> factors = new ArrayList<>();
    if (under.degree() == 0) {
      factor = factor.times(under.coefficient(0).power(n));
    } else {
      Formula below = PolynomialFormula.of(under, unknown);
      factors.add(n == 1 ? below : below.power(n));
    }
    if (!factor.isOne()) {
      factors.add(0, Formula.number(factor));
    }
    factors.add(put);
    return NormalForm.of(Formula.product(factors));
  }
}
