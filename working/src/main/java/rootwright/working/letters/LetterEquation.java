package rootwright.working.letters;

import rootwright.algebra.notation.Formula;
import rootwright.algebra.polynomial.RationalFunction;
import rootwright.working.step.Claim;
import rootwright.working.step.LetteredSetting;

/**
 * What a condition on the roots says of the letters: a function of them is zero.
 *
 * @param condition the condition
 * @param shape how the condition became one of the letters
 * @param expression what has been worked out, such as the product of r − 2s over all pairs
 * @param value the function of the letters that it is equal to
 * @param setting what the names in the expression stand for
 */
record LetterEquation(
    Condition condition,
    Shape shape,
    Formula expression,
    RationalFunction value,
    LetteredSetting setting) {

  /** How a condition became one of the letters. */
  enum Shape {
    /** The expression is the same for every naming of the roots. */
    SYMMETRIC,
    /** It is zero for some naming: the product over all of them is zero. */
    PRODUCT,
    /** Several expressions are zero for one naming: a combination with a new letter. */
    JOINT,
    /** A number is put into the polynomial. */
    PUT_IN,
    /** A coefficient of the remainder. */
    REMAINDER,
    /** A condition on the letters alone. */
    LETTERS
  }

  /** The value as it is written. */
  Formula written() {
    return InLetters.formula(value, setting.letters());
  }

  /** The claim that expression and value are equal for all letters. */
  Claim claim() {
    return Claim.equal(setting, expression, written());
  }
}
