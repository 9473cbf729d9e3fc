package rootwright.desk.paper;

import java.util.List;
import rootwright.press.document.Layout;

/**
 * What is to be printed of a paper.
 *
 * @param documents names of documents; all of them if empty
 * @param formats names of outputs, at least one
 * @param layout sheet and size of text
 */
public record PrintOrder(List<String> documents, List<String> formats, Layout layout) {

  public PrintOrder {
    documents = List.copyOf(documents);
    formats = List.copyOf(formats);
  }
}
