package rootwright.working.route;

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

  public Working {
    steps = List.copyOf(steps);
    conditions = List.copyOf(conditions);
  }

  /** The working of a route that went through. */
  public static Working of(RouteOn<?> route, Attempt.Worked worked) {
    return new Working(
        route.name(),
        worked.title(),
        route.teaches(),
        worked.steps(),
        worked.answer(),
        worked.conditions(),
        Cost.of(worked.steps()));
  }
}
