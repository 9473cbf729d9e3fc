package rootwright.press;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import rootwright.press.document.Document;

/** Prints papers for the tests, each once only, and reads them back. */
public final class Printed {

  public static final Outputs OUTPUTS = Outputs.usual();

  private static final Map<Map.Entry<String, Document>, byte[]> BYTES = new ConcurrentHashMap<>();

  private Printed() {}

  /** The bytes of a paper in the output of this name. */
  public static byte[] bytes(String output, Document document) {
    return BYTES.computeIfAbsent(
        Map.entry(output, document), key -> OUTPUTS.named(output).orElseThrow().print(document));
  }

  /** The same as text. */
  public static String text(String output, Document document) {
    return new String(bytes(output, document), StandardCharsets.UTF_8);
  }

  /** The text layer of the PDF of a paper, in the order of the file. */
  public static String textLayer(Document document) {
    try (PDDocument pdf = Loader.loadPDF(bytes("pdf", document))) {
      return new PDFTextStripper().getText(pdf);
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  /** The files of a package by name, in their order. */
  public static Map<String, String> files(byte[] zip) {
    Map<String, String> files = new LinkedHashMap<>();
    try (ZipInputStream stream = new ZipInputStream(new ByteArrayInputStream(zip))) {
      for (ZipEntry entry = stream.getNextEntry(); entry != null; entry = stream.getNextEntry()) {
        files.put(entry.getName(), new String(stream.readAllBytes(), StandardCharsets.UTF_8));
      }
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
    return files;
  }
}
