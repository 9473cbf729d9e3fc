package rootwright.algebra.notation;

import java.util.ArrayList;
import java.util.List;

/** Terms with plus and minus between them. */
final class SumInfix implements Infix {

  @Override
  public int binding() {
    return Binding.SUM;
  }

  @Override
  public Piece read(Parser parser, Piece left) throws UnreadableException {
    List<Piece> pieces = new ArrayList<>(List.of(left));
    List<Formula> terms = new ArrayList<>(List.of(left.formula()));
    while (parser.peek().isSign("+") || parser.peek().isSign("-")) {
      boolean minus = parser.next().isSign("-");
      Piece term = parser.parse(Binding.SIGNED);
      pieces.add(term);
      terms.add(minus ? NormalForm.negativeOf(term.formula()) : term.formula());
    }
    return parser.over(new Formula.Sum(terms), Piece.Shape.OPEN, left.from(), pieces);
  }
}
