package rootwright.working.route;

/**
 * A way to solve that a student can follow.
 *
 * <p>A route tries an ask and gives a working, or declines with a reason that a coach understands.
 * It never gives a working with a wrong line on purpose, but it is not trusted either: every line
 * is checked by whoever called it.
 *
 * @param <Q> what it is tried on: an ask in one of the shapes that subjects read
 */
public interface RouteOn<Q> {

  /** Stable short name, lower case with hyphens: {@code reduce-powers}. */
  String name();

  /** What is done, in a few words: "reduce powers by P(r) = 0 and add up". */
  String title();

  /** What a student learns from it, one short sentence. */
  String teaches();

  /** Works the ask, or says why not. */
  Attempt attempt(Q asked);
}
