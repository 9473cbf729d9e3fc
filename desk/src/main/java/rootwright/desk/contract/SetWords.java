package rootwright.desk.contract;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import rootwright.press.deliverable.StatementPieces;
import rootwright.press.document.Piece;
import rootwright.working.solve.Solution;

/**
 * A sentence with its formulas set: an array of pieces, each either {@code {"text"}} alone or a
 * formula in all notations of a page.
 */
final class SetWords {

  private SetWords() {}

  /** The statement of a solution. */
  static ArrayNode statement(Solution solution) {
    ArrayNode pieces = JsonNodeFactory.instance.arrayNode();
    for (Piece piece : StatementPieces.of(solution)) {
      ObjectNode node = pieces.addObject();
      if (piece instanceof Piece.Mathematics mathematics) {
        FormulaForms.FOR_PAGES.write(node, mathematics.formula());
      } else if (piece instanceof Piece.Words words) {
        node.put("text", words.text());
      }
    }
    return pieces;
  }
}
