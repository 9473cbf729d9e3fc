package rootwright.algebra.notation;

import java.util.List;

/** What stands in the bracket after a function. */
final class Arguments {

  private Arguments() {}

  /** The items of an unbracketed list, or the one argument. */
  static List<Formula> of(Piece inside) {
    return inside.shape() == Piece.Shape.LISTING
            && inside.formula() instanceof Formula.Listing listing
        ? listing.items()
        : List.of(inside.formula());
  }
}
