package rootwright.working.route;

import java.util.Comparator;
import java.util.List;
import rootwright.working.answer.Answer;
import rootwright.working.step.Cost;
import rootwright.working.step.Step;

/**
 * The steps of one route on one problem, every one confirmed.
 *
 * @param route the name of the route
 * @param title what is done
 * @param teaches what a student learns from it
 * @param steps the lines in order
 * @param answer where the last line ends
 * @param conditions what the lines needed and was found true
 * @param cost what it costs a student
 */
public record Working(
    String route,
    String title,
    String teaches,
    List<Step> steps,
    Answer answer,
    List<String> conditions,
    Cost cost) {

  /** By cost; of two that cost the same, by name, so that the order is always the same. */
  public static final Comparator<Working> CHEAPEST_FIRST =
      Comparator.comparing(Working::cost).thenComparing(Working::route);

  public Working {
    steps = List.copyOf(steps);
    conditions = List.copyOf(conditions);
  }

  /** A working that needed no condition, with its cost. */
  public static Working of(
      String route, String title, String teaches, List<Step> steps, Answer answer) {
    return new Working(route, title, teaches, steps, answer, List.of(), Cost.of(steps));
  }

  /** The working of a route that went through. */
  public static Working of(RouteOn<?> route, Attempt.Worked worked) {
    return of(route.name(), worked.title(), route.teaches(), worked.steps(), worked.answer())
        .withConditions(worked.conditions());
  }

  /** The same under these conditions. */
  public Working withConditions(List<String> needed) {
    return new Working(route, title, teaches, steps, answer, needed, cost);
  }

  /** The same under another title. */
  public Working withTitle(String other) {
    return new Working(route, other, teaches, steps, answer, conditions, cost);
  }

  /** The same with other lines, at their cost. */
  public Working withSteps(List<Step> lines) {
    return new Working(route, title, teaches, lines, answer, conditions, Cost.of(lines));
  }

  /** The same ending in another answer. */
  public Working withAnswer(Answer other) {
    return new Working(route, title, teaches, steps, other, conditions, cost);
  }
}
