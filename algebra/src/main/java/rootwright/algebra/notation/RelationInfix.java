package rootwright.algebra.notation;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** A chain of comparisons. */
final class RelationInfix implements Infix {

  private static final Map<String, Formula.Comparison> COMPARISONS =
      Map.of(
          "=", Formula.Comparison.EQUAL,
          "!=", Formula.Comparison.NOT_EQUAL,
          "<", Formula.Comparison.LESS,
          "<=", Formula.Comparison.AT_MOST,
          ">", Formula.Comparison.GREATER,
          ">=", Formula.Comparison.AT_LEAST,
          "≡", Formula.Comparison.CONGRUENT);

  static Set<String> comparisons() {
    return COMPARISONS.keySet();
  }

  @Override
  public int binding() {
    return Binding.RELATION;
  }

  @Override
  public Piece read(Parser parser, Piece left) throws UnreadableException {
    List<Piece> pieces = new ArrayList<>(List.of(left));
    List<Formula> sides = new ArrayList<>(List.of(left.formula()));
    List<Formula.Comparison> between = new ArrayList<>();
    while (COMPARISONS.containsKey(parser.peek().text())) {
      between.add(COMPARISONS.getOrDefault(parser.next().text(), Formula.Comparison.EQUAL));
      Piece side = parser.parse(Binding.SUM);
      pieces.add(side);
      sides.add(side.formula());
    }
    return parser.over(
        new Formula.Relation(sides, between), Piece.Shape.RELATION, left.from(), pieces);
  }
}
