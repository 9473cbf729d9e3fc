package rootwright.composing.hint;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import rootwright.algebra.notation.UnicodeWriter;
import rootwright.algebra.notation.UnreadableException;
import rootwright.algebra.number.Rational;
import rootwright.composing.option.Choices;
import rootwright.working.Subjects;
import rootwright.working.answer.Answer;
import rootwright.working.ask.ProblemReader;
import rootwright.working.check.exact.ExactCheck;
import rootwright.working.kind.Kinds;
import rootwright.working.problem.Statement;
import rootwright.working.route.ClassProfile;
import rootwright.working.route.Routes;
import rootwright.working.slip.Slips;
import rootwright.working.solve.Solution;
import rootwright.working.solve.TwoChecks;

class HintLadderTest {

  private static final Pattern NUMBER = Pattern.compile("[0-9]+(/[0-9]+)?");

  @Test
  void fiveHintsLeadToASumOfShiftedReciprocalsWithoutSayingIt() throws UnreadableException {
    List<String> hints = hints(solution("5x^3 - 10x^2 + x - 4", "Σ 1/(r - 3)"));

    assertThat(hints).hasSize(5).doesNotHaveDuplicates();
    assertThat(hints).noneMatch(hint -> hint.contains("19/11"));
    assertThat(hints.subList(0, 2)).noneMatch(hint -> NUMBER.matcher(hint).find());
  }

  @Test
  void theValuesOfTwoLettersStandInNoHint() throws UnreadableException {
    Solution solution =
        new Subjects(new Kinds())
            .work(
                Statement.of("x^3 + 2x^2 + ax + b", "a, b if 1 + sqrt(3) is a root"),
                ClassProfile.EVERYTHING);

    assertThat(solution.answer().alternatives().stream().map(UnicodeWriter::write))
        .containsExactly("a = −10, b = −8");
    assertThat(hints(solution)).noneMatch(hint -> hint.matches("(?s).*\\b(8|10)\\b.*"));
  }

  @Test
  void theLineInLettersComesBeforeTheFirstLineWithNumbers() throws UnreadableException {
    List<Rung> rungs = ladder(solution("2x^3 - 6x^2 + x + 5", "Σ r^2")).rungs();

    assertThat(rungs.get(2).line().map(UnicodeWriter::write)).hasValue("Σr² = e₁² − 2e₂");
    assertThat(rungs.get(3).line().map(UnicodeWriter::write))
        .hasValueSatisfying(line -> assertThat(line).startsWith("e₁ = ").endsWith(" = 3"));
    assertThat(rungs.get(4).text()).contains("One operation is left");
  }

  @Test
  void aReadOffOfOneLineStillHasFiveHints() throws UnreadableException {
    List<String> hints = hints(solution("x^3 - 7x^2 + 5x + 11", "r + s + t"));

    assertThat(hints).hasSize(5).noneMatch(hint -> hint.contains("7"));
  }

  @Test
  void aReasonIsNotSaidTwice() throws UnreadableException {
    List<String> hints = hints(solution("x^2 - 4x - 3", "r^4 - 4r^3 - 4r^2 + 4r + 10"));

    assertThat(hints.get(2)).contains("divide by P");
    assertThat(hints.get(4)).doesNotContain("divide by P");
  }

  @Test
  void withoutAWorkingThereAreNoHints() throws UnreadableException {
    assertThat(HintLadder.of(solution("x^3 - 3x^2 + x + 2", "Σ 1/(r - 2)")))
        .isEqualTo(Optional.empty());
  }

  @Test
  void aLineThatWouldSayTheAnswerIsSaidInWordsInstead() throws UnreadableException {
    // e₁ = 2 and the answer is 2² − 2·1 = 2: no line with a 2 in it may be shown.
    List<Rung> rungs = ladder(solution("x^3 - 2x^2 + x - 5", "Σ r^2")).rungs();

    assertThat(rungs)
        .allSatisfy(
            rung ->
                assertThat(rung.line().map(UnicodeWriter::write).orElse("")).doesNotContain("2"));
  }

  @Test
  void anAnswerWithARootSignIsNotSaidInTheReasonOfTheLastLineEither() throws UnreadableException {
    Solution solution = solution("x^2 - 5x + 3", "r^3 - s^3");

    assertThat(solution.routes().get(0).steps())
        .anySatisfy(step -> assertThat(UnicodeWriter.write(step.shown())).contains("√13"));
    assertThat(hints(solution)).noneMatch(hint -> hint.contains("√") || hint.contains("22√13"));
  }

  @Test
  void aPolynomialThatIsTheAnswerIsNotSaidInAnotherLetterEither() throws UnreadableException {
    Solution solution = solution("2x^3 + 6x^2 + 7x + 12", "polynomial with roots (r + s)");
    // The answer is 2x³ + 12x² + 25x + 9; the working has it in y first.
    assertThat(HintLadder.of(solution).orElseThrow().rungs())
        .noneMatch(rung -> rung.text().contains("25y") || rung.text().contains("25x"));
  }

  @Test
  void noHintOfASampledProblemHasTheAnswerOrEndsInAWrongOption() throws UnreadableException {
    long seed = Long.getLong("rootwright.seed", 7L);
    SplittableRandom random = new SplittableRandom(seed);
    List<String> asks =
        List.of("Σ r^2", "Σ 1/r", "Π (2 - r)", "Σ r^3", "Σ 1/(r - 2)", "Σ r^2 s", "Σ r", "Σ r^5");
    Kinds kinds =
        new Kinds(Routes.ALL, Slips.ALL, new TwoChecks(new ExactCheck(), new ExactCheck()));
    int ladders = 0;
    for (int round = 0; round < 60; round++) {
      String polynomial =
          "%d %d %d %d"
              .formatted(
                  1 + random.nextInt(3),
                  random.nextInt(-9, 10),
                  random.nextInt(-9, 10),
                  1 + random.nextInt(9));
      Solution solution =
          kinds.solve(
              ProblemReader.read(Statement.of(polynomial, asks.get(round % asks.size()))),
              ClassProfile.EVERYTHING);
      Optional<HintLadder> ladder = HintLadder.of(solution);
      if (ladder.isEmpty() || !(solution.answer() instanceof Answer.Exact)) {
        continue;
      }
      ladders++;
      Rational key =
          Rational.parse(UnicodeWriter.write(solution.answer().formula()).replace('−', '-'));
      List<Rational> wrong = new ArrayList<>();
      Choices.everyWrong(solution)
          .forEach(
              slip ->
                  wrong.add(
                      Rational.parse(
                          UnicodeWriter.write(slip.value().formula()).replace('−', '-'))));
      for (Rung rung : ladder.get().rungs()) {
        assertThat(numbers(rung.text()))
            .as("%s in \"%s\", seed %d", key, rung.text(), seed)
            .doesNotContain(key.absolute());
        String text = rung.line().map(UnicodeWriter::write).orElse("0").replace('−', '-');
        String end = text.substring(text.lastIndexOf('=') + 1).trim();
        if (end.matches("-?[0-9]+(/[0-9]+)?") && rung.line().isPresent()) {
          assertThat(wrong)
              .as("\"%s\", seed %d", rung.text(), seed)
              .doesNotContain(Rational.parse(end));
        }
      }
    }
    assertThat(ladders).as("seed %d", seed).isGreaterThan(30);
  }

  /** The numbers of a text, without their signs; raised and lowered figures are not among them. */
  private static List<Rational> numbers(String text) {
    List<Rational> numbers = new ArrayList<>();
    Matcher matcher = NUMBER.matcher(text);
    while (matcher.find()) {
      numbers.add(Rational.parse(matcher.group()));
    }
    return numbers;
  }

  private static HintLadder ladder(Solution solution) {
    return HintLadder.of(solution).orElseThrow();
  }

  private static List<String> hints(Solution solution) {
    return ladder(solution).rungs().stream().map(Rung::text).toList();
  }

  private static Solution solution(String polynomial, String ask) throws UnreadableException {
    return new Kinds()
        .solve(ProblemReader.read(Statement.of(polynomial, ask)), ClassProfile.EVERYTHING);
  }
}
