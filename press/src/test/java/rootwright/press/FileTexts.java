package rootwright.press;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSObject;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.cos.COSString;
import org.apache.pdfbox.pdmodel.PDDocument;
import rootwright.press.document.Document;

/** Everything in a printed file that can be read in any way: text, properties, source. */
final class FileTexts {

  private FileTexts() {}

  /** Every text in a file, with streams and packages unpacked. */
  static List<String> of(String output, Document document) throws IOException {
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
