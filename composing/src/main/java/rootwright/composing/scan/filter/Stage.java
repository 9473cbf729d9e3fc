package rootwright.composing.scan.filter;

/** When a filter is asked, from the cheapest test to the dearest. */
public enum Stage {
  /** Signs of coefficients. */
  SIGN,
  /** The value of the expression. */
  ANSWER,
  /** Common divisors of the coefficients. */
  CONTENT,
  /** The discriminant. */
  DISCRIMINANT,
  /** Rational roots. */
  ROOT,
  /** Factors of any degree. */
  FACTOR,
  /** The number of real roots. */
  REAL,
  /** Anything else. */
  OTHER
}
