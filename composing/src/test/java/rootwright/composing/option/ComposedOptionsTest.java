package rootwright.composing.option;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import rootwright.composing.blueprint.Blueprint;
import rootwright.composing.blueprint.Composed;
import rootwright.composing.blueprint.Composer;
import rootwright.composing.blueprint.Composition;
import rootwright.composing.scan.ScanControl;
import rootwright.working.check.exact.ExactCheck;
import rootwright.working.kind.Kinds;
import rootwright.working.route.Routes;
import rootwright.working.slip.Slips;
import rootwright.working.solve.TwoChecks;

/**
 * The rules for wrong options over thousands of composed problems (Haladyna, Downing and Rodriguez
 * 2002; Rodriguez 2005).
 */
class ComposedOptionsTest {

  private static final long SEED = Long.getLong("rootwright.seed", 20_260_118L);

  private static final List<Blueprint> ORDERS =
      List.of(
          Blueprint.of("Σ r^2", 3, Blueprint.MOST, SEED),
          Blueprint.of("Σ r^2", 4, Blueprint.MOST, SEED),
          Blueprint.of("Σ r^3", 3, Blueprint.MOST, SEED),
          Blueprint.of("Σ (r^2 + 4)", 3, Blueprint.MOST, SEED));

  private static final Set<String> SHORT = Set.of("build-from-e", "newton");

  private static final List<Composition> compositions = new ArrayList<>();
  private static final List<Choices> all = new ArrayList<>();

  /** A few short routes, and the exact check alone: options are tested here, not soundness. */
  @BeforeAll
  static void composeThousands() throws Exception {
    Kinds kinds =
        new Kinds(
            Routes.ALL.stream().filter(route -> SHORT.contains(route.name())).toList(),
            Slips.ALL,
            new TwoChecks(new ExactCheck(), new ExactCheck()));
    Composer composer = new Composer(kinds);
    for (Blueprint order : ORDERS) {
      Composition composition =
          composer.compose(
              order.withPolynomial(order.polynomial().withSize(20)), Set.of(), ScanControl.alone());
      compositions.add(composition);
      composition.problems().stream().map(Composed::choices).forEach(all::add);
    }
  }

  private static List<Choices> full(List<Choices> of) {
    return of.stream().filter(choices -> choices.options().size() == Choices.USUAL).toList();
  }

  @Test
  void thereAreThousandsAndMostHaveAllTheirChoices() {
    assertThat(all.size()).as(seed()).isGreaterThanOrEqualTo(2_000);
    assertThat(full(all).size()).as(seed()).isGreaterThan(all.size() * 8 / 10);
    assertThat(all)
        .as(seed())
        .allSatisfy(
            choices ->
                assertThat(choices.fewer().isPresent())
                    .isEqualTo(choices.options().size() < Choices.USUAL));
  }

  @Test
  void theKeyStandsInEveryPlaceAboutEquallyOftenInEveryComposition() {
    for (Composition composition : compositions) {
      List<Choices> here = full(composition.problems().stream().map(Composed::choices).toList());
      long quarter = here.size() / 4;
      for (int place = 0; place < Choices.USUAL; place++) {
        int wanted = place;
        assertThat(here.stream().filter(choices -> choices.keyIndex() == wanted).count())
            .as("%s, place %d of %d, %s", composition.blueprint().ask(), place, here.size(), seed())
            .isBetween(quarter * 8 / 10, quarter * 12 / 10 + 1);
      }
    }
  }

  @Test
  void theLongestOptionIsTheKeyNoMoreOftenThanByChance() {
    long longest =
        full(all).stream()
            .filter(
                choices ->
                    choices.wrong().stream().allMatch(one -> length(one) < length(choices.key())))
            .count();
    assertThat(longest).as(seed()).isLessThan(full(all).size() / 8);
  }

  @Test
  void noTwoOptionsAreEqualAndNoneIsTheAnswerInAnotherForm() {
    for (Choices choices : all) {
      Set<Object> values = new HashSet<>();
      for (Option option : choices.options()) {
        assertThat(values.add(Numbers.identity(option.value())))
            .as("%s, %s", choices, seed())
            .isTrue();
        assertThat(Numbers.identity(option.value()).equals(Numbers.identity(choices.key().value())))
            .isEqualTo(option.isKey());
      }
    }
  }

  @Test
  void optionsAscendAndEachWrongOneNamesWhatLeadsThere() {
    for (Choices choices : all) {
      for (int k = 1; k < choices.options().size(); k++) {
        assertThat(
                Numbers.ASCENDING.compare(
                    choices.options().get(k - 1).value(), choices.options().get(k).value()))
            .as("%s, %s", choices, seed())
            .isNegative();
      }
      assertThat(choices.wrong()).allSatisfy(option -> assertThat(option.slips()).isNotEmpty());
    }
  }

  private static int length(Option option) {
    return Numbers.text(option.value()).length();
  }

  private static String seed() {
    return "seed " + SEED;
  }
}
