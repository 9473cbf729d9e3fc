package rootwright.algebra.notation;

import java.util.List;

/** A power; a power of a power is read from the right, a sign may stand before the exponent. */
final class PowerInfix implements Infix {

  @Override
  public int binding() {
    return Binding.POWER;
  }

  @Override
  public Piece read(Parser parser, Piece left) throws UnreadableException {
    Token sign = parser.next();
    Token doubled = parser.peek();
    if (doubled.isSign("^")) {
      throw parser.refused(
          "unexpected",
          "Two power signs follow each other.",
          doubled,
          "a whole number",
          parser.source().replaced(sign.from(), doubled.from(), ""));
    }
    Piece exponent = parser.parse(Binding.EXPONENT);
    Token after = parser.peek();
    if (after.isSign("/")
        && exponent.formula() instanceof Formula.Numeral
        && parser.peek(1).isWhole()) {
      parser.note(
          parser.written(left.from(), parser.peek(1).to()),
          "a power divided by %s; a fraction as exponent needs brackets"
              .formatted(parser.peek(1).text()));
    }
    return parser.over(
        new Formula.Power(left.formula(), exponent.formula()),
        Piece.Shape.ATOM,
        left.from(),
        List.of(left, exponent));
  }
}
