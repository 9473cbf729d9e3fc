package rootwright.press.qti;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import rootwright.press.document.Block;
import rootwright.press.document.Document;
import rootwright.press.formula.FormulaScripts;
import rootwright.press.output.Output;
import rootwright.press.output.UnprintableException;

/**
 * A QTI 3.0 package: the manifest, one file for each item, and the test that holds them in order.
 *
 * <p>What is right stands in the response declarations of the items, so the package of a paper with
 * its scoring is for the program that delivers it, not for students. An item without scoring is
 * declared to be scored by a person.
 */
public final class QtiOutput implements Output {

  private final FormulaScripts scripts;

  /** With the ways to write formulas. */
  public QtiOutput(FormulaScripts scripts) {
    this.scripts = scripts;
  }

  @Override
  public String name() {
    return "qti";
  }

  @Override
  public String title() {
    return "QTI 3.0 package for a testing program";
  }

  @Override
  public String extension() {
    return "zip";
  }

  @Override
  public String mediaType() {
    return "application/zip";
  }

  @Override
  public boolean holds(Document document) {
    return !document.items().isEmpty();
  }

  @Override
  public byte[] print(Document document) {
    List<Block.Item> items = document.items();
    if (items.isEmpty()) {
      throw new UnprintableException("The paper has no item, so there is nothing to package.");
    }
    Map<String, String> files = new LinkedHashMap<>();
    files.put("imsmanifest.xml", QtiManifest.write(document));
    files.put(QtiManifest.TEST_FILE, new QtiTest(document, scripts).write());
    for (Block.Item item : items) {
      files.put(QtiManifest.file(item), new QtiItem(document.language(), scripts, item).write());
    }
    return zip(files, document.identity().date().atTime(LocalTime.MIDNIGHT));
  }

  private static byte[] zip(Map<String, String> files, LocalDateTime time) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
      for (Map.Entry<String, String> file : files.entrySet()) {
        ZipEntry entry = new ZipEntry(file.getKey());
        entry.setTimeLocal(time);
        zip.putNextEntry(entry);
        zip.write(file.getValue().getBytes(StandardCharsets.UTF_8));
        zip.closeEntry();
      }
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
    return bytes.toByteArray();
  }
}
