package rootwright.working.solve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.FormulaReader;
import rootwright.algebra.notation.PolynomialFormula;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.working.answer.Answer;
import rootwright.working.ask.Asked;
import rootwright.working.ask.AskedReader;
import rootwright.working.problem.Problem;
import rootwright.working.route.Attempt;
import rootwright.working.route.ClassProfile;
import rootwright.working.route.Route;
import rootwright.working.route.Routes;
import rootwright.working.step.Claim;
import rootwright.working.step.Step;

/** A wrong line in a working must stop the output, whichever line it is. */
class BrokenLineTest {

  private final RouteRunner runner = new RouteRunner(new TwoChecks());

  private static Asked asked(Polynomial polynomial, String ask) throws Exception {
    return AskedReader.read(
        new Problem(
            polynomial,
            PolynomialFormula.of(polynomial, "x"),
            "x",
            List.of("r", "s", "t"),
            FormulaReader.formula(ask),
            List.of()));
  }

  static Stream<Asked> asks() throws Exception {
    return Stream.of(
        asked(Polynomial.ofDescending(4, -8, 3, 6), "sum r^2"),
        asked(Polynomial.ofDescending(1, -3, 4, -7), "sum(r^3-3r^2+r+5)"),
        asked(Polynomial.ofDescending(1, -3, 1, 2), "sum 1/(r-3)"),
        asked(Polynomial.ofDescending(1, 2, -3, 5), "sum 1/(r+s)"),
        asked(Polynomial.ofDescending(1, -1, -4, -1), "r^2 s + s^2 t + t^2 r"));
  }

  @ParameterizedTest
  @MethodSource("asks")
  void aLineWithAWrongNumberIsRefused(Asked asked) {
    int broken = 0;
    for (Route route : Routes.ALL) {
      if (route.attempt(asked) instanceof Attempt.Worked worked) {
        for (int line = 0; line < worked.steps().size(); line++) {
          int place = line;
          Route wrong = new Tampered(route, place);
          assertThatExceptionOfType(CheckFailedException.class)
              .as("%s, line %d", route.name(), place + 1)
              .isThrownBy(
                  () -> runner.run(List.of(wrong), asked, worked.answer(), ClassProfile.EVERYTHING))
              .withMessageContaining("line " + (place + 1));
          broken++;
        }
      }
    }
    assertThat(broken).isGreaterThan(2);
  }

  @ParameterizedTest
  @MethodSource("asks")
  void theSameLinesUnbrokenAreKept(Asked asked) {
    for (Route route : Routes.ALL) {
      if (route.attempt(asked) instanceof Attempt.Worked worked) {
        assertThat(
                runner
                    .run(List.of(route), asked, worked.answer(), ClassProfile.EVERYTHING)
                    .workings())
            .hasSize(1);
      }
    }
  }

  @Test
  void aRouteThatEndsElsewhereIsRefused() throws Exception {
    Asked asked = asked(Polynomial.ofDescending(4, -8, 3, 6), "sum r^2");
    Answer other = Answer.exact(Rational.of(3));
    assertThatExceptionOfType(CheckFailedException.class)
        .isThrownBy(() -> runner.run(Routes.ALL, asked, other, ClassProfile.EVERYTHING))
        .withMessageContaining("the end of route");
  }

  /** A route with one of its lines made wrong by 1. */
  private record Tampered(Route honest, int line) implements Route {

    @Override
    public String name() {
      return honest.name();
    }

    @Override
    public String title() {
      return honest.title();
    }

    @Override
    public String teaches() {
      return honest.teaches();
    }

    @Override
    public Attempt attempt(Asked asked) {
      Attempt.Worked worked = (Attempt.Worked) honest.attempt(asked);
      List<Step> steps = new ArrayList<>(worked.steps());
      steps.set(line, wrong(steps.get(line)));
      return new Attempt.Worked(worked.title(), steps, worked.answer(), worked.conditions());
    }

    private static Step wrong(Step step) {
      Claim claim = step.claim();
      if (claim instanceof Claim.HasRoots roots) {
        claim =
            new Claim.HasRoots(roots.setting(), roots.image().plus(Polynomial.ONE), roots.map());
      } else if (claim instanceof Claim.Equal equal) {
        List<Formula> sides = new ArrayList<>(equal.sides());
        int last = sides.size() - 1;
        sides.set(last, sides.get(last).plus(Formula.number(1)));
        claim = new Claim.Equal(equal.setting(), sides);
      }
      return new Step(step.shown(), step.reason(), step.idea(), claim);
    }
  }
}
