package rootwright.composing.option;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import rootwright.algebra.notation.UnreadableException;
import rootwright.algebra.number.Rational;
import rootwright.algebra.value.ExactValue;
import rootwright.algebra.value.RationalValue;
import rootwright.working.Subjects;
import rootwright.working.answer.Answer;
import rootwright.working.ask.ProblemReader;
import rootwright.working.kind.Kinds;
import rootwright.working.problem.Statement;
import rootwright.working.route.ClassProfile;
import rootwright.working.solve.Solution;

class ChoicesTest {

  @Test
  void aKeyOfZeroStandsBetweenWrongValuesOfBothSigns() throws UnreadableException {
    Choices choices = Choices.of(solution("x^3 - 2x^2 + 2x - 5", "Σ r^2"), 5);

    assertThat(texts(choices)).containsExactly("−2", "0", "2", "4", "8");
    assertThat(choices.keyIndex()).isEqualTo(1);
    assertThat(choices.options().stream().map(Option::slips))
        .containsExactly(
            List.of("newton-count"),
            List.of(),
            List.of("one-cross-term"),
            List.of("square-of-the-sum"),
            List.of("cross-sign"));
    assertThat(choices.fewer()).isEmpty();
  }

  @Test
  void optionsThatAreSetsAscendNumberByNumber() throws UnreadableException {
    Solution solution =
        new Subjects(new Kinds())
            .work(
                Statement.of("x^2 - (m-6)x + m", "m if r^2 + s^2 = 87, roots real"),
                ClassProfile.EVERYTHING);

    assertThat(Choices.of(solution, 4).options().stream().map(Option::value))
        .containsExactly(set(-3), set(-3, 17), set(17));
  }

  private static Answer set(long... numbers) {
    return new Answer.Solutions(
        Arrays.stream(numbers)
            .<ExactValue>mapToObj(number -> new RationalValue(Rational.of(number)))
            .toList());
  }

  @Test
  void aForgottenLeadIsSilentOnAMonicPolynomialAndOffersNothing() throws UnreadableException {
    Solution solution = solution("x^3 - 2x^2 + 2x - 5", "Σ r^2");

    assertThat(solution.silent().stream().map(Solution.SilentSlip::name))
        .contains("lead-forgotten", "lead-half-forgotten");
    assertThat(Choices.of(solution, 5).wrong())
        .allSatisfy(option -> assertThat(option.slips()).noneMatch(name -> name.contains("lead")));
  }

  @Test
  void wrongOptionsOfAProductAreTheForgottenLeadAndTheSpreadProduct() throws UnreadableException {
    Choices choices = Choices.of(solution("3x^3 - 2x^2 + 4x + 1", "Π (1 + r)"), 4);

    assertThat(choices.key().value()).isEqualTo(Answer.exact(Rational.of(8, 3)));
    assertThat(choices.options()).hasSize(4);
    assertThat(choices.wrong())
        .contains(
            new Option(Answer.exact(Rational.of(8)), List.of("p-k-undivided")),
            new Option(Answer.exact(Rational.of(2, 3)), List.of("product-spread")));
  }

  @Test
  void aMisreadPolynomialKeepsTheSignOfItsLead() throws UnreadableException {
    // e read without alternating signs and without the lead: −6, 1, 5, so Σr² would be 36 − 2, as
    // for the forgotten lead alone; no third value comes of it.
    Solution solution = solution("2x^3 - 6x^2 + x + 5", "Σ r^2");

    assertThat(WrongValues.of(solution))
        .noneSatisfy(wrong -> assertThat(wrong.slips()).contains("sign-slip + lead-forgotten"));
  }

  @Test
  void twoWrongTurningsWithOneValueAreOneOptionWithBothNames() throws UnreadableException {
    // 2·0 − 3·(−3) by the wrong count, and (−3)² if the gap is overlooked and the sum squared.
    Solution solution = solution("x^3 - 3x + 1", "Σ r^2");
    List<WrongValue> wrong = WrongValues.of(solution);

    assertThat(wrong.stream().map(WrongValue::value)).doesNotHaveDuplicates();
    assertThat(wrong)
        .anySatisfy(
            value -> {
              assertThat(value.value()).isEqualTo(Answer.exact(Rational.of(9)));
              assertThat(value.slips())
                  .containsExactly("newton-count", "gap-blind + square-of-the-sum");
            });
  }

  @Test
  void fewerChoicesAreOfferedWithTheReasonWhenSlipsGiveTooFew() throws UnreadableException {
    Choices choices = Choices.of(solution("x^2 - 5x + 5", "r + s"), 5);

    assertThat(choices.options()).hasSizeLessThan(5);
    assertThat(choices.fewer())
        .hasValueSatisfying(
            why ->
                assertThat(why)
                    .contains("of 5 choices")
                    .contains("nothing is made up to fill the gap"));
  }

  @Test
  void anAskWithSeveralValuesHasNoWrongOptions() throws UnreadableException {
    Choices choices = Choices.of(solution("x^3 - 7x + 7", "r^2 s + s^2 t + t^2 r"), 4);

    assertThat(choices.options()).hasSize(1);
    assertThat(choices.fewer()).isPresent();
  }

  @Test
  void aNumberOfChoicesOutsideThreeToFiveIsRefused() throws UnreadableException {
    Solution solution = solution("x^2 - 5x + 5", "r^2 + s^2");

    assertThatThrownBy(() -> Choices.of(solution, 6))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("not 6");
  }

  @Test
  void theSameSolutionAlwaysHasTheSameChoices() throws UnreadableException {
    Solution solution = solution("2x^3 - 6x^2 + x + 5", "Σ r^2");

    assertThat(Choices.of(solution, 4)).isEqualTo(Choices.of(solution, 4));
  }

  private static List<String> texts(Choices choices) {
    return choices.options().stream().map(Option::value).map(Numbers::text).toList();
  }

  static Solution solution(String polynomial, String ask) throws UnreadableException {
    return new Kinds()
        .solve(ProblemReader.read(Statement.of(polynomial, ask)), ClassProfile.EVERYTHING);
  }
}
