package rootwright.desk.contract;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.PlainWriter;
import rootwright.working.review.LineFinding;
import rootwright.working.review.Review;
import rootwright.working.review.SlipMatch;
import rootwright.working.solve.Given;

/**
 * Somebody's working, judged, as one object: {@code lines} [{{@code line, text, read?, verdict,
 * reason, slips}}], {@code firstWrong} (the number of a line, or null), {@code end}.
 */
public final class ReviewContract {

  private ReviewContract() {}

  /** The object, with formulas in these notations. */
  public static ObjectNode of(Review review, FormulaForms forms) {
    ObjectNode node = JsonNodeFactory.instance.objectNode();
    Given given = review.given();
    node.put("polynomial", PlainWriter.write(given.stated()));
    node.put("find", PlainWriter.write(given.find()));
    ArrayNode lines = node.putArray("lines");
    for (LineFinding finding : review.lines()) {
      line(lines.addObject(), finding, forms);
    }
    node.putNull("firstWrong");
    review.firstWrong().ifPresent(wrong -> node.put("firstWrong", wrong.number()));
    node.putObject("end").put("code", review.end().code()).put("text", review.end().words());
    return node;
  }

  private static void line(ObjectNode node, LineFinding finding, FormulaForms forms) {
    node.put("line", finding.number()).put("text", finding.text());
    finding.shown().ifPresent(shown -> read(node, shown, forms));
    node.put("verdict", finding.verdict().code())
        .put("words", finding.verdict().words())
        .put("reason", finding.reason());
    ArrayNode slips = node.putArray("slips");
    for (SlipMatch slip : finding.slips()) {
      slips.addObject().put("name", slip.name()).put("text", slip.text());
    }
  }

  private static void read(ObjectNode node, Formula shown, FormulaForms forms) {
    node.put("read", PlainWriter.write(shown));
    if (forms == FormulaForms.FOR_PAGES) {
      forms.write(node.putObject("readSet"), shown);
    }
  }
}
