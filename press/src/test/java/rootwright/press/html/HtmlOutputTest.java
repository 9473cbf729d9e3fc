package rootwright.press.html;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.StringReader;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.xml.sax.InputSource;
import rootwright.press.Printed;
import rootwright.press.Samples;
import rootwright.press.document.Audience;
import rootwright.press.document.Block;
import rootwright.press.document.Document;
import rootwright.press.document.Language;
import rootwright.press.document.Layout;

class HtmlOutputTest {

  private static final String SOLUTIONS = Printed.text("html", Samples.solutions());

  @Test
  void thePageFetchesNothing() {
    String bare =
        SOLUTIONS
            .replace("http://www.w3.org/1998/Math/MathML", "")
            .replace("http://www.w3.org/2000/svg", "");
    assertThat(bare)
        .doesNotContain("http:", "https:", "src=", "<link", "<script", "@import", "url(");
  }

  @Test
  void everyElementIsClosedInOrder() throws Exception {
    String xml = SOLUTIONS.replace("<!DOCTYPE html>", "").replaceAll("(?s)<style>.*?</style>", "");
    DocumentBuilderFactory.newInstance()
        .newDocumentBuilder()
        .parse(new InputSource(new StringReader(xml)));
  }

  @Test
  void thePageHasItsLanguageOneTitleAndFormulasForReaders() {
    assertThat(SOLUTIONS).contains("<html lang=\"en\">").containsOnlyOnce("<h1>").contains("<math");
  }

  @Test
  void aTitleFromAPersonIsNeverMarkup() {
    var paper =
        new Document(
            "<script>alert('x')</script>",
            Language.ENGLISH,
            Audience.STUDENT,
            Layout.USUAL,
            Samples.IDENTITY,
            List.of(Block.paragraph("a < b & c")));
    assertThat(Printed.text("html", paper)).doesNotContain("<script>").contains("a &lt; b &amp; c");
  }
}
