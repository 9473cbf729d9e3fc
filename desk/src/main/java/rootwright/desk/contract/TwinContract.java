package rootwright.desk.contract;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Optional;
import rootwright.bank.shelf.ShelfTwin;
import rootwright.composing.twin.Twin;

/** How problems are related, as one object. */
public final class TwinContract {

  private TwinContract() {}

  /** Two problems: {@code {related, relation, text, same}}, the last three if they are. */
  public static ObjectNode of(Optional<Twin> twin) {
    ObjectNode node = JsonNodeFactory.instance.objectNode().put("related", twin.isPresent());
    twin.ifPresent(found -> write(found, node));
    return node;
  }

  /** A problem and a shelf: {@code {related, twins}}, each with its line and its problem. */
  public static ObjectNode of(List<ShelfTwin> twins) {
    ObjectNode node = JsonNodeFactory.instance.objectNode().put("related", !twins.isEmpty());
    ArrayNode all = node.putArray("twins");
    for (ShelfTwin found : twins) {
      ObjectNode each = all.addObject().put("line", found.entry().line());
      write(found.twin(), each.put("problem", found.entry().text()));
    }
    return node;
  }

  /** A relation in words; one that does not keep a problem from being taken is only reported. */
  public static String words(Twin twin) {
    return twin.relation().isRefused() ? twin.words() : twin.words() + " (reported only)";
  }

  private static void write(Twin twin, ObjectNode node) {
    node.put("relation", twin.relation().words())
        .put("text", twin.words())
        .put("same", twin.relation().isRefused());
  }
}
