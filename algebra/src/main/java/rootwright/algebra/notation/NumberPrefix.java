package rootwright.algebra.notation;

import java.math.BigInteger;
import rootwright.algebra.number.Rational;

/** Numbers: whole, decimal, a fraction of two whole numbers, a mixed number. */
final class NumberPrefix {

  private NumberPrefix() {}

  static Piece number(Parser parser, Token first, int least) {
    boolean mayHoldStroke = least <= Binding.FACTOR;
    Token second = parser.peek();
    if (first.isWhole() && second.kind() == Token.Kind.VULGAR) {
      parser.next();
      return mixed(parser, first, rational(second.text()));
    }
    if (first.isWhole() && mayHoldStroke && isMixed(parser)) {
      Token top = parser.next();
      parser.next();
      Token bottom = parser.next();
      return mixed(parser, first, rational(top.text() + "/" + bottom.text()));
    }
    if (first.isWhole() && isBuiltUpFraction(parser)) {
      String over = parser.peek(2).text();
      String under = parser.peek(5).text();
      parser.skip(7);
      return mixed(parser, first, rational(over + "/" + under));
    }
    if (first.isWhole() && mayHoldStroke && isFraction(parser, 0)) {
      parser.next();
      Token bottom = parser.next();
      Piece leaf =
          parser.leaf(
              NormalForm.quotientOf(
                  Formula.number(new BigInteger(first.text())),
                  Formula.number(new BigInteger(bottom.text()))),
              first.from());
      return new Piece(leaf.formula(), 2, leaf.from(), leaf.to(), Piece.Shape.NUMBER_FRACTION);
    }
    return parser.leaf(Formula.number(decimal(first.text())), first.from());
  }

  static Piece vulgar(Parser parser, Token first, int least) {
    return parser.leaf(Formula.number(rational(first.text())), first.from());
  }

  /** Whether, some tokens ahead, a stroke and a whole number follow that is not raised further. */
  private static boolean isFraction(Parser parser, int ahead) {
    return parser.peek(ahead).isSign("/")
        && parser.peek(ahead + 1).isWhole()
        && !parser.peek(ahead + 2).isSign("^");
  }

  /** Whether a whole number is followed by a blank and a proper fraction. */
  private static boolean isMixed(Parser parser) {
    Token top = parser.peek();
    return top.isWhole()
        && top.blankBefore()
        && isFraction(parser, 1)
        && isProper(top, parser.peek(2));
  }

  /** Whether a proper fraction in LaTeX follows, with both whole numbers in braces. */
  private static boolean isBuiltUpFraction(Parser parser) {
    return parser.peek().is(Token.Kind.WORD, "\\frac")
        && parser.peek(1).kind() == Token.Kind.OPEN
        && parser.peek(2).isWhole()
        && parser.peek(3).kind() == Token.Kind.CLOSE
        && parser.peek(4).kind() == Token.Kind.OPEN
        && parser.peek(5).isWhole()
        && parser.peek(6).kind() == Token.Kind.CLOSE
        && isProper(parser.peek(2), parser.peek(5));
  }

  private static boolean isProper(Token top, Token bottom) {
    BigInteger over = new BigInteger(top.text());
    return over.signum() > 0 && over.compareTo(new BigInteger(bottom.text())) < 0;
  }

  /** The whole number and the fraction together, with the reading said. */
  static Piece mixed(Parser parser, Token whole, Rational fraction) {
    Formula number = Formula.number(Rational.of(new BigInteger(whole.text())).plus(fraction));
    Piece piece = parser.leaf(number, whole.from());
    parser.note(
        parser.written(piece.from(), piece.to()), "the mixed number " + PlainWriter.write(number));
    return piece;
  }

  private static Rational rational(String text) {
    return Rational.parse(text);
  }

  /** The exact value of a decimal. */
  static Rational decimal(String text) {
    int point = text.indexOf('.');
    if (point < 0) {
      return Rational.of(new BigInteger(text));
    }
    String digits = text.substring(0, point) + text.substring(point + 1);
    return new Rational(new BigInteger(digits), BigInteger.TEN.pow(text.length() - point - 1));
  }
}
