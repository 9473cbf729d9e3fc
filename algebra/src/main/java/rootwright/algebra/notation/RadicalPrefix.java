package rootwright.algebra.notation;

import java.util.List;

/**
 * A root sign. A bracket right after it is all that stands below it; without one it takes the next
 * number or name with its power.
 *
 * @param index 2 for the square root
 */
record RadicalPrefix(int index) implements Prefix {

  @Override
  public Piece read(Parser parser, Token first, int least) throws UnreadableException {
    Token begin = parser.peek();
    if (begin.kind() == Token.Kind.OPEN) {
      parser.next();
      Piece inside = parser.inside(begin);
      return parser.over(
          new Formula.Radical(inside.formula(), index),
          Piece.Shape.ATOM,
          first.from(),
          List.of(inside));
    }
    Piece below = parser.parse(Binding.POWER);
    Piece piece =
        parser.over(
            new Formula.Radical(below.formula(), index),
            Piece.Shape.ATOM,
            first.from(),
            List.of(below));
    if (parser.standsBeside() || below.formula() instanceof Formula.Power) {
      parser.note(parser.written(piece.from(), piece.to()), PlainWriter.write(piece.formula()));
    }
    return piece;
  }
}
