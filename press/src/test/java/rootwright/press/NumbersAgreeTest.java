package rootwright.press;

import static org.assertj.core.api.Assertions.assertThat;

import java.text.Normalizer;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rootwright.press.deliverable.Deliverable;
import rootwright.press.deliverable.Deliverables;
import rootwright.press.document.Audience;
import rootwright.press.document.Block;
import rootwright.press.document.Document;
import rootwright.press.document.Identity;
import rootwright.press.document.Layout;
import rootwright.press.document.Scoring;
import rootwright.press.paper.BlockedException;
import rootwright.press.paper.Paper;

/** One document, many outputs: none may show a number that another does not. */
class NumbersAgreeTest {

  private static final Pattern NUMBER = Pattern.compile("\\d+");

  static Stream<Document> papers() {
    return Stream.of(Samples.worksheet(), Samples.key(), Samples.solutions())
        .map(NumbersAgreeTest::withoutCode);
  }

  static Stream<Document> ofOnePaper() {
    Paper paper = PaperSamples.frozen();
    return Deliverables.ALL.stream().map(deliverable -> withoutCode(document(deliverable, paper)));
  }

  private static Document document(Deliverable deliverable, Paper paper) {
    try {
      return deliverable.document(paper, "", Layout.USUAL);
    } catch (BlockedException impossible) {
      throw new AssertionError(impossible);
    }
  }

  /** A code has digits too, and stands on each page. */
  private static Document withoutCode(Document paper) {
    return new Document(
        paper.title(),
        paper.language(),
        paper.audience(),
        paper.layout(),
        Identity.draft(Samples.DAY),
        paper.blocks());
  }

  @ParameterizedTest
  @MethodSource("papers")
  void everyOutputShowsTheSameNumbersInTheSameOrder(Document paper) {
    List<String> plain = numbers(Printed.text("text", paper));
    assertThat(plain).hasSizeGreaterThan(30);
    assertThat(numbers(visibleHtml(Printed.text("html", paper)))).isEqualTo(plain);
    assertThat(numbers(visibleLatex(Printed.text("latex", paper)))).isEqualTo(plain);
    assertThat(numbers(Printed.textLayer(paper).replaceAll("page \\d+ of \\d+", "")))
        .isEqualTo(plain);
  }

  /** In tables a number may stand in another order: a row of several lines is read line by line. */
  @ParameterizedTest
  @MethodSource("ofOnePaper")
  void everyDocumentOfAPaperShowsTheSameNumbersInEveryOutput(Document paper) {
    List<String> plain = numbers(Printed.text("text", paper));
    assertThat(plain).isNotEmpty();
    assertThat(numbers(visibleHtml(Printed.text("html", paper))))
        .containsExactlyInAnyOrderElementsOf(plain);
    assertThat(numbers(visibleLatex(Printed.text("latex", paper))))
        .containsExactlyInAnyOrderElementsOf(plain);
    assertThat(numbers(Printed.textLayer(paper).replaceAll("page \\d+ of \\d+", "")))
        .containsExactlyInAnyOrderElementsOf(plain);
  }

  @ParameterizedTest
  @MethodSource("papers")
  void aPackageShowsTheNumbersOfEachItem(Document paper) {
    if (paper.items().isEmpty()) {
      return;
    }
    Map<String, String> files = Printed.files(Printed.bytes("qti", paper));
    for (Block.Item item : paper.items()) {
      String body =
          files
              .get("items/item-" + item.number() + ".xml")
              .replaceAll("(?s)^.*<qti-item-body>|</qti-item-body>.*$", "");
      String alone = Printed.text("text", onlyItem(paper, item));
      List<String> expected = numbers(alone);
      // The plain text begins with the number of the item and its points.
      assertThat(numbers(visibleHtml(body)))
          .as("item %d", item.number())
          .isEqualTo(expected.subList(2, expected.size()));
    }
  }

  @ParameterizedTest
  @MethodSource("papers")
  void aPackageScoresWhatTheKeySays(Document paper) {
    for (Block.Item item : paper.items()) {
      if (item.scoring().isPresent() && item.scoring().get() instanceof Scoring.ByText key) {
        String file =
            Printed.files(Printed.bytes("qti", paper)).get("items/item-" + item.number() + ".xml");
        assertThat(file).contains("<qti-value>" + key.exact() + "</qti-value>");
        assertThat(Printed.text("text", paper)).contains(key.exact().replace('-', '−'));
      }
    }
  }

  private static Document onlyItem(Document paper, Block.Item item) {
    Block bare =
        new Block.Item(
            item.number(), item.points(), item.statement(), item.response(), Optional.empty());
    return new Document(
        "One item",
        paper.language(),
        Audience.COACH,
        paper.layout(),
        paper.identity(),
        List.of(bare));
  }

  /** The runs of digits; a raised or lowered run is a number of its own. */
  private static List<String> numbers(String text) {
    String level =
        Pattern.compile("[⁰¹²³⁴⁵⁶⁷⁸⁹]+|[₀-₉]+")
            .matcher(text)
            .replaceAll(run -> " " + Normalizer.normalize(run.group(), Normalizer.Form.NFKC) + " ");
    return NUMBER.matcher(level).results().map(found -> found.group()).toList();
  }

  /** What a reader of the page sees: no style, no attributes. */
  private static String visibleHtml(String html) {
    return counted(html, "(?s)<ol>.*?</ol>", "<li>")
        .replaceAll("(?s)<style>.*?</style>|<title>.*?</title>", " ")
        .replaceAll("<[^>]*>", " ")
        .replaceAll("&#\\d+;", " ");
  }

  /** What a reader of the typeset page sees: no preamble and no lengths. */
  private static String visibleLatex(String latex) {
    String body = latex.substring(latex.indexOf("\\begin{document}"));
    String counted =
        Pattern.compile("\\\\setcounter\\{enumi\\}\\{(\\d+)\\}")
            .matcher(body)
            .replaceAll(found -> String.valueOf(Integer.parseInt(found.group(1)) + 1));
    return counted(counted, "(?s)\\\\begin\\{enumerate\\}\n.*?\\\\end\\{enumerate\\}", "\\item ")
        .replaceAll("p\\{0\\.\\d+\\\\linewidth\\}|0\\.\\d+\\\\linewidth|parskip=0.4em", "")
        .replaceAll("\\\\vspace\\*\\{\\d+mm\\}|\\\\rule\\{\\d+mm\\}\\{0.4pt\\}|leftskip=2em", "");
  }

  /** Puts the numbers that a browser or TeX adds before the entries of a numbered list. */
  private static String counted(String source, String list, String entry) {
    return Pattern.compile(list)
        .matcher(source)
        .replaceAll(
            found -> {
              String[] entries = found.group().split(Pattern.quote(entry), -1);
              StringBuilder text = new StringBuilder(entries[0]);
              for (int k = 1; k < entries.length; k++) {
                text.append(' ').append(k).append(". ").append(entries[k]);
              }
              return Matcher.quoteReplacement(text.toString());
            });
  }
}
