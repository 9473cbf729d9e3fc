package rootwright.algebra.notation;

import java.util.ArrayList;
import java.util.List;

/** Formulas with commas, “or” or “and” between them. */
final class ListingInfix implements Infix {

  @Override
  public int binding() {
    return Binding.LISTING;
  }

  @Override
  public Piece read(Parser parser, Piece left) throws UnreadableException {
    List<Piece> pieces = new ArrayList<>(List.of(left));
    List<Formula> items = new ArrayList<>(List.of(left.formula()));
    while (parser.accept(",")) {
      Piece item = parser.parse(Binding.MODULO);
      pieces.add(item);
      items.add(item.formula());
    }
    return parser.over(new Formula.Listing(items), Piece.Shape.LISTING, left.from(), pieces);
  }
}
