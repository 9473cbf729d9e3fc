package rootwright.algebra.notation;

import java.util.List;
import java.util.Map;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.algebra.polynomial.RationalFunction;

/** Multiplies a formula out to a quotient of two polynomials in several unknowns. */
final class FunctionEvaluation extends FormulaEvaluation<RationalFunction> {

  /** A product of two terms costs this many products of words on top. */
  private static final int OVERHEAD = 600;

  private final Map<String, Integer> unknowns;
  private final WorkBudget budget;

  FunctionEvaluation(Map<String, Integer> unknowns) {
    this(unknowns, Limits.WORK);
  }

  FunctionEvaluation(Map<String, Integer> unknowns, long work) {
    this.unknowns = Map.copyOf(unknowns);
    budget = new WorkBudget(work);
  }

  @Override
  RationalFunction number(Formula part, Rational value) {
    return RationalFunction.of(value);
  }

  @Override
  RationalFunction named(Formula part, String spelling) {
    Integer number = unknowns.get(spelling);
    if (number == null) {
      throw new PartRefusedException(
          "unknown-letter",
          "The letter %s is not known here.".formatted(spelling),
          part,
          "one of " + String.join(", ", unknowns.keySet().stream().sorted().toList()));
    }
    return RationalFunction.of(MultivariatePolynomial.unknown(number));
  }

  @Override
  RationalFunction plus(Formula part, RationalFunction left, RationalFunction right) {
    if (left.denominator().equals(right.denominator())) {
      spend(part, left.numerator(), MultivariatePolynomial.ONE);
      spend(part, right.numerator(), MultivariatePolynomial.ONE);
    } else {
      spend(part, left.numerator(), right.denominator());
      spend(part, right.numerator(), left.denominator());
      spend(part, left.denominator(), right.denominator());
    }
    return left.plus(right);
  }

  @Override
  RationalFunction negate(RationalFunction value) {
    return value.negate();
  }

  @Override
  RationalFunction times(Formula part, RationalFunction left, RationalFunction right) {
    spend(part, left.numerator(), right.numerator());
    spend(part, left.denominator(), right.denominator());
    return left.times(right);
  }

  @Override
  RationalFunction over(Formula part, RationalFunction left, RationalFunction right) {
    if (right.numerator().isZero()) {
      throw NonZero.refused(part);
    }
    spend(part, left.numerator(), right.denominator());
    spend(part, left.denominator(), right.numerator());
    return left.over(right);
  }

  @Override
  RationalFunction power(Formula part, RationalFunction base, int exponent) {
    if (exponent < 0) {
      return power(part, over(part, RationalFunction.ONE, base), -exponent);
    }
    if (base.isPolynomial() && base.numerator().isConstant()) {
      Rational value = base.numerator().at(List.of());
      return RationalFunction.of(NumberPower.of(part, value, exponent));
    }
    RationalFunction result = base;
    for (int bit = Integer.highestOneBit(exponent) >> 1; bit > 0; bit >>= 1) {
      result = times(part, result, result);
      if ((exponent & bit) != 0) {
        result = times(part, result, base);
      }
    }
    return result;
  }

  @Override
  String called() {
    return "a rational expression";
  }

  private void spend(Formula part, MultivariatePolynomial left, MultivariatePolynomial right) {
    long degree = (long) left.degree() + right.degree();
    if (degree > Limits.DEGREE) {
      throw new PartRefusedException(
          "too-large",
          "The degree would be %d; at most %d is worked with.".formatted(degree, Limits.DEGREE),
          part,
          "a smaller degree");
    }
    long bits = bits(left);
    long otherBits = bits(right);
    if (bits + otherBits > Limits.BITS) {
      throw NumberPower.tooLarge(part);
    }
    long products = (long) left.terms().size() * right.terms().size();
    budget.spend(part, products, bits, otherBits, OVERHEAD);
  }

  private static long bits(MultivariatePolynomial polynomial) {
    long bits = 0;
    for (Rational coefficient : polynomial.terms().values()) {
      bits = Math.max(bits, coefficient.numerator().bitLength());
      bits = Math.max(bits, coefficient.denominator().bitLength());
    }
    return bits;
  }
}
