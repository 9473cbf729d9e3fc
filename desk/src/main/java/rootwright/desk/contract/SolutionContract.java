package rootwright.desk.contract;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Locale;
import rootwright.algebra.notation.PlainWriter;
import rootwright.working.gate.Warning;
import rootwright.working.gate.WarningCode;
import rootwright.working.route.Working;
import rootwright.working.solve.SecondOpinion;
import rootwright.working.solve.Solution;
import rootwright.working.step.Cost;
import rootwright.working.step.Step;

/** Everything about one problem as one object. */
public final class SolutionContract {

  private SolutionContract() {}

  /** The object, with formulas in these notations. */
  public static ObjectNode of(Solution solution, FormulaForms forms) {
    ObjectNode node = JsonNodeFactory.instance.objectNode();
    node.put("kind", solution.kind());
    node.put("polynomial", PlainWriter.write(solution.given().polynomial()));
    node.put("unknown", solution.given().unknown());
    strings(node.putArray("roots"), solution.given().roots());
    node.put("find", PlainWriter.write(solution.given().find()));
    if (!solution.given().conditions().isEmpty()) {
      ArrayNode given = node.putArray("given");
      solution.given().conditions().forEach(condition -> given.add(PlainWriter.write(condition)));
    }
    strings(node.putArray("reading"), solution.given().reading());
    node.put("statement", solution.statement());
    if (forms == FormulaForms.FOR_PAGES) {
      node.set("statementSet", SetWords.statement(solution));
      forms.write(node.putObject("polynomialSet"), solution.given().polynomial());
      forms.write(node.putObject("findSet"), solution.given().find());
    }
    ObjectNode answer = AnswerContract.of(solution.answer(), forms);
    node.set("answer", answer);
    solution
        .reduced()
        .ifPresent(
            reduced -> {
              answer.put("reduced", PlainWriter.write(reduced.formula()));
              if (forms == FormulaForms.FOR_PAGES) {
                forms.write(answer.putObject("reducedSet"), reduced.formula());
              }
            });
    strings(node.putArray("conditions"), solution.conditions());
    ArrayNode warnings = node.putArray("warnings");
    warnings(warnings, solution.warnings());
    if (forms == FormulaForms.FOR_SCRIPTS) {
      // A page shows the readings themselves; a script may look for warnings only.
      readings(warnings, solution.given().reading());
    }
    ArrayNode routes = node.putArray("routes");
    for (Working working : solution.routes()) {
      route(routes.addObject(), working, forms);
    }
    ArrayNode declined = node.putArray("declined");
    for (Solution.DeclinedRoute route : solution.declined()) {
      declined
          .addObject()
          .put("name", route.name())
          .put("title", route.title())
          .put("why", route.why());
    }
    slips(node, solution, forms);
    ObjectNode checks = node.putObject("checks");
    checks.put("exact", true);
    checks.set("second", second(solution.second()));
    checks.set("numeric", second(solution.second()));
    return node;
  }

  /** A problem as one line of a list on a page: its statement and its answer, set. */
  public static ObjectNode line(Solution solution) {
    ObjectNode node = JsonNodeFactory.instance.objectNode();
    node.set("statementSet", SetWords.statement(solution));
    node.set("answer", AnswerContract.of(solution.answer(), FormulaForms.FOR_PAGES));
    return node;
  }

  private static void warnings(ArrayNode array, List<Warning> warnings) {
    for (Warning warning : warnings) {
      array.addObject().put("code", warning.code().code()).put("text", warning.text());
    }
  }

  private static void readings(ArrayNode array, List<String> readings) {
    for (String reading : readings) {
      array.addObject().put("code", WarningCode.READ_AS.code()).put("text", reading);
    }
  }

  private static void route(ObjectNode node, Working working, FormulaForms forms) {
    node.put("name", working.route());
    node.put("title", working.title());
    node.put("teaches", working.teaches());
    Cost cost = working.cost();
    node.putObject("cost")
        .put("lines", cost.lines())
        .put("ideas", cost.ideas())
        .put("bits", cost.bits())
        .put("unwritten", cost.unwritten())
        .put("total", cost.total());
    strings(node.putArray("conditions"), working.conditions());
    ArrayNode steps = node.putArray("steps");
    for (Step step : working.steps()) {
      ObjectNode line = steps.addObject();
      forms.write(line, step.shown());
      line.put("reason", step.reason());
      line.put("idea", code(step.idea()));
      line.put("checked", !step.isArgument());
      line.put("argument", step.isArgument());
    }
    node.put("answer", PlainWriter.write(working.answer().formula()));
  }

  private static void slips(ObjectNode node, Solution solution, FormulaForms forms) {
    ArrayNode slips = node.putArray("slips");
    for (Solution.WrongTurning turning : solution.slips()) {
      ObjectNode slip = slips.addObject();
      slip.put("name", turning.name());
      slip.put("text", turning.text());
      slip.put("value", PlainWriter.write(turning.value().formula()));
      slip.put("spot", code(turning.spot()));
      if (forms == FormulaForms.FOR_PAGES) {
        forms.write(slip.putObject("valueSet"), turning.value().formula());
      }
    }
    ArrayNode silent = node.putArray("silent");
    for (Solution.SilentSlip slip : solution.silent()) {
      silent.addObject().put("name", slip.name()).put("why", slip.why());
    }
  }

  private static ObjectNode second(SecondOpinion second) {
    ObjectNode node = JsonNodeFactory.instance.objectNode();
    node.put("method", second.method());
    node.put("agrees", second.agrees());
    second.digits().ifPresent(digits -> node.put("digits", digits));
    return node;
  }

  private static String code(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  private static void strings(ArrayNode array, List<String> strings) {
    strings.forEach(array::add);
  }
}
