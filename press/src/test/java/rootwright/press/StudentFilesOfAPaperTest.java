package rootwright.press;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.LatexWriter;
import rootwright.algebra.notation.MathmlWriter;
import rootwright.algebra.notation.PlainWriter;
import rootwright.algebra.notation.SpokenWriter;
import rootwright.algebra.notation.UnicodeWriter;
import rootwright.composing.option.Choices;
import rootwright.press.deliverable.Deliverable;
import rootwright.press.deliverable.Deliverables;
import rootwright.press.deliverable.Erratum;
import rootwright.press.document.Audience;
import rootwright.press.document.Document;
import rootwright.press.document.Layout;
import rootwright.press.output.Output;
import rootwright.press.paper.Content;
import rootwright.press.paper.Form;
import rootwright.press.paper.Paper;
import rootwright.press.paper.PaperItem;
import rootwright.press.paper.Version;
import rootwright.working.problem.Statement;
import rootwright.working.solve.Solution;

/**
 * The files of a whole paper that go to students, in every format, searched through bytes,
 * properties, alternative texts, source and names for every answer in every spelling, for slips and
 * for lines of the solution.
 */
class StudentFilesOfAPaperTest {

  /** Asks whose answers do not stand in their statements. */
  private static final String[][] OPEN = {
    {"3x^3 - 7x^2 + 5x + 11", "r + s + t"},
    {"5x^3 - 10x^2 + x - 4", "1/(r-3) + 1/(s-3) + 1/(t-3)"},
    {"x^4 - x^3 - 3", "S_9"},
    {"x^3 - 3x^2 - 2x + 5", "1/(r^2-1) + 1/(s^2-1) + 1/(t^2-1)"},
    {"x^3 - 4x + 1", "r^2 s + s^2 t + t^2 r"},
    {"x^2 - 8x + 13", "roots"}
  };

  private static final String[] WHOLE = {"4x^3 - 10x^2 - x + 5", "r^2 + s^2 + t^2"};
  private static final String WHOLE_ANSWER = "31";
  private static final String[] CHOICE = {"2x^3 - 6x^2 + x + 5", "r^2 + s^2 + t^2"};

  private static PaperItem item(String[] problem, boolean whole) throws Exception {
    Statement statement = Statement.of(problem[0], problem[1]);
    Solution solution = PaperSamples.work(statement);
    return PaperItem.worked(
        statement, solution, whole ? new Form.WholeNumber() : new Form.Written(), 4);
  }

  private static Paper paper(String title) throws Exception {
    List<PaperItem> items = new ArrayList<>();
    for (String[] problem : OPEN) {
      items.add(item(problem, false));
    }
    items.add(item(WHOLE, true));
    Statement choice = Statement.of(CHOICE[0], CHOICE[1]);
    Solution solution = PaperSamples.work(choice);
    items.add(PaperItem.worked(choice, solution, Form.Choice.of(Choices.of(solution, 4)), 4));
    var content = PaperSamples.content(List.of(new Version("A", items)));
    return Paper.draft(
            new Content(
                title,
                content.language(),
                content.instruction(),
                content.date(),
                content.versions()))
        .checked(PaperSamples::work)
        .frozen();
  }

  static Stream<Arguments> files() throws Exception {
    Paper paper = paper("Thursday");
    List<Deliverable> all = new ArrayList<>(Deliverables.ALL);
    all.addAll(Erratum.sheets(paper("Wednesday"), "A misprint."));
    Stream.Builder<Arguments> files = Stream.builder();
    for (Deliverable deliverable : all) {
      if (deliverable.audience() == Audience.STUDENT) {
        for (Output output : Printed.OUTPUTS.all()) {
          Document document = deliverable.document(paper, "A", Layout.USUAL);
          if (output.holds(document)) {
            files.add(Arguments.of(deliverable.name(), output, document));
          }
        }
      }
    }
    return files.build();
  }

  /** Every spelling of every answer that is not among printed options. */
  private static Set<String> answers() throws Exception {
    Set<String> spellings = new LinkedHashSet<>();
    for (String[] problem : OPEN) {
      Solution solution = PaperSamples.work(Statement.of(problem[0], problem[1]));
      for (Formula value : solution.answer().alternatives()) {
        spell(value, spellings);
      }
    }
    spell(PaperSamples.work(Statement.of(WHOLE[0], WHOLE[1])).answer().formula(), spellings);
    spellings.add(WHOLE_ANSWER);
    return spellings;
  }

  private static void spell(Formula value, Set<String> into) {
    into.add(PlainWriter.write(value));
    into.add(UnicodeWriter.write(value));
    into.add(LatexWriter.write(value));
    into.add(SpokenWriter.write(value));
    into.add(MathmlWriter.write(value).replaceAll("^<math[^>]*>|</math>$", ""));
  }

  private static Pattern alone(String secret) {
    return Pattern.compile("(?<![\\p{L}\\d./−-])" + Pattern.quote(secret) + "(?![\\p{L}\\d./])");
  }

  @ParameterizedTest(name = "{0} as {1}")
  @MethodSource("files")
  void nothingThatStudentsGetTellsAnAnswerOrASlip(String name, Output output, Document document)
      throws Exception {
    List<String> texts =
        FileTexts.of(output.name(), document).stream()
            .map(text -> text.replaceAll("(?s)<style>.*?</style>", "").replaceAll("\\s+", " "))
            .toList();
    for (String secret : answers()) {
      Pattern pattern = alone(secret);
      assertThat(texts).as(secret).noneMatch(text -> pattern.matcher(text).find());
    }
    Set<String> words = new LinkedHashSet<>(List.of("correct-response", "correct answer", "Key:"));
    for (String[] problem : Stream.concat(Stream.of(OPEN), Stream.of(WHOLE, CHOICE)).toList()) {
      Solution solution = PaperSamples.work(Statement.of(problem[0], problem[1]));
      solution.slips().forEach(slip -> words.add(slip.name()));
      solution.slips().forEach(slip -> words.add(slip.text()));
    }
    for (String word : words) {
      assertThat(texts).as(word).noneMatch(text -> text.contains(word));
    }
  }

  @Test
  void theSearchFindsWhatTheKeyOfTheSamePaperTells() throws Exception {
    Document key =
        Deliverables.named("key").orElseThrow().document(paper("Thursday"), "A", Layout.USUAL);
    for (Output output : Printed.OUTPUTS.all()) {
      if (output.holds(key)) {
        String text = String.join(" ", FileTexts.of(output.name(), key)).replaceAll("\\s+", " ");
        long found = answers().stream().filter(one -> alone(one).matcher(text).find()).count();
        assertThat(found).as(output.name()).isGreaterThan(4);
      }
    }
  }

  @Test
  void theFileOfTheSolutionsHasAnotherNameAndTheSameCode() throws Exception {
    Paper paper = paper("Thursday");
    Deliverable sheet = Deliverables.named("sheet").orElseThrow();
    Deliverable solutions = Deliverables.named("solutions").orElseThrow();
    assertThat(sheet.fileName(paper, "A"))
        .isNotEqualTo(solutions.fileName(paper, "A"))
        .contains(paper.code());
    assertThat(solutions.fileName(paper, "A")).contains(paper.code());
    for (String secret : answers()) {
      assertThat(sheet.fileName(paper, "A").replace(paper.code(), "")).doesNotContain(secret);
    }
    assertThat(sheet.fileName(paper, "A").toLowerCase(Locale.ROOT)).doesNotContain("thursday");
  }
}
