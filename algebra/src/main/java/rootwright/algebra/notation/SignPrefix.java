package rootwright.algebra.notation;

import java.util.List;

/** Signs at the front of a piece. */
final class SignPrefix {

  private SignPrefix() {}

  static Piece minus(Parser parser, Token first, int least) throws UnreadableException {
    Piece of = parser.parse(Math.max(least, Binding.SIGNED));
    return parser.over(
        NormalForm.negativeOf(of.formula()), Piece.Shape.OPEN, first.from(), List.of(of));
  }

  static Piece plus(Parser parser, Token first, int least) throws UnreadableException {
    Piece of = parser.parse(Math.max(least, Binding.SIGNED));
    return parser.over(of.formula(), Piece.Shape.OPEN, first.from(), List.of(of));
  }

  static Piece plusMinus(Parser parser, Token first, int least) throws UnreadableException {
    Piece of = parser.parse(Math.max(least, Binding.SIGNED));
    return parser.over(
        new Formula.PlusMinus(Formula.number(0), of.formula()),
        Piece.Shape.OPEN,
        first.from(),
        List.of(of));
  }
}
