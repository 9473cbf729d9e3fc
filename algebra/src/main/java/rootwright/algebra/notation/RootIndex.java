package rootwright.algebra.notation;

import java.math.BigInteger;
import rootwright.algebra.number.Rational;

/** The index of a root sign. */
final class RootIndex {

  private RootIndex() {}

  /** The index that a piece gives, from 2 up to {@link Limits#RADICAL_INDEX}. */
  static int of(Parser parser, Piece piece, Token at) throws UnreadableException {
    if (piece.formula() instanceof Formula.Numeral number && fits(number.value())) {
      return number.value().intValueExact();
    }
    throw parser.refused(
        "number",
        "The index of a root sign is a whole number from 2 to %d.".formatted(Limits.RADICAL_INDEX),
        at,
        "a whole number",
        "");
  }

  private static boolean fits(Rational value) {
    return value.isInteger()
        && value.compareTo(Rational.TWO) >= 0
        && value.numerator().compareTo(BigInteger.valueOf(Limits.RADICAL_INDEX)) <= 0;
  }
}
