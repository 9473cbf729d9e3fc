package rootwright.web.sentence;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rootwright.desk.Desk;
import rootwright.working.problem.Statement;
import rootwright.working.route.ClassProfile;
import rootwright.working.solve.Solution;

class SentencesTest {

  private static final Desk DESK = new Desk();
  private static final Pattern BLANK = Pattern.compile("\\{([a-z]+)}");
  private static final List<String> NAMES_OF_ROOTS = List.of("root", "roots");

  static Stream<Named<Sentence>> sentences() {
    return Sentences.ALL.stream().map(sentence -> Named.of(sentence.name(), sentence));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("sentences")
  void theExampleOfEverySentenceIsWorked(Sentence sentence) throws Exception {
    Statement statement =
        Statement.of(
            sentence.exampleOf(sentence.polynomial()), sentence.exampleOf(sentence.find()));
    Solution solution = DESK.work(statement, ClassProfile.EVERYTHING);
    assertThat(solution.answer().kind()).as(statement.find()).isNotEqualTo("none");
    assertThat(solution.statement()).isNotBlank();
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("sentences")
  void everyBlankHasALabelAnExampleAndAPlaceInTheWords(Sentence sentence) {
    List<String> blanks =
        BLANK
            .matcher(sentence.words())
            .results()
            .map(blank -> blank.group(1))
            .filter(name -> !NAMES_OF_ROOTS.contains(name))
            .toList();
    assertThat(sentence.labels().keySet()).containsExactlyInAnyOrderElementsOf(blanks);
    assertThat(sentence.example().keySet()).containsExactlyInAnyOrderElementsOf(blanks);
    assertThat(BLANK.matcher(sentence.polynomial() + sentence.find()).results())
        .allSatisfy(blank -> assertThat(blanks).contains(blank.group(1)));
    assertThat(sentence.exampleOf(sentence.telling()))
        .containsPattern(Pattern.compile(sentence.only()));
  }

  @Test
  void noTwoSentencesHaveOneName() {
    assertThat(Sentences.ALL).extracting(Sentence::name).doesNotHaveDuplicates();
  }
}
