package rootwright.working.solve;

import java.util.List;
import java.util.Optional;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.PolynomialFormula;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.working.answer.Answer;
import rootwright.working.gate.Warning;
import rootwright.working.route.Working;
import rootwright.working.step.Idea;

/**
 * Everything that can be said of one problem, every claim in it confirmed by both checks.
 *
 * @param kind the name of the kind of ask
 * @param given what was given and asked
 * @param statement the problem in words, as a sheet would print it
 * @param answer the answer
 * @param reduced for an ask in exactly one root r: the polynomial in r of lower degree it equals
 * @param conditions what must hold for the ask to make sense, and does
 * @param warnings what the coach should know
 * @param routes workings, cheapest first
 * @param declined routes that do not apply, with the reason
 * @param slips wrong turnings that show
 * @param silent wrong turnings that lead to the right answer
 * @param second the second opinion
 */
public record Solution(
    String kind,
    Given given,
    String statement,
    Answer answer,
    Optional<Reduced> reduced,
    List<String> conditions,
    List<Warning> warnings,
    List<Working> routes,
    List<DeclinedRoute> declined,
    List<WrongTurning> slips,
    List<SilentSlip> silent,
    SecondOpinion second) {

  public Solution {
    conditions = List.copyOf(conditions);
    warnings = List.copyOf(warnings);
    routes = List.copyOf(routes);
    declined = List.copyOf(declined);
    slips = List.copyOf(slips);
    silent = List.copyOf(silent);
  }

  /** An answer of which nothing more is said yet. */
  public static Solution of(
      String kind, Given given, String statement, Answer answer, SecondOpinion second) {
    return new Solution(
        kind,
        given,
        statement,
        answer,
        Optional.empty(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        second);
  }

  /**
   * There is no answer, so there is nothing to work and nothing to check.
   *
   * @param why a sentence without a point, as for {@link Answer.None}
   */
  public static Solution none(String kind, Given given, String statement, String why) {
    return of(kind, given, statement, new Answer.None(why), SecondOpinion.NOTHING_TO_CHECK);
  }

  /** The same for an ask that is equal to an expression of lower degree in one root. */
  public Solution withReduced(Optional<Reduced> to) {
    return new Solution(
        kind,
        given,
        statement,
        answer,
        to,
        conditions,
        warnings,
        routes,
        declined,
        slips,
        silent,
        second);
  }

  /** The same under these conditions. */
  public Solution withConditions(List<String> held) {
    return new Solution(
        kind, given, statement, answer, reduced, held, warnings, routes, declined, slips, silent,
        second);
  }

  /** The same with these warnings in the place of its own. */
  public Solution withWarnings(List<Warning> known) {
    return new Solution(
        kind,
        given,
        statement,
        answer,
        reduced,
        conditions,
        known,
        routes,
        declined,
        slips,
        silent,
        second);
  }

  /** The same with these workings in the place of its own, cheapest first. */
  public Solution withRoutes(List<Working> workings) {
    return new Solution(
        kind,
        given,
        statement,
        answer,
        reduced,
        conditions,
        warnings,
        workings,
        declined,
        slips,
        silent,
        second);
  }

  /** The same with these routes that do not apply in the place of its own. */
  public Solution withDeclined(List<DeclinedRoute> turnedDown) {
    return new Solution(
        kind,
        given,
        statement,
        answer,
        reduced,
        conditions,
        warnings,
        routes,
        turnedDown,
        slips,
        silent,
        second);
  }

  /** The same with these wrong turnings that show, none of them silent. */
  public Solution withSlips(List<WrongTurning> showing) {
    return withSlips(new SlipRunner.Slipped(showing, List.of()));
  }

  /** The same with these wrong turnings, those that show and those that are silent. */
  public Solution withSlips(SlipRunner.Slipped slipped) {
    return new Solution(
        kind,
        given,
        statement,
        answer,
        reduced,
        conditions,
        warnings,
        routes,
        declined,
        slipped.showing(),
        slipped.silent(),
        second);
  }

  /** The same with the workings and the wrong turnings that were found. */
  public Solution with(RouteRunner.Routed routed, SlipRunner.Slipped slipped) {
    return withRoutes(routed.workings()).withDeclined(routed.declined()).withSlips(slipped);
  }

  /** The same as the solution of what was given and asked in truth, in these words. */
  public Solution restated(Given truly, String sentence) {
    return new Solution(
        kind,
        truly,
        sentence,
        answer,
        reduced,
        conditions,
        warnings,
        routes,
        declined,
        slips,
        silent,
        second);
  }

  /** The same solution, shown as the answer to this ask, put in these words. */
  public Solution asked(Formula find, String sentence) {
    return restated(given.withFind(find), sentence);
  }

  /** The remainder of an expression in one root: {@code polynomial} in the named root. */
  public record Reduced(Polynomial polynomial, String root) {
    /** As a formula. */
    public Formula formula() {
      return PolynomialFormula.of(polynomial, root);
    }
  }

  /** A route that does not apply, and why. */
  public record DeclinedRoute(String name, String title, String why) {}

  /** A wrong turning with the wrong answer it gives. */
  public record WrongTurning(String name, String text, Answer value, Idea spot, int weight) {
    /** One that gives a number. */
    public static WrongTurning number(
        String name, String text, Rational value, Idea spot, int weight) {
      return new WrongTurning(name, text, Answer.exact(value), spot, weight);
    }
  }

  /** A wrong turning that leads to the right answer here, and why it does not show. */
  public record SilentSlip(String name, String why) {}
}
