package rootwright.press.output;

import rootwright.press.document.Document;

/** A format in which a paper leaves the desk. Printing the same document gives the same bytes. */
public interface Output {

  /** A short name for scripts, lower case ({@code pdf}). */
  String name();

  /** What the format is, in a few words for a person. */
  String title();

  /** The extension of its files, without the dot. */
  String extension();

  /** The media type of its files. */
  String mediaType();

  /** Whether this format can hold such a document at all; a package of items holds items only. */
  default boolean holds(Document document) {
    return true;
  }

  /**
   * The bytes of the file.
   *
   * @throws UnprintableException if this format cannot hold what stands in the document
   */
  byte[] print(Document document);
}
