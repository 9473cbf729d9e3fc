package rootwright.algebra.notation;

import java.util.ArrayList;
import java.util.List;

/** Factors side by side, without a sign. They bind more tightly than a stroke. */
final class JuxtapositionInfix implements Infix {

  @Override
  public int binding() {
    return Binding.JUXTAPOSITION;
  }

  @Override
  public Piece read(Parser parser, Piece left) throws UnreadableException {
    List<Piece> pieces = new ArrayList<>(List.of(left));
    List<Formula> factors = new ArrayList<>(List.of(left.formula()));
    while (parser.standsBeside() && !parser.endsScope()) {
      refuseNumber(parser, pieces.get(pieces.size() - 1));
      Piece factor = parser.parse(Binding.JUXTAPOSITION + 1);
      pieces.add(factor);
      factors.add(factor.formula());
    }
    Piece product =
        parser.over(NormalForm.productOf(factors), Piece.Shape.JUXTAPOSED, left.from(), pieces);
    if (left.shape() == Piece.Shape.NUMBER_FRACTION) {
      parser.note(
          parser.written(product.from(), product.to()), PlainWriter.write(product.formula()));
    }
    return product;
  }

  private static void refuseNumber(Parser parser, Piece before) throws UnreadableException {
    Token number = parser.peek();
    if (number.kind() != Token.Kind.NUMBER && number.kind() != Token.Kind.VULGAR) {
      return;
    }
    boolean afterName = before.formula() instanceof Formula.Name;
    String sign = afterName && number.isWhole() ? "^" : "*";
    throw parser.refused(
        "number",
        "A number stands here without a sign before it.",
        number,
        "an operator",
        parser.source().replaced(before.to(), number.from(), sign));
  }
}
