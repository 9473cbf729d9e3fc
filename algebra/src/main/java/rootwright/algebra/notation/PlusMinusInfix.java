package rootwright.algebra.notation;

import java.util.List;

/** The sign ± between two terms. */
final class PlusMinusInfix implements Infix {

  @Override
  public int binding() {
    return Binding.SUM;
  }

  @Override
  public Piece read(Parser parser, Piece left) throws UnreadableException {
    parser.next();
    Piece right = parser.parse(Binding.SIGNED);
    return parser.over(
        new Formula.PlusMinus(left.formula(), right.formula()),
        Piece.Shape.OPEN,
        left.from(),
        List.of(left, right));
  }
}
