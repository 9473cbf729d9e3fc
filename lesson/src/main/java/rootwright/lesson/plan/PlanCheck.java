package rootwright.lesson.plan;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.UnreadableException;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.lesson.text.Phrase;
import rootwright.working.answer.Answer;
import rootwright.working.ask.ProblemReader;
import rootwright.working.problem.Problem;
import rootwright.working.problem.Statement;
import rootwright.working.route.Working;
import rootwright.working.solve.Solution;
import rootwright.working.step.Idea;
import rootwright.working.step.Step;
import rootwright.working.topic.Topics;

/** Turns a plan into a lesson that may be shown, or says at which lines it may not. */
public final class PlanCheck {

  private final Solver solver;
  private final Map<String, Worked> worked = new HashMap<>();
  private final Map<String, LineJudge> judges = new HashMap<>();

  /** Works a problem. */
  @FunctionalInterface
  public interface Solver {
    /**
     * Everything that can be said of a problem.
     *
     * @throws UnreadableException if it cannot be read
     */
    Solution solve(Problem problem) throws UnreadableException;
  }

  private record Worked(Problem problem, Solution solution) {}

  /** With somebody who works problems; every problem is worked once. */
  public PlanCheck(Solver solver) {
    this.solver = solver;
  }

  /**
   * The lesson of a plan.
   *
   * @throws BadPlanException if something in it is not so; names each line
   */
  public Lesson lesson(Plan plan) throws BadPlanException {
    List<Complaint> complaints = new ArrayList<>();
    List<LessonStep> steps = new ArrayList<>();
    if (!plan.topic().isEmpty() && Topics.named(plan.topic()).isEmpty()) {
      complaints.add(
          new Complaint(
              1,
              "There is no topic “%s”.".formatted(plan.topic()),
              "",
              "topics are "
                  + String.join(", ", Topics.ALL.stream().map(topic -> topic.name()).toList())));
    }
    for (PlanStep step : plan.steps()) {
      step(plan, step, complaints).ifPresent(steps::add);
    }
    if (!complaints.isEmpty()) {
      throw new BadPlanException(complaints);
    }
    return new Lesson(plan, steps);
  }

  private Optional<LessonStep> step(Plan plan, PlanStep step, List<Complaint> complaints) {
    if (!step.kind().ofProblem() || step.polynomial().isEmpty()) {
      return Optional.of(general(plan, step, complaints));
    }
    try {
      return Optional.of(problem(step, complaints));
    } catch (UnreadableException unreadable) {
      complaints.add(
          new Complaint(
              step.place(),
              "The problem cannot be read: " + unreadable.refusal().text(),
              unreadable.refusal().input(),
              unreadable.refusal().mend()));
      return Optional.empty();
    }
  }

  private LessonStep general(Plan plan, PlanStep step, List<Complaint> complaints) {
    LineJudge judge = judge(plan, step.fact());
    if (!step.fact().isEmpty() && Topics.fact(step.fact()).isEmpty()) {
      complaints.add(
          new Complaint(step.place(), "There is no fact “%s”.".formatted(step.fact()), "", ""));
    }
    LineCheck check = new LineCheck(judge, complaints);
    List<LessonLine> lines =
        step.lines().stream()
            .map(line -> check.look(line).line())
            .map(line -> step.kind() == StepKind.PROOF ? argued(line) : line)
            .toList();
    return lessonStep(step, Phrase.EMPTY, Optional.empty(), lines, plan.letters().roots());
  }

  /** The judge of the steps about one fact, or about the topic; made once, since it computes. */
  private LineJudge judge(Plan plan, String fact) {
    String key = fact + ";" + plan.topic() + ";" + plan.letters();
    LineJudge judge = judges.get(key);
    if (judge == null) {
      judge =
          Topics.fact(fact)
              .map(stated -> IdentityJudge.of(stated, plan.letters()))
              .or(
                  () ->
                      Topics.named(plan.topic())
                          .map(topic -> IdentityJudge.of(topic, plan.letters())))
              .orElseGet(() -> IdentityJudge.of(plan.letters()));
      judges.put(key, judge);
    }
    return judge;
  }

  /** In a proof a line of words is an argument, and marked so. */
  private static LessonLine argued(LessonLine line) {
    return line.shown().isPresent()
        ? line
        : new LessonLine(
            line.words(),
            line.shown(),
            line.because(),
            line.said(),
            LessonLine.Standing.ARGUMENT,
            line.slip());
  }

  private LessonStep problem(PlanStep step, List<Complaint> complaints) throws UnreadableException {
    Worked known = worked(step);
    List<Step> shown = route(step, known.solution(), complaints);
    LineCheck check =
        new LineCheck(new ProblemJudge(known.problem(), known.solution(), shown), complaints);
    List<LessonLine> lines = new ArrayList<>();
    Set<String> warned = new HashSet<>();
    for (PlanLine line : step.lines()) {
      LineCheck.Looked looked = check.look(line);
      Optional<SlipNote> note =
          step.kind() == StepKind.WARNING
              ? Optional.empty()
              : looked.idea().flatMap(idea -> note(known.solution(), idea, warned));
      lines.add(withNote(looked.line(), note));
    }
    if (!step.slip().isEmpty()) {
      warn(step, known.solution(), lines, complaints);
    }
    return lessonStep(
        step,
        statement(known.solution()),
        Optional.of(known.problem().polynomial()),
        lines,
        known.problem().roots());
  }

  private Worked worked(PlanStep step) throws UnreadableException {
    String key = step.polynomial() + ";" + step.find();
    Worked known = worked.get(key);
    if (known == null) {
      Problem problem = ProblemReader.read(Statement.of(step.polynomial(), step.find()));
      known = new Worked(problem, solver.solve(problem));
      worked.put(key, known);
    }
    return known;
  }

  /** The steps of the route that the plan names, or of the shortest. */
  static List<Step> route(PlanStep step, Solution solution, List<Complaint> complaints) {
    Optional<Working> named =
        solution.routes().stream()
            .filter(working -> step.route().isEmpty() || working.route().equals(step.route()))
            .findFirst();
    if (named.isEmpty() && !step.route().isEmpty()) {
      complaints.add(
          new Complaint(
              step.place(),
              "The route “%s” does not work this problem.".formatted(step.route()),
              step.polynomial() + " ; " + step.find(),
              "routes that do: "
                  + String.join(
                      ", ", solution.routes().stream().map(Working::route).distinct().toList())));
    }
    return named.map(Working::steps).orElse(List.of());
  }

  private static Optional<SlipNote> note(Solution solution, Idea idea, Set<String> warned) {
    return solution.slips().stream()
        .filter(slip -> slip.spot() == idea && warned.add(slip.name()))
        .findFirst()
        .map(slip -> new SlipNote(slip.name(), slip.text(), slip.value().formula()));
  }

  private static LessonLine withNote(LessonLine line, Optional<SlipNote> note) {
    return new LessonLine(
        line.words(), line.shown(), line.because(), line.said(), line.standing(), note);
  }

  /** The line of a warning that shows where the wrong turning leads here. */
  private static void warn(
      PlanStep step, Solution solution, List<LessonLine> lines, List<Complaint> complaints) {
    Optional<Solution.WrongTurning> slip =
        solution.slips().stream().filter(turning -> turning.name().equals(step.slip())).findFirst();
    if (slip.isEmpty()) {
      complaints.add(
          new Complaint(
              step.place(),
              "The slip “%s” does not show on this problem.".formatted(step.slip()),
              step.polynomial() + " ; " + step.find(),
              "slips that do: "
                  + String.join(
                      ", ",
                      solution.slips().stream()
                          .map(Solution.WrongTurning::name)
                          .distinct()
                          .toList())));
      return;
    }
    Formula wrong = slip.get().value().formula();
    Phrase compared =
        Phrase.words("Whoever forgets it gets ")
            .then("", Phrase.of(wrong))
            .then(" in place of ", answer(solution.answer()))
            .then("", Phrase.words("."));
    lines.add(
        new LessonLine(
            compared,
            Optional.empty(),
            Phrase.EMPTY,
            compared,
            LessonLine.Standing.CHECKED,
            Optional.of(new SlipNote(slip.get().name(), slip.get().text(), wrong))));
  }

  private static Phrase answer(Answer answer) {
    Phrase all = Phrase.EMPTY;
    for (Formula value : answer.alternatives()) {
      all = all.then(" or ", Phrase.of(value));
    }
    return all;
  }

  private static Phrase statement(Solution solution) {
    Formula polynomial = solution.given().stated();
    Formula equation =
        polynomial instanceof Formula.Relation
            ? polynomial
            : Formula.equation(polynomial, Formula.number(0));
    List<Formula> names = solution.given().roots().stream().map(Formula::name).toList();
    return Phrase.words("Let ")
        .then("", Phrase.of(names.size() == 1 ? names.get(0) : new Formula.Listing(names)))
        .then(names.size() == 1 ? " be the root of " : " be the roots of ", Phrase.of(equation))
        .then(". Find ", asked(solution.given().find()))
        .then("", Phrase.words("."));
  }

  /** An ask in words has its article: the discriminant, the polynomial with roots 1/r. */
  private static Phrase asked(Formula find) {
    if (!(find instanceof Formula.Application words) || words.function().length() < 4) {
      return Phrase.of(find);
    }
    String name = words.function().equals("reduce") ? "lower form of" : words.function();
    Phrase phrase = Phrase.words("the " + name);
    for (Formula argument : words.arguments()) {
      phrase = phrase.then(" ", Phrase.of(argument));
    }
    return phrase;
  }

  private static LessonStep lessonStep(
      PlanStep step,
      Phrase statement,
      Optional<Polynomial> polynomial,
      List<LessonLine> lines,
      List<String> roots) {
    return new LessonStep(
        step.kind(),
        step.title().isEmpty() ? step.kind().title() : step.title(),
        statement,
        polynomial,
        lines,
        step.figure(),
        step.seconds(),
        roots,
        step.place());
  }
}
