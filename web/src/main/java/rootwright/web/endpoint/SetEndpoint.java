package rootwright.web.endpoint;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.Map;
import java.util.Optional;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.Refusal;
import rootwright.algebra.notation.UnreadableException;
import rootwright.desk.Desk;
import rootwright.desk.contract.FormulaForms;
import rootwright.desk.contract.RefusalContract;
import rootwright.web.job.Budget;
import rootwright.web.job.Job;
import rootwright.web.job.Jobs;
import rootwright.working.problem.Statement;
import rootwright.working.solve.Given;

/** Sets what stands in the blanks as mathematics while it is typed; works nothing out. */
public final class SetEndpoint {

  private final Desk desk;
  private final Jobs readings;

  /** For this desk; {@code readings} has workers for what is being typed. */
  public SetEndpoint(Desk desk, Jobs readings) {
    this.desk = desk;
    this.readings = readings;
  }

  /**
   * Adds {@code POST /api/set}: for each blank its formula or the refusal with its place, the names
   * of the roots, and a refusal of the whole that belongs to no blank.
   */
  public void addTo(RoutesConfig routes) {
    routes.post("/api/set", this::set);
  }

  private void set(Context context) throws InterruptedException {
    JsonNode body = Reply.body(context);
    Job reading = readings.start(Budget.READING, progress -> set(body));
    Prompt.replyInTheEnd(context, reading, Budget.READING);
  }

  private ObjectNode set(JsonNode body) {
    Statement statement = StatementBody.read(body);
    ObjectNode reply = JsonNodeFactory.instance.objectNode();
    ObjectNode blanks = reply.putObject("blanks");
    Optional<Given> given = Optional.empty();
    Optional<Refusal> whole = Optional.empty();
    try {
      given = Optional.of(desk.given(statement));
    } catch (UnreadableException unreadable) {
      whole = Optional.of(unreadable.refusal());
    }
    BlankReader reader = new BlankReader(desk, statement, given);
    for (Map.Entry<String, JsonNode> blank : body.path("blanks").properties()) {
      try {
        BlankReader.Read read = reader.words(blank.getKey(), blank.getValue().asText());
        blanks.set(blank.getKey(), written(read.formula()).put("before", read.before()));
      } catch (UnreadableException unreadable) {
        blanks.set(blank.getKey(), RefusalContract.of(unreadable.refusal()));
      }
    }
    whole.ifPresent(refusal -> placed(refusal, body.path("blanks"), blanks));
    given.ifPresent(read -> roots(reply, read));
    return reply;
  }

  /** A refusal of the whole statement belongs to the blank that holds the offending place. */
  private static void placed(Refusal refusal, JsonNode texts, ObjectNode blanks) {
    for (Map.Entry<String, JsonNode> text : texts.properties()) {
      Optional<Refusal> here = within(refusal, text.getValue().asText());
      if (here.isPresent()) {
        blanks.set(text.getKey(), RefusalContract.of(here.get()));
        return;
      }
    }
  }

  /** The refusal as one of this part of its input, if the place lies in it. */
  private static Optional<Refusal> within(Refusal refusal, String text) {
    String part = text.strip();
    String input = refusal.input();
    int from = part.isEmpty() ? -1 : input.indexOf(part);
    if (from < 0) {
      return Optional.empty();
    }
    int before = input.codePointCount(0, from) - text.codePointCount(0, text.indexOf(part));
    int at = refusal.at() - before;
    if (at < 0 || at > text.codePointCount(0, text.length())) {
      return Optional.empty();
    }
    boolean whole = part.equals(input.strip());
    return Optional.of(
        new Refusal(
            refusal.code(),
            refusal.text(),
            text,
            at,
            refusal.expected(),
            whole ? refusal.mend() : ""));
  }

  private static void roots(ObjectNode reply, Given given) {
    var roots = reply.putArray("roots");
    given.roots().forEach(name -> roots.add(written(Formula.name(name)).put("text", name)));
    reply.put("unknown", given.unknown());
  }

  private static ObjectNode written(Formula formula) {
    ObjectNode node = JsonNodeFactory.instance.objectNode();
    FormulaForms.FOR_PAGES.write(node, formula);
    return node;
  }
}
