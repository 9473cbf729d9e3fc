package rootwright.lesson.slide;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.StringReader;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rootwright.lesson.Lessons;
import rootwright.lesson.picture.Ink;
import rootwright.lesson.picture.Layer;
import rootwright.lesson.picture.Mark;
import rootwright.lesson.picture.Painter;
import rootwright.lesson.picture.Picture;
import rootwright.lesson.picture.SvgWriter;
import rootwright.lesson.show.HtmlShow;
import rootwright.working.topic.Topic;
import rootwright.working.topic.Topics;

class DeckTest {

  static Stream<String> topics() {
    return Topics.ALL.stream().map(Topic::name);
  }

  @ParameterizedTest
  @MethodSource("topics")
  void everyMarkLiesOnItsSlideAndLettersAreLargeEnough(String topic) throws Exception {
    for (Picture slide : Lessons.script(topic).deck().slides()) {
      for (Layer layer : slide.layers()) {
        for (Mark mark : layer.marks()) {
          if (mark instanceof Mark.Letters letters) {
            assertThat(letters.size()).isGreaterThanOrEqualTo(48);
            assertThat(letters.baseline()).as(letters.text()).isBetween(40.0, 1080.0);
            assertThat(letters.x()).as(letters.text()).isBetween(60.0, 1880.0);
          } else if (mark instanceof Mark.Outline outline) {
            assertThat(outline.y() + outline.drawing().height())
                .as("%s: %s", slide.title(), layer.label())
                .isLessThan(1080);
            assertThat(outline.x() + outline.drawing().width())
                .as("%s: %s", slide.title(), layer.label())
                .isLessThan(1920);
          }
        }
      }
    }
  }

  @ParameterizedTest
  @MethodSource("topics")
  void everyRevealOfEverySlideIsOneBeatInOrder(String topic) throws Exception {
    Deck deck = Lessons.script(topic).deck();
    int slide = -1;
    int reveal = -1;
    for (Beat beat : deck.beats()) {
      boolean next = beat.slide() == slide + 1 && beat.reveal() == 0;
      assertThat(next || (beat.slide() == slide && beat.reveal() == reveal + 1))
          .as(beat.toString())
          .isTrue();
      slide = beat.slide();
      reveal = beat.reveal();
      assertThat(reveal).isLessThanOrEqualTo(deck.slides().get(slide).lastReveal());
    }
    assertThat(slide).isEqualTo(deck.slides().size() - 1);
  }

  @Test
  void whatGoesIsStruckOutAndWhatIsNewIsUnderlinedWithTheSameReveal() throws Exception {
    Picture example =
        Lessons.script("newton-identities").deck().slides().stream()
            .filter(slide -> slide.title().equals("Worked example"))
            .findFirst()
            .orElseThrow();
    Layer struck =
        example.layers().stream().filter(layer -> has(layer, Ink.STRUCK)).findFirst().orElseThrow();

    assertThat(struck.from()).isGreaterThan(0);
    assertThat(example.layers())
        .anyMatch(
            layer ->
                layer.from() == struck.from()
                    && layer.marks().stream()
                        .anyMatch(
                            mark ->
                                mark instanceof Mark.Stroke stroke
                                    && stroke.ink() == Ink.FRESH
                                    && stroke.points().size() == 2));
  }

  @Test
  void aStillIsWellFormedAndItsWordsAreInItsLabel() throws Exception {
    Picture slide = Lessons.script("newton-identities").deck().slides().get(1);
    String file = SvgWriter.file(slide);

    assertThat(file).contains("aria-label=").contains("e one times p two");
    assertThat(rootElement(file)).isEqualTo("svg");
  }

  @Test
  void aStillInPixelsIs1920By1080AndNotBlank() throws Exception {
    BufferedImage image = Painter.paint(Lessons.script("newton-identities").deck().slides().get(1));

    assertThat(image.getWidth()).isEqualTo(1920);
    assertThat(image.getHeight()).isEqualTo(1080);
    int paper = image.getRGB(2, 2);
    long inked =
        IntStream.range(0, 1920 * 1080)
            .filter(k -> image.getRGB(k % 1920, k / 1920) != paper)
            .count();
    assertThat(inked).isGreaterThan(5_000);
  }

  @Test
  void theShowNeedsNothingFromElsewhere() throws Exception {
    String show = HtmlShow.write(Lessons.script("newton-identities"));

    assertThat(show)
        .doesNotContain("src=")
        .doesNotContain("url(")
        .doesNotContain("@import")
        .doesNotContain("http://www.w3.org/1999/xlink\" href");
  }

  private static boolean has(Layer layer, Ink ink) {
    return layer.label().isEmpty()
        && layer.marks().stream()
            .anyMatch(mark -> mark instanceof Mark.Stroke stroke && stroke.ink() == ink);
  }

  private static String rootElement(String file) throws Exception {
    DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
    return factory
        .newDocumentBuilder()
        .parse(new org.xml.sax.InputSource(new StringReader(file)))
        .getDocumentElement()
        .getNodeName();
  }
}
