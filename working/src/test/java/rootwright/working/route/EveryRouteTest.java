package rootwright.working.route;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.working.answer.Answer;
import rootwright.working.check.exact.Valuation;

/** What holds of every route on every ask. */
class EveryRouteTest {

  private static final long SEED = Long.getLong("rootwright.seed", 20_260_731L);

  private static final int PROBLEMS = 45;

  private static final List<String> SYMMETRIC =
      List.of(
          "e_2",
          "sum r^2",
          "sum r^3",
          "S_5",
          "S_9",
          "sum(r^3-2r+1)",
          "sum(r^4-2r^3+3)",
          "sum r^2 s",
          "sum r^3 s",
          "sum r^2 s^2",
          "h_3",
          "sum (r-s)^2",
          "product(1+r)",
          "product(r^2+1)",
          "product(r+s)",
          "sum 1/r",
          "sum 1/r^2",
          "sum 1/(r-1)",
          "sum 1/(r+s)",
          "sum r/s",
          "sum (r+s)^2/(r s)",
          "sum (r^3+1)/(r-1)",
          "sum (r+1)/(2-r)^2",
          "sum 1/(r s)",
          "sum(r^2+1/r)");

  private static final List<String> OTHERS =
      List.of("r^6", "r^3-2r+5", "r-s", "r^3-s^3", "2*r+s", "r/s");

  private static final List<String> CYCLIC =
      List.of("r^2 s+s^2 t+t^2 r", "r/s+s/t+t/r", "(r-s)(s-t)(t-r)");

  /** Polynomials of every shape the routes are made for. */
  private static Polynomial polynomial(SplittableRandom random) {
    int degree = random.nextInt(2, 6);
    long[] c = new long[degree + 1];
    Arrays.setAll(c, k -> random.nextInt(-5, 6));
    c[0] = random.nextInt(3) == 0 ? random.nextInt(2, 4) : 1;
    switch (random.nextInt(6)) {
      case 0 -> Arrays.setAll(c, k -> k <= degree / 2 ? c[k] : c[degree - k]);
      case 1 -> Arrays.setAll(c, k -> k % 2 == 0 ? c[k] : 0);
      case 2 -> {
        return Polynomial.ofDescending(Arrays.copyOf(c, degree))
            .times(Polynomial.ofDescending(1, random.nextInt(-3, 4)));
      }
      default -> {
        // as it is
      }
    }
    return Polynomial.ofDescending(c);
  }

  private static String ask(SplittableRandom random, int degree) {
    int which = random.nextInt(8);
    if (which == 0) {
      return OTHERS.get(random.nextInt(OTHERS.size()));
    } else if (which == 1 && degree == 3) {
      return CYCLIC.get(random.nextInt(CYCLIC.size()));
    }
    return SYMMETRIC.get(random.nextInt(SYMMETRIC.size()));
  }

  @Test
  void routesThatGoThroughAgreeAndEveryLineIsConfirmedByBothChecks() {
    SplittableRandom random = new SplittableRandom(SEED);
    Map<String, Integer> worked = new HashMap<>();
    for (int k = 0; k < PROBLEMS; k++) {
      Polynomial polynomial = polynomial(random);
      Exercise exercise = Exercise.of(polynomial, ask(random, polynomial.degree()));
      Valuation valuation =
          Valuation.of(exercise.asked().formula(), exercise.asked().problem().setting());
      for (Route route : Routes.ALL) {
        if (route.attempt(exercise.asked()) instanceof Attempt.Worked) {
          Attempt.Worked lines = exercise.by(route);
          assertThat(agrees(lines.answer(), valuation))
              .as("seed %d: %s by %s ends in %s", SEED, exercise, route.name(), lines.answer())
              .isTrue();
          worked.merge(route.name(), 1, Integer::sum);
        } else {
          assertThat(exercise.refusalOf(route)).isNotBlank();
        }
      }
    }
    assertThat(worked.values().stream().mapToInt(Integer::intValue).sum())
        .as("seed %d: workings that were looked at", SEED)
        .isGreaterThan(PROBLEMS);
  }

  private static boolean agrees(Answer answer, Valuation valuation) {
    if (valuation instanceof Valuation.Determined determined) {
      return answer.equals(Answer.exact(determined.value()));
    } else if (valuation instanceof Valuation.InOneRoot one) {
      return answer.equals(new Answer.PolynomialIn(one.reduced(), one.root()));
    }
    return valuation instanceof Valuation.Several several
        && answer instanceof Answer.Values values
        && values.orbit().equals(several.orbit().squarefreePart().primitive());
  }

  @Test
  void whatHasNoValueIsDeclinedByEveryRoute() {
    List<Exercise> undefined =
        List.of(
            Exercise.of("1 -3 2 0", "sum 1/r"),
            Exercise.of("1 -3 2 0", "sum r/s"),
            Exercise.of("1 -2 0 1", "sum 1/(r-1)"),
            Exercise.of("1 -2 0 1", "sum 1/(r-1)^2"),
            Exercise.of("1 -2 0 1", "sum 1/(r^2-1)"),
            Exercise.of("1 -2 0 1", "sum (r+1)/(r-1)"),
            Exercise.of("1 -2 0 1", "1/(r-1)"),
            Exercise.of("1 -2 -1 2", "sum 1/(r+s)"));
    for (Exercise exercise : undefined) {
      for (Route route : Routes.ALL) {
        assertThat(exercise.refusalOf(route)).isNotBlank();
      }
    }
  }

  @Test
  void everyRouteHasItsOwnName() {
    assertThat(Routes.ALL.stream().map(Route::name).distinct()).hasSameSizeAs(Routes.ALL);
    assertThat(Routes.ALL).allSatisfy(route -> assertThat(route.name()).matches("[a-z-]+"));
    assertThat(Routes.ALL).allSatisfy(route -> assertThat(route.teaches()).endsWith("."));
  }

  @Test
  void noLineSaysNothingOrStandsTwice() {
    SplittableRandom random = new SplittableRandom(SEED + 1);
    for (int k = 0; k < PROBLEMS; k++) {
      Polynomial polynomial = polynomial(random);
      Exercise exercise = Exercise.of(polynomial, ask(random, polynomial.degree()));
      for (Route route : Routes.ALL) {
        if (route.attempt(exercise.asked()) instanceof Attempt.Worked lines) {
          assertThat(lines.steps().stream().map(step -> step.shown()).distinct())
              .as("seed %d: %s by %s", SEED + 1, exercise, route.name())
              .hasSameSizeAs(lines.steps());
          assertThat(lines.steps()).allSatisfy(step -> assertThat(step.reason()).isNotBlank());
        }
      }
    }
  }

  /** Sums over chosen rational roots, added up root by root, are the oracle. */
  @Test
  void chosenRootsGiveTheSumThatIsWorked() {
    SplittableRandom random = new SplittableRandom(SEED + 2);
    for (int k = 0; k < 30; k++) {
      List<Rational> roots =
          random
              .ints(random.nextInt(2, 5), -3, 4)
              .mapToObj(root -> Rational.of(root, 1 + random.nextInt(2)))
              .toList();
      int power = random.nextInt(2, 7);
      Rational sum =
          roots.stream().map(root -> root.power(power)).reduce(Rational.ZERO, Rational::plus);
      Exercise exercise = Exercise.of(Polynomial.withRoots(roots), "S_" + power);
      for (Route route : Routes.ALL) {
        if (route.attempt(exercise.asked()) instanceof Attempt.Worked) {
          assertThat(exercise.valueBy(route)).as("seed %d: %s", SEED + 2, exercise).isEqualTo(sum);
        }
      }
    }
  }
}
