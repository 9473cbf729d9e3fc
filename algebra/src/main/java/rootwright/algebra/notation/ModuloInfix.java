package rootwright.algebra.notation;

import java.util.List;

/** The residue for a modulus; it binds last, so that everything before it is meant. */
final class ModuloInfix implements Infix {

  @Override
  public int binding() {
    return Binding.MODULO;
  }

  @Override
  public Piece read(Parser parser, Piece left) throws UnreadableException {
    parser.next();
    Piece modulus = parser.parse(Binding.SUM);
    return parser.over(
        new Formula.Modulo(left.formula(), modulus.formula()),
        Piece.Shape.OPEN,
        left.from(),
        List.of(left, modulus));
  }
}
