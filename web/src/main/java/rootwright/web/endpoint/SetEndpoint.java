package rootwright.web.endpoint;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.Map;
import java.util.Optional;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.FormulaReader;
import rootwright.algebra.notation.Refusal;
import rootwright.algebra.notation.UnreadableException;
import rootwright.desk.Desk;
import rootwright.desk.contract.FormulaForms;
import rootwright.desk.contract.RefusalContract;
import rootwright.working.problem.Problem;
import rootwright.working.problem.Statement;

/** Sets what stands in the blanks as mathematics while it is typed; works nothing out. */
public final class SetEndpoint {

  /** An ask that says nothing about root names, to read a polynomial alone. */
  private static final String ANY_ASK = "discriminant";

  private final Desk desk;

  /** For this desk. */
  public SetEndpoint(Desk desk) {
    this.desk = desk;
  }

  /**
   * Adds {@code POST /api/set}: for each blank its formula or the refusal with its place, and the
   * names of the roots.
   */
  public void addTo(RoutesConfig routes) {
    routes.post("/api/set", this::set);
  }

  private void set(Context context) {
    JsonNode body = Reply.body(context);
    ObjectNode reply = JsonNodeFactory.instance.objectNode();
    ObjectNode blanks = reply.putObject("blanks");
    Optional<Problem> problem = Optional.empty();
    Optional<Refusal> whole = Optional.empty();
    Statement statement = StatementBody.read(body);
    try {
      problem = Optional.of(desk.read(statement));
    } catch (UnreadableException unreadable) {
      whole = Optional.of(unreadable.refusal());
    }
    for (Map.Entry<String, JsonNode> blank : body.path("blanks").properties()) {
      blanks.set(
          blank.getKey(), blank(blank.getKey(), blank.getValue().asText(), statement, problem));
    }
    whole.ifPresent(refusal -> placed(refusal, body.path("blanks"), blanks));
    problem.ifPresent(read -> roots(reply, read));
    Reply.json(context, reply);
  }

  private ObjectNode blank(
      String name, String text, Statement statement, Optional<Problem> problem) {
    try {
      if (problem.isPresent() && name.equals("polynomial")) {
        return written(problem.get().stated());
      }
      if (problem.isPresent() && text.strip().equals(statement.find().strip())) {
        return written(problem.get().ask());
      }
      return written(
          name.equals("polynomial")
              ? desk.read(Statement.of(text, ANY_ASK)).stated()
              : FormulaReader.formula(text));
    } catch (UnreadableException unreadable) {
      return RefusalContract.of(unreadable.refusal());
    }
  }

  /** A refusal of the whole statement belongs to the blank that holds the offending text. */
  private static void placed(Refusal refusal, JsonNode texts, ObjectNode blanks) {
    for (Map.Entry<String, JsonNode> text : texts.properties()) {
      if (text.getValue().asText().strip().equals(refusal.input().strip())) {
        blanks.set(text.getKey(), RefusalContract.of(refusal));
        return;
      }
    }
  }

  private static void roots(ObjectNode reply, Problem problem) {
    var roots = reply.putArray("roots");
    problem.roots().forEach(name -> roots.add(written(Formula.name(name)).put("text", name)));
  }

  private static ObjectNode written(Formula formula) {
    ObjectNode node = JsonNodeFactory.instance.objectNode();
    FormulaForms.FOR_PAGES.write(node, formula);
    return node;
  }
}
