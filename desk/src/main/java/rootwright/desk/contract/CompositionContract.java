package rootwright.desk.contract;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import rootwright.composing.blueprint.Composed;
import rootwright.composing.blueprint.Composition;
import rootwright.composing.blueprint.Condition;
import rootwright.composing.climb.Climb;
import rootwright.composing.climb.ClimbStep;
import rootwright.composing.scan.ScanResult;
import rootwright.desk.table.Margin;

/** What came of an order, as one object. */
public final class CompositionContract {

  private CompositionContract() {}

  /** The object: the seed, the problems with options and hints, the counts, what would help. */
  public static ObjectNode of(Composition composition, FormulaForms forms) {
    ObjectNode node = JsonNodeFactory.instance.objectNode();
    node.put("seed", composition.blueprint().seed());
    node.put("ask", composition.blueprint().ask().words());
    node.put("ending", composition.ending().name().toLowerCase(Locale.ROOT).replace('_', '-'));
    node.put("exhausted", composition.exhausted());
    ArrayNode problems = node.putArray("problems");
    for (Composed composed : composition.problems()) {
      problems.add(problem(composed, forms));
    }
    node.setAll(counts(composition.counts(), composition.rejected()));
    ArrayNode conflicts = node.putArray("conflicts");
    composition.conflicts().forEach(conflicts::add);
    ArrayNode relaxations = node.putArray("relaxations");
    composition
        .relaxations()
        .forEach(
            relaxation -> relaxations.addObject().put("text", RelaxationInWords.of(relaxation)));
    return node;
  }

  /** A climb as one object: its problems in order, each with the ideas it adds. */
  public static ObjectNode of(Climb climb, FormulaForms forms) {
    ObjectNode node = JsonNodeFactory.instance.objectNode();
    ArrayNode problems = node.putArray("problems");
    for (ClimbStep step : climb.steps()) {
      ObjectNode problem = problem(step.composed(), forms);
      ArrayNode adds = problem.putArray("adds");
      step.adds().forEach(idea -> adds.add(idea.words()));
      problems.add(problem);
    }
    climb.missing().ifPresent(why -> node.put("missing", why));
    return node;
  }

  /** One composed problem with everything a sheet and a coach need. */
  public static ObjectNode problem(Composed composed, FormulaForms forms) {
    ObjectNode node = SolutionContract.of(composed.solution(), forms);
    // As it is typed, conditions and all, so that it can be worked, kept and varied as it is.
    node.put("polynomial", composed.statement().polynomial());
    node.put("find", composed.statement().find());
    Margin margin = Margin.of(composed);
    margin
        .level()
        .ifPresent(
            level ->
                node.putObject("level").put("number", level.number()).put("text", level.words()));
    ArrayNode good = node.putArray("good");
    composed.good().forEach(good::add);
    ArrayNode settled = node.putArray("settled");
    for (Condition condition : composed.conditions()) {
      settled
          .addObject()
          .put("condition", condition.words())
          .put("standing", condition.standing().words())
          .put("why", condition.why());
    }
    ArrayNode remarks = node.putArray("remarks");
    composed.remarks().forEach(remarks::add);
    node.setAll(ChoicesContract.of(composed.choices(), forms));
    ArrayNode hints = node.putArray("hints");
    margin.hints().forEach(rung -> hints.add(rung.text()));
    return node;
  }

  /**
   * What each wish left: {@code counts} of the scan, and by reason the problems {@code rejected}
   * when worked.
   */
  public static ObjectNode counts(
      List<ScanResult.FilterCount> filters, Map<String, Integer> turnedAway) {
    ObjectNode node = JsonNodeFactory.instance.objectNode();
    ArrayNode counts = node.putArray("counts");
    for (ScanResult.FilterCount count : filters) {
      counts
          .addObject()
          .put("filter", count.name())
          .put("text", count.explanation())
          .put("seen", count.seen())
          .put("rejected", count.rejected());
    }
    ArrayNode rejected = node.putArray("rejected");
    turnedAway.forEach(
        (reason, count) -> rejected.addObject().put("reason", reason).put("count", count));
    return node;
  }
}
