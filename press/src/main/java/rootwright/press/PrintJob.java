package rootwright.press;

import rootwright.press.deliverable.Deliverable;
import rootwright.press.document.Layout;
import rootwright.press.output.Output;
import rootwright.press.paper.BlockedException;
import rootwright.press.paper.Paper;

/**
 * One file to be printed.
 *
 * @param paper the paper
 * @param mark of the version
 * @param deliverable which document of it
 * @param layout sheet and size of text
 * @param output the format
 */
public record PrintJob(
    Paper paper, String mark, Deliverable deliverable, Layout layout, Output output) {

  /** The name of the file with extension, known before it is printed. */
  public String fileName() {
    return PrintedFile.name(paper, mark, deliverable, layout, output);
  }

  /**
   * Prints it.
   *
   * @throws BlockedException if the paper is empty or a key is stale
   * @throws rootwright.press.output.UnprintableException if the format cannot hold it
   */
  public PrintedFile print() throws BlockedException {
    return PrintedFile.of(paper, mark, deliverable, layout, output);
  }
}
