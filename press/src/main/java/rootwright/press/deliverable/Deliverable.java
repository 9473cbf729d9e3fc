package rootwright.press.deliverable;

import java.util.List;
import rootwright.press.document.Audience;
import rootwright.press.document.Block;
import rootwright.press.document.Document;
import rootwright.press.document.Identity;
import rootwright.press.document.Layout;
import rootwright.press.paper.BlockedException;
import rootwright.press.paper.Paper;
import rootwright.press.paper.Version;

/**
 * One of the documents made of a paper.
 *
 * @see Deliverables
 */
public interface Deliverable {

  /** A short name for scripts and for file names: {@code sheet}, {@code key}. */
  String name();

  /** What is added to the title of the paper, empty for the sheet itself. */
  String subtitle();

  /** Who may hold it. */
  Audience audience();

  /** What stands on it; every key of the version is current. */
  List<Block> blocks(Paper paper, Version version);

  /** The mark that is shown on it: that of the version, unless it speaks of all versions. */
  default String shownMark(String mark) {
    return mark;
  }

  /**
   * The document of one version. A paper that is not frozen prints with the word for a draft where
   * the code would stand.
   *
   * @throws BlockedException if the paper is empty or a key is stale
   */
  default Document document(Paper paper, String mark, Layout layout) throws BlockedException {
    paper.requirePrintable();
    Version version = paper.content().version(mark);
    String title = paper.content().title();
    return new Document(
        subtitle().isEmpty() ? title : title + ": " + subtitle(),
        paper.content().language(),
        audience(),
        layout,
        new Identity(paper.code(), shownMark(mark), paper.content().date()),
        blocks(paper, version));
  }

  /**
   * The name of its file without extension: code or "draft", version, what it is. Nothing in it
   * tells an answer.
   */
  default String fileName(Paper paper, String mark) {
    String code = paper.code().isEmpty() ? "draft" : paper.code();
    String shown = shownMark(mark);
    return (shown.isEmpty() ? code : code + "-" + shown) + "-" + name();
  }
}
