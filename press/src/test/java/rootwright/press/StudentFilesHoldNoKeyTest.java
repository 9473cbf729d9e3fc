package rootwright.press;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSObject;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.cos.COSString;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import rootwright.press.document.Block;
import rootwright.press.document.Document;
import rootwright.press.document.Response;
import rootwright.press.document.Scoring;
import rootwright.press.output.Output;

/** Whatever is handed to students is searched for what only the coach may know. */
class StudentFilesHoldNoKeyTest {

  /** Answers of the open items and words of the key; none of them is in a statement. */
  private static final Pattern SECRETS =
      Pattern.compile(
          "(?<!\\d)(109|26|11/3)(?!\\d)|frac\\{11\\}\\{3\\}" + "|Key|Also accepted|slip|forgotten");

  @Test
  void aPaperForStudentsWithAKeyCannotBeMade() {
    Document sheet = Samples.worksheet();
    Block.Item keyed =
        new Block.Item(
            1,
            Optional.empty(),
            List.of(),
            new Response.Work(0),
            Optional.of(new Scoring.ByText("26", List.of())));
    Block framed = new Block.Frame(List.of(), List.of(keyed));
    assertThatIllegalArgumentException()
        .isThrownBy(
            () ->
                new Document(
                    sheet.title(),
                    sheet.language(),
                    sheet.audience(),
                    sheet.layout(),
                    sheet.identity(),
                    List.of(framed)))
        .withMessageContaining("item 1");
  }

  @Test
  void noOutputOfAWorksheetHoldsAnAnswer() throws IOException {
    for (Output output : Printed.OUTPUTS.all()) {
      for (String text : everythingIn(output.name(), Samples.worksheet())) {
        String bare = text.replaceAll("(?s)<style>.*?</style>", "");
        assertThat(bare).as(output.name()).doesNotContainPattern(SECRETS);
      }
    }
  }

  @Test
  void theSearchFindsTheAnswersOfAKey() throws IOException {
    for (Output output : Printed.OUTPUTS.all()) {
      assertThat(String.join("\n", everythingIn(output.name(), Samples.key())))
          .as(output.name())
          .contains("109");
    }
  }

  /** Every text in a file, with streams and packages unpacked. */
  private static List<String> everythingIn(String output, Document document) throws IOException {
    byte[] bytes = Printed.bytes(output, document);
    return switch (output) {
      case "qti" -> new ArrayList<>(Printed.files(bytes).values());
      case "pdf" -> everythingInPdf(bytes, document);
      default -> List.of(new String(bytes, StandardCharsets.UTF_8));
    };
  }

  private static List<String> everythingInPdf(byte[] bytes, Document document) throws IOException {
    List<String> texts = new ArrayList<>();
    texts.add(Printed.textLayer(document).replaceAll("page \\d+ of \\d+", ""));
    try (PDDocument pdf = Loader.loadPDF(bytes)) {
      pdf.getDocument()
          .getXrefTable()
          .keySet()
          .forEach(key -> collect(pdf.getDocument().getObjectFromPool(key).getObject(), texts));
      texts.add(
          new String(pdf.getDocumentCatalog().getMetadata().toByteArray(), StandardCharsets.UTF_8));
    }
    return texts;
  }

  /** The strings of properties, alternative texts and the like; the pages are read as text. */
  private static void collect(COSBase base, List<String> into) {
    if (base instanceof COSString string) {
      into.add(string.getString());
    } else if (base instanceof COSArray array) {
      array.forEach(element -> collectDirect(element, into));
    } else if (base instanceof COSDictionary dictionary && !isPageStream(base)) {
      dictionary
          .entrySet()
          .forEach(
              entry -> {
                if (!entry.getKey().getName().equals("ID")) {
                  collectDirect(entry.getValue(), into);
                }
              });
    }
  }

  private static void collectDirect(COSBase base, List<String> into) {
    if (!(base instanceof COSObject)) {
      collect(base, into);
    }
  }

  private static boolean isPageStream(COSBase base) {
    return base instanceof COSStream;
  }
}
