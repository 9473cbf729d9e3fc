package rootwright.algebra.notation;

import java.util.ArrayList;
import java.util.List;

/** Factors with a sign of multiplication between them; factors side by side are counted singly. */
final class TimesInfix implements Infix {

  @Override
  public int binding() {
    return Binding.PRODUCT;
  }

  @Override
  public Piece read(Parser parser, Piece left) throws UnreadableException {
    if (left.shape() == Piece.Shape.QUOTIENT) {
      parser.note(
          parser.written(left.from(), left.to()) + parser.written(parser.peek()) + "…",
          "(" + PlainWriter.write(left.formula()) + ") times what follows");
    }
    List<Piece> pieces = new ArrayList<>();
    List<Formula> factors = new ArrayList<>();
    append(left, pieces, factors);
    while (parser.peek().isSign("*") && !parser.endsScope()) {
      parser.next();
      append(parser.parse(Binding.FACTOR), pieces, factors);
    }
    return parser.over(NormalForm.productOf(factors), Piece.Shape.PRODUCT, left.from(), pieces);
  }

  private static void append(Piece piece, List<Piece> pieces, List<Formula> factors) {
    pieces.add(piece);
    if (piece.shape() != Piece.Shape.JUXTAPOSED) {
      factors.add(piece.formula());
    } else if (piece.formula() instanceof Formula.Negative negative) {
      List<Formula> own = negative.of().parts();
      factors.add(NormalForm.negativeOf(own.get(0)));
      factors.addAll(own.subList(1, own.size()));
    } else {
      factors.addAll(piece.formula().parts());
    }
  }
}
