package rootwright.web.endpoint;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.stream.Collectors;
import rootwright.composing.blueprint.Blueprint;
import rootwright.composing.blueprint.PolynomialWish;
import rootwright.desk.table.ComposersTable;
import rootwright.desk.table.UnreadableBlueprintException;
import rootwright.web.reply.FaultException;

/** An order for the composer as the page sends it; the same words as in a file. */
final class BlueprintBody {

  private BlueprintBody() {}

  /**
   * Reads the order. A single lead is the largest one, as the page asks for it.
   *
   * @throws FaultException if a wish cannot be read
   */
  static Blueprint read(JsonNode body, ComposersTable table) {
    try {
      Blueprint order = table.readBlueprint(body.toString());
      PolynomialWish wish = order.polynomial();
      return order.withPolynomial(
          wish.leastLead() == wish.largestLead()
              ? wish.withLead(1, Math.min(wish.largestLead(), wish.size()))
              : wish);
    } catch (UnreadableBlueprintException unreadable) {
      throw new FaultException(
          422,
          "wish-unreadable",
          unreadable.faults().stream()
              .map(
                  fault -> "The wish cannot be read: %s; %s.".formatted(fault.text(), fault.mend()))
              .collect(Collectors.joining(" ")));
    }
  }
}
