package rootwright.press;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import rootwright.press.deliverable.Deliverables;
import rootwright.press.document.Document;
import rootwright.press.document.Layout;
import rootwright.press.document.PageFormat;
import rootwright.press.document.TextSize;
import rootwright.press.paper.BlockedException;
import rootwright.press.paper.Paper;

/**
 * The pages as a person sees them, compared with pages that a person has looked at. After a wanted
 * change, look at the new ones and keep them: {@code -Dgolden.rewrite=true}.
 */
class GoldenPagesTest {

  private static final int DOTS_PER_INCH = 60;

  /** Letters may be smoothed a little differently from one Java to the next. */
  private static final double MOST_DIFFERENT = 0.0005;

  static Stream<Arguments> pages() {
    return Stream.of(
        Arguments.of("worksheet", Samples.worksheet()),
        Arguments.of("key", Samples.key()),
        Arguments.of("solutions", Samples.solutions()),
        Arguments.of(
            "worksheet-large",
            Samples.worksheet().withLayout(Layout.USUAL.withSize(TextSize.LARGE))),
        Arguments.of("paper-key", of("key", Layout.USUAL)),
        Arguments.of("paper-solutions", of("solutions", Layout.USUAL)),
        Arguments.of("paper-routes", of("routes", Layout.USUAL)),
        Arguments.of("paper-marks", of("marks", Layout.USUAL)),
        Arguments.of("paper-handout", of("handout", Layout.USUAL)),
        Arguments.of("paper-hints", of("hints", Layout.USUAL)),
        Arguments.of("paper-compare", of("compare", Layout.USUAL)),
        Arguments.of("paper-marks-giant", of("marks", Layout.USUAL.withSize(TextSize.GIANT))),
        Arguments.of("paper-sheet-letter", of("sheet", LETTER)),
        Arguments.of("kinds-sheet", of(PaperSamples.ofManyKinds(), "sheet", Layout.USUAL)),
        Arguments.of("kinds-solutions", of(PaperSamples.ofManyKinds(), "solutions", Layout.USUAL)));
  }

  private static final Layout LETTER = new Layout(PageFormat.LETTER, TextSize.REGULAR);

  private static Document of(String deliverable, Layout layout) {
    return of(PaperSamples.frozen(), deliverable, layout);
  }

  private static Document of(Paper paper, String deliverable, Layout layout) {
    try {
      return Deliverables.named(deliverable).orElseThrow().document(paper, "", layout);
    } catch (BlockedException blocked) {
      throw new AssertionError(blocked);
    }
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("pages")
  void theFirstPageLooksAsItDid(String name, Document paper) throws IOException {
    BufferedImage page = firstPage(paper);
    if (Boolean.getBoolean("golden.rewrite")) {
      Path file = Path.of("src/test/resources/golden", name + ".png");
      Files.createDirectories(file.getParent());
      ImageIO.write(page, "png", file.toFile());
    }
    BufferedImage golden = golden(name);
    assertThat(page.getWidth()).isEqualTo(golden.getWidth());
    assertThat(page.getHeight()).isEqualTo(golden.getHeight());
    assertThat(difference(page, golden)).isLessThan(MOST_DIFFERENT);
  }

  private static BufferedImage firstPage(Document paper) throws IOException {
    try (PDDocument pdf = Loader.loadPDF(Printed.bytes("pdf", paper))) {
      return new PDFRenderer(pdf).renderImageWithDPI(0, DOTS_PER_INCH, ImageType.GRAY);
    }
  }

  private static BufferedImage golden(String name) throws IOException {
    try (InputStream stream =
        GoldenPagesTest.class.getResourceAsStream("/golden/" + name + ".png")) {
      assertThat(stream).as("no page to compare with: " + name).isNotNull();
      return ImageIO.read(stream);
    }
  }

  /** The share of the dots that differ clearly. */
  private static double difference(BufferedImage page, BufferedImage golden) {
    long different = 0;
    for (int y = 0; y < page.getHeight(); y++) {
      for (int x = 0; x < page.getWidth(); x++) {
        int grey = page.getRaster().getSample(x, y, 0);
        if (Math.abs(grey - golden.getRaster().getSample(x, y, 0)) > 48) {
          different++;
        }
      }
    }
    return different / (double) (page.getWidth() * page.getHeight());
  }
}
