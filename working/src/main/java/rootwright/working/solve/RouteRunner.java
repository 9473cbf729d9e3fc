package rootwright.working.solve;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import rootwright.algebra.stop.Stop;
import rootwright.working.answer.Answer;
import rootwright.working.route.Attempt;
import rootwright.working.route.ClassProfile;
import rootwright.working.route.RouteOn;
import rootwright.working.route.Working;
import rootwright.working.step.Claim;
import rootwright.working.step.Step;

/** Tries routes on an ask and keeps those whose every line both checks confirm. */
public final class RouteRunner {

  private final TwoChecks checks;

  /** With the checks to use, for one ask. */
  public RouteRunner(TwoChecks checks) {
    this.checks = checks.forOneProblem();
  }

  /** Workings, cheapest first, and what declined. */
  public record Routed(List<Working> workings, List<Solution.DeclinedRoute> declined) {
    public Routed {
      workings = List.copyOf(workings);
      declined = List.copyOf(declined);
    }
  }

  /**
   * Tries the routes that the class has.
   *
   * @throws CheckFailedException if a line is refuted, or a route ends in another answer
   */
  public <Q> Routed run(
      List<? extends RouteOn<Q>> routes, Q asked, Answer answer, ClassProfile profile) {
    List<Working> workings = new ArrayList<>();
    List<Solution.DeclinedRoute> declined = new ArrayList<>();
    Set<Claim> confirmed = new HashSet<>();
    for (RouteOn<Q> route : routes) {
      Stop.ifUnwanted();
      if (!profile.has(route.name())) {
        declined.add(decline(route, "this class does not have it yet"));
        continue;
      }
      Attempt attempt = route.attempt(asked);
      if (attempt instanceof Attempt.Worked worked) {
        requireSameAnswer(route, worked, answer);
        if (allLinesConfirmed(route, worked, confirmed)) {
          workings.add(Working.of(route, worked));
        } else {
          declined.add(decline(route, "its numbers are too large for both checks to confirm"));
        }
      } else {
        declined.add(decline(route, ((Attempt.Declined) attempt).why()));
      }
    }
    workings.sort(Working.CHEAPEST_FIRST);
    return new Routed(workings, declined);
  }

  /** Routes have lines in common, such as what e₁ is; one that is confirmed stays so. */
  private boolean allLinesConfirmed(RouteOn<?> route, Attempt.Worked worked, Set<Claim> confirmed) {
    for (int k = 0; k < worked.steps().size(); k++) {
      Step step = worked.steps().get(k);
      if (!step.isArgument() && !confirmed.contains(step.claim())) {
        String place = "route %s, line %d".formatted(route.name(), k + 1);
        if (checks.confirm(place, step.shown(), step.claim()).isEmpty()) {
          return false;
        }
        confirmed.add(step.claim());
      }
    }
    return true;
  }

  private static void requireSameAnswer(RouteOn<?> route, Attempt.Worked worked, Answer answer) {
    if (!worked.answer().equals(answer)) {
      throw new CheckFailedException(
          "the end of route " + route.name(),
          worked.steps().get(worked.steps().size() - 1).shown(),
          "it ends in %s where the answer is %s".formatted(worked.answer(), answer));
    }
  }

  private static Solution.DeclinedRoute decline(RouteOn<?> route, String why) {
    return new Solution.DeclinedRoute(route.name(), route.title(), why);
  }
}
