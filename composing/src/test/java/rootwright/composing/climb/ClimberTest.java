package rootwright.composing.climb;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import rootwright.algebra.number.Rational;
import rootwright.composing.blueprint.ComposingControl;
import rootwright.composing.blueprint.PolynomialWish;
import rootwright.composing.level.Level;
import rootwright.composing.scan.ScanControl;
import rootwright.composing.twin.Fingerprint;
import rootwright.working.kind.Kinds;
import rootwright.working.step.Idea;

class ClimberTest {

  private final Climber climber = new Climber(new Kinds());

  private Climb climb(int degree, long seed, Set<String> known) throws Exception {
    return climber.climb(
        PolynomialWish.USUAL.withDegree(degree),
        Set.of(),
        seed,
        known,
        ComposingControl.of(ScanControl.alone()));
  }

  @Test
  void fiveProblemsGoFromAReadOffToAHardOneEachAddingOneIdea() throws Exception {
    Climb climb = climb(3, 41, Set.of());
    assertThat(climb.missing()).isEmpty();
    assertThat(climb.steps()).hasSize(Climb.STEPS);
    Set<Idea> before = EnumSet.noneOf(Idea.class);
    Rational difficulty = Level.START.minus(Rational.ONE);
    for (int k = 0; k < Climb.STEPS; k++) {
      ClimbStep step = climb.steps().get(k);
      if (k > 0) {
        assertThat(step.adds()).as("%s", step).hasSize(1).noneMatch(before::contains);
      } else {
        assertThat(step.ideas()).isEmpty();
      }
      Level level = Level.of(step.composed().solution()).orElseThrow();
      assertThat(level.difficulty()).isGreaterThan(difficulty);
      difficulty = level.difficulty();
      before.addAll(step.ideas());
    }
    assertThat(Level.of(climb.steps().get(4).composed().solution()).orElseThrow().number())
        .isGreaterThanOrEqualTo(4);
  }

  @Test
  void aClimbStaysAwayFromWhatIsKnown() throws Exception {
    List<String> first = problems(climb(3, 7, Set.of()));
    assertThat(problems(climb(3, 7, Set.copyOf(first)))).noneMatch(first::contains);
  }

  private static List<String> problems(Climb climb) {
    return climb.steps().stream()
        .map(step -> Fingerprint.of(step.composed().solution().given()).text())
        .toList();
  }
}
