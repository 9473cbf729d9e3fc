package rootwright.working.sequence;

import java.util.List;
import rootwright.working.answer.Answer;
import rootwright.working.gate.Warning;
import rootwright.working.route.ClassProfile;
import rootwright.working.route.Working;
import rootwright.working.solve.Derivation;
import rootwright.working.solve.Given;
import rootwright.working.solve.SecondOpinion;
import rootwright.working.solve.SlipRunner;
import rootwright.working.solve.Solution;
import rootwright.working.solve.TwoChecks;
import rootwright.working.step.Idea;
import rootwright.working.step.Step;

/**
 * What was found about a sequence of power sums.
 *
 * @param kind the name of the kind of ask
 * @param route the name of the route whose lines these are
 * @param title what is done
 * @param teaches what a student learns from it
 * @param steps the lines; empty if there is no route
 * @param conditions closed facts that hold
 * @param wrong wrong turnings
 */
record SequenceFinding(
    String kind,
    Answer answer,
    String route,
    String title,
    String teaches,
    List<Step> steps,
    List<String> conditions,
    List<Warning> warnings,
    List<Wrong> wrong,
    SecondOpinion second) {

  /** A wrong turning and where it leads. */
  record Wrong(String name, String text, Answer value, Idea spot, int weight) {}

  SequenceFinding {
    steps = List.copyOf(steps);
    conditions = List.copyOf(conditions);
    warnings = List.copyOf(warnings);
    wrong = List.copyOf(wrong);
  }

  /** The solution, its lines put before both checks. */
  Solution solution(Given given, String statement, ClassProfile profile) {
    boolean shown = profile.has(route) && !steps.isEmpty();
    List<Step> confirmed = Derivation.confirmed("route " + route, steps, new TwoChecks()).steps();
    return Solution.of(kind, given, statement, answer, second)
        .withConditions(conditions)
        .withWarnings(warnings)
        .withRoutes(
            shown ? List.of(Working.of(route, title, teaches, confirmed, answer)) : List.of())
        .withDeclined(
            shown || steps.isEmpty()
                ? List.of()
                : List.of(
                    new Solution.DeclinedRoute(route, title, "this class does not have it yet")))
        .withSlips(
            new SlipRunner.Slipped(
                wrong.stream()
                    .filter(one -> !one.value().equals(answer))
                    .map(
                        one ->
                            new Solution.WrongTurning(
                                one.name(), one.text(), one.value(), one.spot(), one.weight()))
                    .toList(),
                wrong.stream()
                    .filter(one -> one.value().equals(answer))
                    .map(
                        one ->
                            new Solution.SilentSlip(
                                one.name(), "the right answer comes out here all the same"))
                    .toList()));
  }
}
