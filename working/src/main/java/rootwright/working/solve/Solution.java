package rootwright.working.solve;

import java.util.List;
import java.util.Optional;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.working.answer.Answer;
import rootwright.working.gate.Warning;
import rootwright.working.route.Working;

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

  /** What is found before any route is tried. */
  public static Solution unworked(
      String kind,
      Given given,
      String statement,
      Answer answer,
      List<String> conditions,
      List<Warning> warnings,
      SecondOpinion second) {
    return new Solution(
        kind,
        given,
        statement,
        answer,
        Optional.empty(),
        conditions,
        warnings,
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        second);
  }

  /** The same with the workings and the wrong turnings that were found. */
  public Solution with(RouteRunner.Routed routed, SlipRunner.Slipped slipped) {
    return new Solution(
        kind,
        given,
        statement,
        answer,
        reduced,
        conditions,
        warnings,
        routed.workings(),
        routed.declined(),
        slipped.showing(),
        slipped.silent(),
        second);
  }

  /** The same solution, shown as the answer to this ask, put in these words. */
  public Solution asked(Formula find, String sentence) {
    return new Solution(
        kind,
        given.withFind(find),
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

  /** The remainder of an expression in one root: {@code polynomial} in the named root. */
  public record Reduced(Polynomial polynomial, String root) {
    /** As a formula. */
    public Formula formula() {
      return rootwright.algebra.notation.PolynomialFormula.of(polynomial, root);
    }
  }

  /** A route that does not apply, and why. */
  public record DeclinedRoute(String name, String title, String why) {}

  /** A wrong turning with the wrong answer it gives. */
  public record WrongTurning(
      String name, String text, Answer value, rootwright.working.step.Idea spot, int weight) {}

  /** A wrong turning that leads to the right answer here, and why it does not show. */
  public record SilentSlip(String name, String why) {}
}
