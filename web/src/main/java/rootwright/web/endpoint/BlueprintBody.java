package rootwright.web.endpoint;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.stream.Collectors;
import rootwright.composing.blueprint.Blueprint;
import rootwright.desk.table.ComposersTable;
import rootwright.desk.table.UnreadableBlueprintException;
import rootwright.web.reply.FaultException;

/** An order for the composer as the page sends it; the same words as in a file. */
final class BlueprintBody {

  private BlueprintBody() {}

  /**
   * Reads the order under {@code order}.
   *
   * @throws FaultException if a wish cannot be read
   */
  static Blueprint read(JsonNode body, ComposersTable table) {
    return read(body.path("order").toString(), table);
  }

  /**
   * Reads an order as YAML or JSON.
   *
   * @throws FaultException if a wish cannot be read
   */
  static Blueprint read(String text, ComposersTable table) {
    try {
      return table.readBlueprint(text);
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
