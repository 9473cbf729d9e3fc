package rootwright.composing.climb;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import rootwright.algebra.number.Rational;
import rootwright.composing.blueprint.ComposingControl;
import rootwright.composing.blueprint.Composition;
import rootwright.composing.blueprint.PolynomialWish;
import rootwright.composing.level.Level;
import rootwright.composing.scan.ScanControl;
import rootwright.composing.twin.Fingerprint;
import rootwright.working.Subjects;
import rootwright.working.kind.Kinds;
import rootwright.working.problem.Statement;
import rootwright.working.route.ClassProfile;
import rootwright.working.solve.Solution;
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

  @Test
  void aClimbMayGoOnWithOtherKindsAfterTheReadOff() throws Exception {
    Climb climb =
        climber.climb(
            PolynomialWish.USUAL,
            Set.of("bound", "integer-roots"),
            41,
            Set.of(),
            ComposingControl.of(ScanControl.alone()));
    assertThat(climb.steps()).hasSizeGreaterThanOrEqualTo(3);
    assertThat(climb.steps().get(0).ideas()).isEmpty();
    assertThat(climb.steps().subList(1, climb.steps().size()))
        .allMatch(step -> !step.adds().isEmpty())
        .anyMatch(step -> !step.composed().solution().kind().equals("value"));
    assertThatThrownBy(
            () ->
                climber.climb(
                    PolynomialWish.USUAL,
                    Set.of("bounds"),
                    41,
                    Set.of(),
                    ComposingControl.of(ScanControl.alone())))
        .hasMessageContaining("there is no kind of ask “bounds”; the nearest is bound");
  }

  @Test
  void aHarderProblemOfAnotherKindIsOfAHigherLevel() throws Exception {
    Kinds kinds = new Kinds();
    Statement statement =
        Statement.of("x^3 - 12x^2 + kx - 28", "k if the roots are in arithmetic progression");
    Solution original = new Subjects(kinds).work(statement, ClassProfile.EVERYTHING);
    Composition harder =
        new Harder(kinds).than(statement, 3, Set.of(), ComposingControl.of(ScanControl.alone()));
    assertThat(harder.problems()).hasSize(1);
    Solution found = harder.problems().get(0).solution();
    assertThat(found.kind()).isEqualTo(original.kind());
    assertThat(Level.of(found).orElseThrow().number())
        .isGreaterThan(Level.of(original).orElseThrow().number());
  }
}
