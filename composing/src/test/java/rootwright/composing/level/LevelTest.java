package rootwright.composing.level;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rootwright.algebra.notation.UnreadableException;
import rootwright.algebra.number.Rational;
import rootwright.working.ask.ProblemReader;
import rootwright.working.kind.Kinds;
import rootwright.working.problem.Statement;
import rootwright.working.route.ClassProfile;
import rootwright.working.solve.Solution;

class LevelTest {

  @Test
  void aReadOffFromAMonicCubicIsLevelOne() throws UnreadableException {
    Level level = level("x^3 - 7x^2 + 5x + 11", "r + s + t");

    assertThat(level.number()).isEqualTo(1);
    assertThat(level.words())
        .startsWith("level 1, estimated: no ideas beyond reading off, one step, numbers under ");
  }

  @Test
  void aSumOfShiftedReciprocalsWithALeadIsLevelFour() throws UnreadableException {
    Level level = level("5x^3 - 10x^2 + x - 4", "Σ 1/(r - 3)");

    assertThat(level.number()).isEqualTo(4);
    assertThat(level.words())
        .startsWith("level 4, estimated: ")
        .contains("beyond reading off")
        .contains("a lead other than 1")
        .contains("a fraction for an answer");
  }

  @Test
  void theSharesOfTheFeaturesAddUpToTheDifficulty() throws UnreadableException {
    Level level = level("2x^3 - 6x^2 + x + 5", "Σ r^2");

    assertThat(level.features().stream().map(Feature::share).reduce(Level.START, Rational::plus))
        .isEqualTo(level.difficulty());
    assertThat(level.features().stream().map(Feature::name))
        .contains("degree", "lead", "ideas", "lines", "numbers", "class", "slips");
  }

  @Test
  void missingTermsAndSurpriseAreCountedWithoutWeight() throws UnreadableException {
    Level level = level("x^4 - x - 3", "Σ r^5");

    assertThat(level.features())
        .anySatisfy(
            feature -> {
              assertThat(feature.name()).isEqualTo("missing-terms");
              assertThat(feature.amount()).isEqualTo(Rational.TWO);
              assertThat(feature.share()).isEqualTo(Rational.ZERO);
            })
        .anySatisfy(
            feature -> {
              assertThat(feature.name()).isEqualTo("surprise");
              assertThat(feature.amount()).isGreaterThanOrEqualTo(Rational.ONE);
            });
  }

  @Test
  void aLeadOtherThanOneMakesAProblemHarder() throws UnreadableException {
    assertThat(level("3x^3 - 6x^2 + 3x + 9", "Σ r^2").difficulty())
        .isGreaterThan(level("x^3 - 2x^2 + x + 3", "Σ r^2").difficulty());
  }

  @Test
  void harderAsksOfOnePolynomialAreHarder() throws UnreadableException {
    String polynomial = "x^3 - 5x^2 + 2x - 1";
    Rational readOff = level(polynomial, "Σ r").difficulty();
    Rational squares = level(polynomial, "Σ r^2").difficulty();
    Rational farPower = level(polynomial, "Σ r^7").difficulty();

    assertThat(readOff).isLessThan(squares);
    assertThat(squares).isLessThan(farPower);
  }

  @Test
  void aCyclicSumWithTwoValuesCountsAsFarFromAReadOffAndAsSeveralAnswers()
      throws UnreadableException {
    Level level = level("x^3 - 7x + 7", "r^2 s + s^2 t + t^2 r");

    assertThat(level.features())
        .anySatisfy(
            feature -> {
              assertThat(feature.name()).isEqualTo("class");
              assertThat(feature.amount()).isEqualTo(Rational.of(4));
            })
        .anySatisfy(
            feature -> {
              assertThat(feature.name()).isEqualTo("several");
              assertThat(feature.amount()).isEqualTo(Rational.ONE);
            });
  }

  @Test
  void withoutAWorkingNoLevelIsClaimed() throws UnreadableException {
    assertThat(Level.of(solution("x^3 - 3x^2 + x + 2", "Σ 1/(r - 2)"))).isEqualTo(Optional.empty());
  }

  @ParameterizedTest
  @CsvSource({
    "-22/10, 1",
    "-151/100, 1",
    "-3/2, 2",
    "-1/2, 3",
    "49/100, 3",
    "1/2, 4",
    "3/2, 5",
    "9, 5"
  })
  void levelsEndWhereTheModelSays(String difficulty, int level) {
    assertThat(Level.numberOf(Rational.parse(difficulty))).isEqualTo(level);
  }

  private static Level level(String polynomial, String ask) throws UnreadableException {
    return Level.of(solution(polynomial, ask)).orElseThrow();
  }

  private static Solution solution(String polynomial, String ask) throws UnreadableException {
    return new Kinds()
        .solve(ProblemReader.read(Statement.of(polynomial, ask)), ClassProfile.EVERYTHING);
  }
}
