package rootwright.algebra.notation;

import java.util.List;

/**
 * A Σ or Π with its textbook scope, the product that follows. Bounds below and above the sign are
 * passed over if they only say that the roots are meant.
 */
record AggregatePrefix(Formula.Aggregate.Operation operation) implements Prefix {

  @Override
  public Piece read(Parser parser, Token first, int least) throws UnreadableException {
    Caption.skip(parser, first);
    boolean bracket = parser.peek().kind() == Token.Kind.OPEN;
    Piece body = parser.scope();
    Piece piece =
        parser.over(
            new Formula.Aggregate(operation, body.formula()),
            Piece.Shape.OPEN,
            first.from(),
            List.of(body));
    if (bracket && body.shape() != Piece.Shape.ATOM) {
      parser.note(
          parser.written(piece.from(), piece.to()),
          PlainWriter.write(piece.formula()) + ", over the whole product");
    }
    return piece;
  }
}
