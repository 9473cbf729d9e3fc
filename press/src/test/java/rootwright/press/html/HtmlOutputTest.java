package rootwright.press.html;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.StringReader;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.xml.sax.InputSource;
import rootwright.press.Printed;
import rootwright.press.Samples;

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
        new rootwright.press.document.Document(
            "<script>alert('x')</script>",
            rootwright.press.document.Language.ENGLISH,
            rootwright.press.document.Audience.STUDENT,
            rootwright.press.document.Layout.USUAL,
            Samples.IDENTITY,
            java.util.List.of(rootwright.press.document.Block.paragraph("a < b & c")));
    assertThat(Printed.text("html", paper)).doesNotContain("<script>").contains("a &lt; b &amp; c");
  }
}
