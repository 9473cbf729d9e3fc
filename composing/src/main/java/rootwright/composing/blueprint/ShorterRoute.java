package rootwright.composing.blueprint;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import rootwright.algebra.number.Rational;
import rootwright.working.route.Working;
import rootwright.working.solve.Solution;

/**
 * A problem is to be so many times shorter by one route than by another, both of which go through.
 *
 * @param route the name of the shorter route
 * @param than the name of the longer one
 * @param times how many times the cost of the shorter one the longer one must have at least
 */
public record ShorterRoute(String route, String than, Rational times) {

  /** Whether it is so for a worked problem. */
  boolean holds(Solution solution) {
    Optional<Rational> cost = cost(solution, route);
    Optional<Rational> other = cost(solution, than);
    return cost.isPresent()
        && other.isPresent()
        && cost.get().times(times).compareTo(other.get()) <= 0;
  }

  /** The cost of a route in tenths, if it goes through. */
  private static Optional<Rational> cost(Solution solution, String route) {
    return solution.routes().stream()
        .filter(working -> working.route().equals(route))
        .map(working -> tenths(working))
        .findFirst();
  }

  private static Rational tenths(Working working) {
    BigDecimal total = working.cost().total();
    return Rational.of(total.movePointRight(1).longValueExact());
  }

  /** Why it cannot be, one sentence each. */
  List<String> contradictions() {
    if (route.equals(than)) {
      return List.of("the route %s cannot be shorter than itself".formatted(route));
    }
    return times.signum() <= 0
        ? List.of("%s times as short cannot be".formatted(times))
        : List.of();
  }

  /** The wish as it is typed: {@code reduce-powers than build-from-e by 2}. */
  public String text() {
    return "%s than %s by %s".formatted(route, than, times);
  }

  /**
   * Reads what {@link #text} writes.
   *
   * @throws IllegalArgumentException if it is something else; says what would do
   */
  public static ShorterRoute parse(String text) {
    String[] words = text.strip().split("\\s+");
    if (words.length == 5 && words[1].equals("than") && words[3].equals("by")) {
      try {
        return new ShorterRoute(words[0], words[2], Rational.parse(words[4]));
      } catch (IllegalArgumentException | ArithmeticException noNumber) {
        // Falls through to the refusal below.
      }
    }
    throw new IllegalArgumentException(
        "a shorter route cannot be wished as “%s”; write reduce-powers than build-from-e by 2"
            .formatted(text));
  }
}
