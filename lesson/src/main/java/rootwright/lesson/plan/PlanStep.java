package rootwright.lesson.plan;

import java.util.List;

/**
 * One step of a plan, all texts as typed, empty where absent.
 *
 * @param kind what it is for
 * @param title the title of its slides
 * @param fact the name of the fact that is stated or proved
 * @param polynomial of the problem
 * @param find what the problem asks
 * @param route the route by which it is worked; empty for the shortest
 * @param slip the wrong turning that is warned of
 * @param figure what is drawn: {@code roots}, {@code curve}, or {@code product A ; B}
 * @param seconds time left to try it
 * @param lines in order
 * @param place the line of the file, counted from 1; 0 if it never stood in one
 */
public record PlanStep(
    StepKind kind,
    String title,
    String fact,
    String polynomial,
    String find,
    String route,
    String slip,
    String figure,
    int seconds,
    List<PlanLine> lines,
    int place) {

  public PlanStep {
    lines = List.copyOf(lines);
  }

  /** A step without a problem or a fact. */
  public static PlanStep of(StepKind kind, String title, List<PlanLine> lines) {
    return new PlanStep(kind, title, "", "", "", "", "", "", 0, lines, 0);
  }

  /** The same about a fact. */
  public PlanStep about(String name) {
    return new PlanStep(
        kind, title, name, polynomial, find, route, slip, figure, seconds, lines, place);
  }

  /** The same about a problem. */
  public PlanStep about(String itsPolynomial, String itsFind, String itsRoute) {
    return new PlanStep(
        kind, title, fact, itsPolynomial, itsFind, itsRoute, slip, figure, seconds, lines, place);
  }

  /** The same with a wrong turning. */
  public PlanStep warningOf(String name) {
    return new PlanStep(
        kind, title, fact, polynomial, find, route, name, figure, seconds, lines, place);
  }

  /** The same with a figure. */
  public PlanStep drawing(String what) {
    return new PlanStep(
        kind, title, fact, polynomial, find, route, slip, what, seconds, lines, place);
  }

  /** The same with time to try it. */
  public PlanStep trying(int time) {
    return new PlanStep(
        kind, title, fact, polynomial, find, route, slip, figure, time, lines, place);
  }
}
