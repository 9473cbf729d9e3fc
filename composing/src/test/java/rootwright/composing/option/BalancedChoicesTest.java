package rootwright.composing.option;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rootwright.algebra.notation.UnreadableException;
import rootwright.working.solve.Solution;

/** The rules for wrong options, over a thousand problems drawn from a seed. */
class BalancedChoicesTest {

  private static final int PROBLEMS = 1_000;

  private static List<Solution> solutions = new ArrayList<>();
  private static List<Choices> all = new ArrayList<>();

  @BeforeAll
  static void chooseForAThousandProblems() throws UnreadableException {
    solutions = SampledProblems.of(PROBLEMS);
    all = BalancedChoices.of(solutions, 4);
  }

  private static List<Choices> full() {
    return all.stream().filter(choices -> choices.options().size() == 4).toList();
  }

  @Test
  void mostProblemsHaveAllTheirChoicesAndTheOthersSayWhy() {
    assertThat(full().size()).as(seed()).isGreaterThan(PROBLEMS * 8 / 10);
    assertThat(all)
        .as(seed())
        .allSatisfy(
            choices ->
                assertThat(choices.fewer().isPresent()).isEqualTo(choices.options().size() < 4));
  }

  @Test
  void theKeyStandsInEveryPlaceAboutEquallyOften() {
    long quarter = full().size() / 4;
    for (int place = 0; place < 4; place++) {
      int here = place;
      long times = full().stream().filter(choices -> choices.keyIndex() == here).count();
      assertThat(times)
          .as("keys in place %d of 4, %s", here, seed())
          .isBetween(quarter * 9 / 10, quarter * 11 / 10 + 1);
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {3, 5})
  void thePlaceOfTheKeyIsBalancedForOtherNumbersOfChoices(int wanted) {
    List<Choices> some =
        BalancedChoices.of(solutions.subList(0, 200), wanted).stream()
            .filter(choices -> choices.options().size() == wanted)
            .toList();
    assertThat(some.size()).as(seed()).isGreaterThan(120);
    int even = some.size() / wanted;
    for (int place = 0; place < wanted; place++) {
      int here = place;
      assertThat(some.stream().filter(choices -> choices.keyIndex() == here).count())
          .as("keys in place %d of %d, %s", here, wanted, seed())
          .isBetween(even * 8L / 10, even * 12L / 10 + 1);
    }
  }

  @Test
  void everyWrongValueKnownIsWrong() {
    for (Solution solution : solutions.subList(0, 200)) {
      Object answer = Numbers.identity(solution.answer());
      assertThat(Choices.everyWrong(solution))
          .as("%s, %s", solution.given().find(), seed())
          .noneMatch(option -> Numbers.identity(option.value()).equals(answer));
    }
  }

  @Test
  void optionsAscendAndNoTwoAreEqualInAnyForm() {
    for (Choices choices : all) {
      for (int k = 1; k < choices.options().size(); k++) {
        assertThat(
                Numbers.rational(choices.options().get(k).value())
                    .orElseThrow()
                    .compareTo(
                        Numbers.rational(choices.options().get(k - 1).value()).orElseThrow()))
            .as("%s, %s", choices, seed())
            .isPositive();
      }
    }
  }

  @Test
  void theKeyIsTheAnswerAndNoOtherOptionIs() {
    for (int item = 0; item < all.size(); item++) {
      Object answer = Numbers.identity(solutions.get(item).answer());
      Choices choices = all.get(item);
      assertThat(Numbers.identity(choices.key().value())).as(seed()).isEqualTo(answer);
      assertThat(choices.wrong())
          .as("%s, %s", choices, seed())
          .noneMatch(option -> Numbers.identity(option.value()).equals(answer));
    }
  }

  @Test
  void theLongestOptionIsRightNoMoreOftenThanByChance() {
    long keyLongest =
        full().stream()
            .filter(
                choices ->
                    choices.wrong().stream()
                        .allMatch(option -> length(option) < length(choices.key())))
            .count();
    assertThat(keyLongest).as(seed()).isLessThan(full().size() / 8);
  }

  @Test
  void theKeyIsNeverTheOnlyFractionOrTheOnlyWholeNumber() {
    assertThat(full())
        .as(seed())
        .allSatisfy(
            choices ->
                assertThat(choices.wrong())
                    .filteredOn(option -> Form.of(option.value()) == Form.of(choices.key().value()))
                    .hasSizeGreaterThanOrEqualTo(2));
  }

  @Test
  void everyWrongOptionNamesWhatLeadsThere() {
    for (int item = 0; item < all.size(); item++) {
      List<WrongValue> known = WrongValues.of(solutions.get(item));
      assertThat(all.get(item).wrong())
          .as(seed())
          .allSatisfy(
              option ->
                  assertThat(known)
                      .anyMatch(
                          wrong ->
                              wrong.value().equals(option.value())
                                  && wrong.slips().equals(option.slips())));
    }
  }

  private static int length(Option option) {
    return Numbers.text(option.value()).length();
  }

  private static String seed() {
    return "seed " + SampledProblems.SEED;
  }
}
