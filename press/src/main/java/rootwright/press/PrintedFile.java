package rootwright.press;

import rootwright.press.deliverable.Deliverable;
import rootwright.press.document.Layout;
import rootwright.press.document.PageFormat;
import rootwright.press.output.Output;
import rootwright.press.paper.BlockedException;
import rootwright.press.paper.Paper;

/** A file that leaves the desk. */
public final class PrintedFile {

  private final String name;
  private final String mediaType;
  private final byte[] bytes;

  private PrintedFile(String name, String mediaType, byte[] bytes) {
    this.name = name;
    this.mediaType = mediaType;
    this.bytes = bytes;
  }

  /** The name with extension; it tells code, version and what it is, and no answer. */
  public String name() {
    return name;
  }

  /** The media type of the bytes. */
  public String mediaType() {
    return mediaType;
  }

  /** What is in it. */
  public byte[] bytes() {
    return bytes.clone();
  }

  /**
   * Prints one document of one version of a paper.
   *
   * @param mark of the version
   * @throws BlockedException if the paper is empty or a key is stale
   * @throws rootwright.press.output.UnprintableException if the format cannot hold it
   */
  public static PrintedFile of(
      Paper paper, String mark, Deliverable deliverable, Layout layout, Output output)
      throws BlockedException {
    return new PrintedFile(
        name(paper, mark, deliverable, layout, output),
        output.mediaType(),
        output.print(deliverable.document(paper, mark, layout)));
  }

  static String name(
      Paper paper, String mark, Deliverable deliverable, Layout layout, Output output) {
    String large = layout.size().isLargePrint() ? "-" + layout.size().points() + "pt" : "";
    String sheet = layout.format() == PageFormat.LETTER ? "-letter" : "";
    return deliverable.fileName(paper, mark) + sheet + large + "." + output.extension();
  }
}
