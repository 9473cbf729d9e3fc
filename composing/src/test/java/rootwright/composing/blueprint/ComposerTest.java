package rootwright.composing.blueprint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.HashSet;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.Test;
import rootwright.composing.scan.Relaxation;
import rootwright.composing.scan.ScanControl;
import rootwright.composing.twin.Fingerprint;
import rootwright.working.kind.Kinds;

class ComposerTest {

  private final Composer composer = new Composer(new Kinds());

  private static Blueprint cubics(int many, long seed) {
    return Blueprint.of("Σ 1/r^2", 3, many, seed);
  }

  @Test
  void theSameSeedGivesTheSameProblemsAndAnotherSeedOthers() throws Exception {
    Composition first = composer.compose(cubics(5, 41), Set.of(), ScanControl.alone());
    Composition again = composer.compose(cubics(5, 41), Set.of(), ScanControl.alone());
    Composition other = composer.compose(cubics(5, 42), Set.of(), ScanControl.alone());
    assertThat(again.problems().stream().map(Composed::statement).toList())
        .isEqualTo(first.problems().stream().map(Composed::statement).toList());
    assertThat(other.problems().stream().map(Composed::statement).toList())
        .isNotEqualTo(first.problems().stream().map(Composed::statement).toList());
  }

  @Test
  void whatIsKnownIsNotComposedAgain() throws Exception {
    Composition first = composer.compose(cubics(5, 41), Set.of(), ScanControl.alone());
    Set<String> known = new HashSet<>();
    first.problems().forEach(p -> known.add(Fingerprint.of(p.solution().given()).text()));
    Composition second = composer.compose(cubics(5, 41), known, ScanControl.alone());
    assertThat(second.problems())
        .isNotEmpty()
        .noneMatch(p -> known.contains(Fingerprint.of(p.solution().given()).text()));
  }

  /** Six monic irreducible cubics with coefficients up to 2 have three real roots; with 1, none. */
  @Test
  void anImpossibleOrderSaysSoAndWhatWouldHelp() throws Exception {
    Blueprint impossible =
        Blueprint.of("Σ r^2", 3, 5, 1)
            .withPolynomial(
                new PolynomialWish(3, 1, 1, 1, RootsWish.IRREDUCIBLE, new RealWish.Exactly(3)))
            .withWorking(WorkingWish.USUAL.withSlips(OptionalInt.of(0)));
    Composition composition = composer.compose(impossible, Set.of(), ScanControl.alone());
    assertThat(composition.problems()).isEmpty();
    assertThat(composition.exhausted()).isTrue();
    assertThat(composition.conflicts())
        .contains(
            "No polynomial here meets “The polynomial has no factor of lower degree with rational"
                + " coefficients.” and “Exactly 3 roots are real, counted with multiplicity.”"
                + " together.");
    assertThat(composition.relaxations())
        .anyMatch(r -> r instanceof Relaxation.WiderBox wider && wider.candidates() == 6);
  }

  @Test
  void aContradictionIsNamedInsteadOfAnEmptyList() {
    Blueprint contradictory =
        Blueprint.of("Σ r^2", 3, 5, 1)
            .withPolynomial(
                new PolynomialWish(3, 9, 1, 1, RootsWish.IRREDUCIBLE, new RealWish.Exactly(2)))
            .withWorking(WorkingWish.USUAL.withRoutes(Set.of("rational-root")));
    assertThatThrownBy(() -> composer.compose(contradictory, Set.of(), ScanControl.alone()))
        .isInstanceOf(ContradictoryBlueprintException.class)
        .hasMessageContaining("no rational root")
        .hasMessageContaining("2 real roots");
  }

  @Test
  void anAskThatIsNotSymmetricIsRefusedWithTheReason() {
    assertThatThrownBy(
            () ->
                composer.compose(
                    Blueprint.of("r^2 s + s^2 t + t^2 r", 3, 1, 1), Set.of(), ScanControl.alone()))
        .isInstanceOf(ContradictoryBlueprintException.class)
        .hasMessageContaining("not symmetric");
  }
}
