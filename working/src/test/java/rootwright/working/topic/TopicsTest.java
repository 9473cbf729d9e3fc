package rootwright.working.topic;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rootwright.algebra.notation.UnicodeWriter;
import rootwright.working.ask.ProblemReader;
import rootwright.working.check.Verdict;
import rootwright.working.kind.Kinds;
import rootwright.working.problem.Statement;
import rootwright.working.proof.Boundary;
import rootwright.working.proof.ExpansionCheck;
import rootwright.working.proof.Fact;
import rootwright.working.proof.General;
import rootwright.working.proof.Letters;
import rootwright.working.proof.Proof;
import rootwright.working.proof.ProofLine;
import rootwright.working.proof.SampledCheck;
import rootwright.working.route.ClassProfile;
import rootwright.working.solve.Solution;

class TopicsTest {

  private static final long SEED = Long.getLong("rootwright.seed", 20261125L);

  static Stream<Topic> topics() {
    return Topics.ALL.stream();
  }

  static Stream<Fact> facts() {
    return Topics.ALL.stream().flatMap(topic -> topic.facts().stream());
  }

  @ParameterizedTest
  @MethodSource("facts")
  void everyComputedLineIsProvedByExpansionForTwoToFourRoots(Fact fact) {
    for (int n = 2; n <= 4; n++) {
      for (General claim : claims(fact)) {
        Letters letters = Letters.usual(n);
        Verdict verdict = ExpansionCheck.of(claim.in(letters));
        assertThat(verdict.isConfirmed())
            .as(
                "%s, n = %d: %s gives %s",
                fact.name(), n, UnicodeWriter.write(claim.in(letters).shown()), verdict)
            .isTrue();
      }
    }
  }

  @ParameterizedTest
  @MethodSource("facts")
  void everyComputedLineHoldsForSixtyInstancesDrawnByChance(Fact fact) {
    for (General claim : claims(fact)) {
      Verdict verdict = SampledCheck.of(claim, SEED);
      assertThat(verdict.isConfirmed())
          .as(
              "%s, seed %d: %s gives %s",
              fact.name(), SEED, UnicodeWriter.write(claim.in(Letters.usual(3)).shown()), verdict)
          .isTrue();
    }
  }

  @ParameterizedTest
  @MethodSource("facts")
  void theBoundaryExampleBreaksTheFact(Fact fact) {
    assertThat(fact.boundary().outcome()).isNotInstanceOf(Boundary.Outcome.Holds.class);
  }

  @ParameterizedTest
  @MethodSource("topics")
  void theTrickIsProvedForTwoToFourRoots(Topic topic) {
    for (int n = 2; n <= 4; n++) {
      for (ProofLine line : topic.trick().lines()) {
        int roots = n;
        line.claim()
            .ifPresent(
                claim -> {
                  Verdict verdict = ExpansionCheck.of(claim.in(Letters.usual(roots)));
                  assertThat(verdict.isConfirmed()).as("%s: %s", line, verdict).isTrue();
                });
      }
    }
  }

  @ParameterizedTest
  @MethodSource("topics")
  void everyExerciseIsWorkedByItsRouteAndTheWarningShowsOnOne(Topic topic) throws Exception {
    Kinds kinds = new Kinds();
    boolean shows = topic.warning().slip().isEmpty();
    for (Exercise exercise : topic.exercises()) {
      Solution solution =
          kinds.solve(
              ProblemReader.read(Statement.of(exercise.polynomial(), exercise.find())),
              ClassProfile.EVERYTHING);
      assertThat(solution.routes()).as(exercise.toString()).isNotEmpty();
      if (!exercise.route().isEmpty()) {
        assertThat(solution.routes())
            .as(exercise.toString())
            .anyMatch(working -> working.route().equals(exercise.route()));
      }
      shows |=
          solution.slips().stream().anyMatch(slip -> slip.name().equals(topic.warning().slip()));
    }
    assertThat(shows).as("no exercise of %s shows the slip", topic.name()).isTrue();
    assertThat(topic.exercises().size()).isGreaterThanOrEqualTo(3);
  }

  private static List<General> claims(Fact fact) {
    List<General> claims = new ArrayList<>(List.of(fact.shown()));
    for (Proof.Length length : Proof.Length.values()) {
      fact.proof().lines(length).forEach(line -> line.claim().ifPresent(claims::add));
    }
    return claims.stream().distinct().toList();
  }
}
