package rootwright.algebra.notation;

/**
 * The smallest piece of a text that means something.
 *
 * @param kind what it is
 * @param text its canonical spelling: a Unicode minus and a hyphen are both {@code -}
 * @param from the code point at which it begins
 * @param to the code point after it
 * @param blankBefore whether a blank or the beginning of the text stands before it
 */
record Token(Kind kind, String text, int from, int to, boolean blankBefore) {

  /** What a token is. */
  enum Kind {
    /** Decimal digits, perhaps with a point. */
    NUMBER,
    /** A fraction that is one character: ½ has the text {@code 1/2}. */
    VULGAR,
    /** One letter, Latin or Greek. */
    LETTER,
    /** A word or a command of the vocabulary. */
    WORD,
    /** An operator or another sign. */
    SIGN,
    /** An opening bracket. */
    OPEN,
    /** A closing bracket. */
    CLOSE,
    /** The bar of an absolute value. */
    BAR,
    /** The end of the text. */
    END
  }

  boolean is(Kind wanted, String spelling) {
    return kind == wanted && text.equals(spelling);
  }

  boolean isSign(String spelling) {
    return is(Kind.SIGN, spelling);
  }

  /** Whether this is a number written without a point. */
  boolean isWhole() {
    return kind == Kind.NUMBER && text.indexOf('.') < 0;
  }
}
