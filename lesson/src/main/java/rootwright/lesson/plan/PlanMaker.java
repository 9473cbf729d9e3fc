package rootwright.lesson.plan;

import java.util.ArrayList;
import java.util.List;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.PlainWriter;
import rootwright.algebra.notation.UnreadableException;
import rootwright.working.ask.ProblemReader;
import rootwright.working.problem.Problem;
import rootwright.working.problem.Statement;
import rootwright.working.proof.Boundary;
import rootwright.working.proof.CheckedLine;
import rootwright.working.proof.Fact;
import rootwright.working.proof.Letters;
import rootwright.working.proof.Proof;
import rootwright.working.proof.ProofLine;
import rootwright.working.proof.ProofWriter;
import rootwright.working.solve.Solution;
import rootwright.working.step.Step;
import rootwright.working.topic.Exercise;
import rootwright.working.topic.Topic;

/** Makes the plan of a lesson from a topic and problems. */
public final class PlanMaker {

  private final PlanCheck.Solver solver;

  /** With somebody who works problems. */
  public PlanMaker(PlanCheck.Solver solver) {
    this.solver = solver;
  }

  /**
   * What a coach orders.
   *
   * @param topic what it is about
   * @param letters the roots with which facts are written out
   * @param minutes how long it may take
   * @param pace how fast it is spoken
   * @param length of the proofs
   * @param exercises the worked example first, the one to try last; those of the topic if empty
   */
  public record Order(
      Topic topic,
      Letters letters,
      int minutes,
      Pace pace,
      Proof.Length length,
      List<Exercise> exercises) {
    public Order {
      exercises = exercises.isEmpty() ? topic.exercises() : List.copyOf(exercises);
    }
  }

  /**
   * The plan: aim, then each fact with its proof and its boundary, the warning, a worked example,
   * the trick, harder ones, and one to try.
   *
   * @throws UnreadableException if a problem cannot be read
   */
  public Plan plan(Order order) throws UnreadableException {
    Topic topic = order.topic();
    List<PlanStep> steps = new ArrayList<>();
    steps.add(aim(topic));
    for (Fact fact : topic.facts()) {
      PlanStep stated = fact(fact, order.letters());
      steps.add(fact.equals(topic.facts().get(0)) ? stated.drawing(topic.figure()) : stated);
      steps.add(proof(fact, order));
      steps.add(boundary(fact));
    }
    List<Exercise> exercises = order.exercises();
    steps.add(warning(topic, exercises));
    steps.add(example(StepKind.EXAMPLE, exercises.get(0)).drawing("curve"));
    steps.add(trick(topic, order.letters()));
    for (int k = 1; k < exercises.size() - 1; k++) {
      steps.add(example(StepKind.HARDER, exercises.get(k)));
    }
    if (exercises.size() > 1) {
      PlanStep left = example(StepKind.TRY, exercises.get(exercises.size() - 1));
      steps.add(left.trying(Math.min(60, 20 + 5 * left.lines().size())));
    }
    return new Plan(
        topic.title(),
        topic.name(),
        order.letters(),
        order.minutes(),
        order.pace(),
        topic.aim(),
        topic.known(),
        steps,
        0);
  }

  private static PlanStep aim(Topic topic) {
    List<PlanLine> lines = new ArrayList<>();
    lines.add(PlanLine.words(topic.aim()));
    lines.add(PlanLine.words("You need: " + String.join("; ", topic.known()) + "."));
    return PlanStep.of(StepKind.AIM, topic.title(), lines);
  }

  private static PlanStep fact(Fact fact, Letters letters) {
    List<PlanLine> lines = new ArrayList<>();
    lines.add(PlanLine.words(letters.fill(fact.statement())));
    fact.conditions().forEach(condition -> lines.add(PlanLine.words("Needed: " + condition + ".")));
    lines.add(
        PlanLine.written(
            "For the roots %s:".formatted(String.join(", ", letters.roots())),
            PlainWriter.write(ProofWriter.statement(fact, letters))));
    return PlanStep.of(StepKind.FACT, fact.title(), lines).about(fact.name());
  }

  private static PlanStep proof(Fact fact, Order order) {
    List<PlanLine> lines = new ArrayList<>();
    for (CheckedLine line : ProofWriter.lines(fact, order.letters(), order.length())) {
      lines.add(
          line.shown()
              .map(shown -> PlanLine.written(line.words(), PlainWriter.write(shown)))
              .orElseGet(() -> PlanLine.words(line.words())));
    }
    return PlanStep.of(StepKind.PROOF, "", lines).about(fact.name());
  }

  private static PlanStep boundary(Fact fact) {
    Boundary boundary = fact.boundary();
    List<PlanLine> lines = new ArrayList<>();
    lines.add(PlanLine.words("Leave out: " + boundary.condition() + "."));
    if (boundary.outcome() instanceof Boundary.Outcome.Different different) {
      lines.add(PlanLine.written(boundary.words(), PlainWriter.write(different.unequal())));
    } else {
      lines.add(PlanLine.words(boundary.words()));
    }
    return PlanStep.of(StepKind.BOUNDARY, "", lines).about(fact.name());
  }

  /** The warning, on the first problem on which its slip shows. */
  private PlanStep warning(Topic topic, List<Exercise> exercises) throws UnreadableException {
    PlanStep step =
        PlanStep.of(StepKind.WARNING, "", List.of(PlanLine.words(topic.warning().words())));
    for (Exercise exercise : exercises) {
      boolean shows =
          solved(exercise).slips().stream()
              .anyMatch(slip -> slip.name().equals(topic.warning().slip()));
      if (shows) {
        return step.about(exercise.polynomial(), exercise.find(), "")
            .warningOf(topic.warning().slip());
      }
    }
    return step;
  }

  private PlanStep trick(Topic topic, Letters letters) {
    List<PlanLine> lines = new ArrayList<>();
    for (ProofLine line : topic.trick().lines()) {
      String words = letters.fill(line.words());
      lines.add(
          line.claim()
              .map(claim -> PlanLine.written(words, PlainWriter.write(claim.in(letters).shown())))
              .orElseGet(() -> PlanLine.words(words)));
    }
    return PlanStep.of(StepKind.TRICK, topic.trick().title(), lines);
  }

  private PlanStep example(StepKind kind, Exercise exercise) throws UnreadableException {
    Solution solution = solved(exercise);
    PlanStep empty =
        PlanStep.of(kind, "", List.of())
            .about(exercise.polynomial(), exercise.find(), exercise.route());
    List<PlanLine> lines =
        PlanCheck.route(empty, solution, new ArrayList<>()).stream()
            .flatMap(step -> lines(step).stream())
            .toList();
    return PlanStep.of(kind, "", lines)
        .about(exercise.polynomial(), exercise.find(), exercise.route());
  }

  /** The lines of a step: a formula and the numbers put into it are two lines, as with chalk. */
  private static List<PlanLine> lines(Step step) {
    List<Formula> parts = Chain.parts(step);
    if (parts.isEmpty()) {
      return List.of(line(step, step.shown(), step.reason()));
    }
    return List.of(
        line(step, parts.get(0), step.reason()), line(step, parts.get(1), "with the numbers"));
  }

  private static PlanLine line(Step step, Formula shown, String reason) {
    String written = PlainWriter.write(shown);
    return step.isArgument()
        ? new PlanLine("", "", written, reason, "", 0)
        : new PlanLine("", written, "", reason, "", 0);
  }

  private Solution solved(Exercise exercise) throws UnreadableException {
    Problem problem = ProblemReader.read(Statement.of(exercise.polynomial(), exercise.find()));
    return solver.solve(problem);
  }
}
