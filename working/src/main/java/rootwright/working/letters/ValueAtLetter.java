package rootwright.working.letters;

import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.algebra.polynomial.RationalFunction;
import rootwright.algebra.value.ExactValue;
import rootwright.algebra.value.QuadraticSurd;
import rootwright.algebra.value.RationalValue;

/** A function of the letter at an exact value of the letter, rational or quadratic. */
final class ValueAtLetter {

  private ValueAtLetter() {}

  /**
   * The value.
   *
   * @throws BeyondLettersException if a denominator is 0 there, or the letter's value is neither
   *     rational nor quadratic
   */
  static ExactValue of(RationalFunction function, ExactValue letter) {
    ExactValue over = value(function.numerator(), letter);
    ExactValue under = value(function.denominator(), letter);
    if (under instanceof RationalValue number) {
      if (number.number().isZero()) {
        throw new BeyondLettersException("a denominator is 0 at a value of the letter");
      }
      return over instanceof QuadraticSurd surd
          ? surd.times(number.number().reciprocal())
          : new RationalValue(((RationalValue) over).number().over(number.number()));
    }
    QuadraticSurd inverse = ((QuadraticSurd) under).reciprocal();
    return over instanceof QuadraticSurd surd
        ? surd.times(inverse)
        : inverse.times(((RationalValue) over).number());
  }

  private static ExactValue value(MultivariatePolynomial function, ExactValue letter) {
    return NumberAt.value(InLetters.inOne(function, 1), letter)
        .orElseThrow(
            () ->
                new BeyondLettersException(
                    "values are worked at rational and quadratic values of the letter only"));
  }
}
