package rootwright.working.route;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import rootwright.algebra.notation.FormulaReader;
import rootwright.algebra.notation.PlainWriter;
import rootwright.algebra.notation.PolynomialFormula;
import rootwright.algebra.notation.UnreadableException;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.working.answer.Answer;
import rootwright.working.ask.Asked;
import rootwright.working.ask.AskedReader;
import rootwright.working.check.exact.ExactCheck;
import rootwright.working.check.second.EnclosureCheck;
import rootwright.working.problem.Problem;
import rootwright.working.step.Step;

/** An ask about the roots of a polynomial, for tests of routes. */
record Exercise(Asked asked) {

  private static final List<String> NAMES = List.of("r", "s", "t", "u", "v", "w");

  private static final ExactCheck EXACT = new ExactCheck();
  private static final EnclosureCheck SECOND = new EnclosureCheck();

  /**
   * Reads an exercise.
   *
   * @param coefficients whole numbers or fractions, highest power first, blanks between
   * @param ask as a coach types it
   */
  static Exercise of(String coefficients, String ask) {
    List<Rational> descending =
        Arrays.stream(coefficients.trim().split(" +")).map(Rational::parse).toList();
    int n = descending.size() - 1;
    return of(
        Polynomial.ofAscending(
            IntStream.rangeClosed(0, n).mapToObj(k -> descending.get(n - k)).toList()),
        ask);
  }

  /** An exercise on a polynomial. */
  static Exercise of(Polynomial polynomial, String ask) {
    int n = polynomial.degree();
    List<String> names =
        n <= NAMES.size()
            ? NAMES.subList(0, n)
            : IntStream.rangeClosed(1, n).mapToObj(k -> "r_" + k).toList();
    try {
      return new Exercise(
          AskedReader.read(
              new Problem(
                  polynomial,
                  PolynomialFormula.of(polynomial, "x"),
                  "x",
                  names,
                  FormulaReader.formula(ask),
                  List.of())));
    } catch (UnreadableException unreadable) {
      throw new IllegalArgumentException(ask, unreadable);
    }
  }

  /** The working of a route that must go through, every line of it confirmed by both checks. */
  Attempt.Worked by(Route route) {
    Attempt attempt = route.attempt(asked);
    assertThat(attempt).as(route.name() + " on " + this).isInstanceOf(Attempt.Worked.class);
    Attempt.Worked worked = (Attempt.Worked) attempt;
    confirm(worked);
    return worked;
  }

  /** Requires that both checks confirm every line. */
  void confirm(Attempt.Worked worked) {
    for (Step step : worked.steps()) {
      String line = "%s: %s".formatted(this, PlainWriter.write(step.shown()));
      assertThat(EXACT.of(step.claim()).isConfirmed()).as("exact check of " + line).isTrue();
      assertThat(SECOND.of(step.claim()).isConfirmed()).as("second check of " + line).isTrue();
    }
  }

  /** The rational number that a route must end in. */
  Rational valueBy(Route route) {
    Attempt.Worked worked = by(route);
    assertThat(worked.answer()).isInstanceOf(Answer.Exact.class);
    String text = PlainWriter.write(((Answer.Exact) worked.answer()).value().toFormula());
    return Rational.parse(text);
  }

  /** The lines of the working as plain text. */
  List<String> linesBy(Route route) {
    return by(route).steps().stream().map(step -> PlainWriter.write(step.shown())).toList();
  }

  /** Why a route declines. */
  String refusalOf(Route route) {
    Attempt attempt = route.attempt(asked);
    assertThat(attempt).as(route.name() + " on " + this).isInstanceOf(Attempt.Declined.class);
    return ((Attempt.Declined) attempt).why();
  }

  @Override
  public String toString() {
    return "%s of %s".formatted(PlainWriter.write(asked.formula()), asked.problem().polynomial());
  }
}
