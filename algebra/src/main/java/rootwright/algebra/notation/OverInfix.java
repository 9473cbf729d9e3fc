package rootwright.algebra.notation;

import java.util.List;

/** A fraction written with a stroke; what stands side by side below it belongs together. */
final class OverInfix implements Infix {

  @Override
  public int binding() {
    return Binding.PRODUCT;
  }

  @Override
  public Piece read(Parser parser, Piece left) throws UnreadableException {
    parser.next();
    Piece under = parser.parse(Binding.DIVISOR);
    Formula quotient = NormalForm.quotientOf(left.formula(), under.formula());
    Piece piece = parser.over(quotient, Piece.Shape.QUOTIENT, left.from(), List.of(left, under));
    if (under.shape() == Piece.Shape.JUXTAPOSED) {
      parser.note(parser.written(piece.from(), piece.to()), PlainWriter.write(piece.formula()));
    }
    return piece;
  }
}
