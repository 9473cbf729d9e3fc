package rootwright.working.kind;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import rootwright.algebra.notation.PlainWriter;
import rootwright.algebra.notation.UnreadableException;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.working.ask.ProblemReader;
import rootwright.working.problem.Statement;
import rootwright.working.route.ClassProfile;
import rootwright.working.route.Working;
import rootwright.working.solve.Solution;

/**
 * Typed problems worked by all kinds of the house, for tests. Working one means that both checks
 * have confirmed every line that is no argument, and that every route ends in the answer.
 */
final class Solved {

  private static final Kinds KINDS = new Kinds();

  private Solved() {}

  /** The solution of a problem whose polynomial is typed by its coefficients. */
  static Solution of(String coefficients, String ask) {
    try {
      return KINDS.solve(
          ProblemReader.read(Statement.of(coefficients, ask)), ClassProfile.EVERYTHING);
    } catch (UnreadableException unreadable) {
      throw new IllegalArgumentException(coefficients + "; " + ask, unreadable);
    }
  }

  /** The polynomial with these coefficients, highest first. */
  static Polynomial polynomial(String coefficients) {
    List<Rational> descending =
        Arrays.stream(coefficients.trim().split(" +")).map(Rational::parse).toList();
    int n = descending.size() - 1;
    return Polynomial.ofAscending(
        IntStream.rangeClosed(0, n).mapToObj(k -> descending.get(n - k)).toList());
  }

  /** The names of the routes that went through. */
  static List<String> routes(Solution solution) {
    return solution.routes().stream().map(Working::route).toList();
  }

  /** The lines of one route as plain text. */
  static List<String> lines(Solution solution, String route) {
    return solution.routes().stream()
        .filter(working -> working.route().equals(route))
        .flatMap(working -> working.steps().stream())
        .map(step -> PlainWriter.write(step.shown()))
        .toList();
  }
}
