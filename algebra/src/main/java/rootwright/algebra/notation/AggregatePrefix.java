package rootwright.algebra.notation;

import java.util.List;
import java.util.Optional;

/**
 * A Σ or Π with its textbook scope, the product that follows, and with a caption that says which
 * roots are meant.
 */
record AggregatePrefix(Formula.Aggregate.Operation operation) implements Prefix {

  @Override
  public Piece read(Parser parser, Token first, int least) throws UnreadableException {
    Caption caption = Caption.read(parser, first);
    boolean bracket = parser.peek().kind() == Token.Kind.OPEN;
    Piece body = parser.scope();
    if (caption.order() == Caption.Order.CYCLIC || caption.order() == Caption.Order.RENAMED) {
      return parser.over(
          TurnedRound.typed(operation, caption.order(), body.formula()),
          Piece.Shape.OPEN,
          first.from(),
          List.of(body));
    }
    IndexedBody indexed = IndexedBody.of(body.formula(), caption);
    if (indexed.countsByIndex()) {
      throw parser.refused(
          "caption",
          "The index of this sign is used as a number; a sum or product here runs over the roots.",
          first,
          "the terms written out",
          "");
    }
    Formula aggregate = new Formula.Aggregate(operation, NormalForm.of(indexed.definite()));
    Piece piece =
        parser.over(
            counted(parser, first, caption, indexed, aggregate),
            Piece.Shape.OPEN,
            first.from(),
            List.of(body));
    boolean renamed = !indexed.definite().equals(body.formula());
    if (renamed || (bracket && body.shape() != Piece.Shape.ATOM)) {
      parser.note(parser.written(piece.from(), piece.to()), PlainWriter.write(piece.formula()));
    }
    return piece;
  }

  /** An ordered sum of a symmetric body takes every distinct image twice. */
  private Formula counted(
      Parser parser, Token sign, Caption caption, IndexedBody body, Formula aggregate)
      throws UnreadableException {
    boolean unused = body.definite().equals(body.body());
    if (caption.order() == Caption.Order.FREE || unused) {
      return aggregate;
    }
    Optional<Boolean> symmetric = body.isSymmetric();
    String written = parser.written(sign.from(), caption.end());
    if (symmetric.isEmpty()) {
      throw parser.refused(
          "caption",
          "It cannot be told here whether exchanging the indices in “%s” changes a term."
              .formatted(written),
          sign,
          "the sum without its caption",
          "");
    }
    if (caption.order() == Caption.Order.INCREASING && !symmetric.get()) {
      throw parser.refused(
          "caption",
          "The terms depend on how the roots are numbered, so “%s” does not fit here."
              .formatted(written),
          sign,
          "terms that do not change when the indices are exchanged, or i≠j",
          "");
    }
    if (caption.order() == Caption.Order.DIFFERENT && symmetric.get()) {
      return operation == Formula.Aggregate.Operation.SUM
          ? new Formula.Product(List.of(Formula.number(2), aggregate))
          : new Formula.Power(aggregate, Formula.number(2));
    }
    return aggregate;
  }
}
