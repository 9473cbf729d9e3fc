package rootwright.press.markup;

import java.util.ArrayDeque;
import java.util.Deque;

/**
 * XML in the making: elements are closed in the order in which they were opened, text and
 * attributes are escaped. Not for use by several threads.
 *
 * <p>Characters that XML 1.0 does not allow (most control characters, lone surrogates) are left
 * out.
 */
public final class Markup {

  private final StringBuilder text = new StringBuilder();
  private final Deque<String> open = new ArrayDeque<>();

  /**
   * Opens an element.
   *
   * @param attributes names and values in turn
   * @throws IllegalArgumentException if a name has no value
   */
  public Markup open(String element, String... attributes) {
    tag(element, attributes).append('>');
    open.push(element);
    return this;
  }

  /**
   * An element without content.
   *
   * @param attributes names and values in turn
   */
  public Markup empty(String element, String... attributes) {
    tag(element, attributes).append("/>");
    return this;
  }

  /** An element that holds only text. */
  public Markup leaf(String element, String content, String... attributes) {
    return open(element, attributes).text(content).close();
  }

  /**
   * Closes the element opened last.
   *
   * @throws IllegalStateException if none is open
   */
  public Markup close() {
    if (open.isEmpty()) {
      throw new IllegalStateException("no element is open after: " + end());
    }
    text.append("</").append(open.pop()).append('>');
    return this;
  }

  /** Text, escaped. */
  public Markup text(String content) {
    escape(content, text);
    return this;
  }

  /** XML that is known to be well formed, as it is. */
  public Markup raw(String xml) {
    text.append(xml);
    return this;
  }

  /**
   * What was written.
   *
   * @throws IllegalStateException if an element is still open
   */
  public String finished() {
    if (!open.isEmpty()) {
      throw new IllegalStateException("still open: " + open);
    }
    return text.toString();
  }

  private StringBuilder tag(String element, String... attributes) {
    if (attributes.length % 2 != 0) {
      throw new IllegalArgumentException(
          "an attribute of <%s> without a value: %s"
              .formatted(element, attributes[attributes.length - 1]));
    }
    text.append('<').append(element);
    for (int k = 0; k < attributes.length; k += 2) {
      text.append(' ').append(attributes[k]).append("=\"");
      escape(attributes[k + 1], text);
      text.append('"');
    }
    return text;
  }

  private String end() {
    return text.substring(Math.max(0, text.length() - 40));
  }

  private static void escape(String content, StringBuilder into) {
    content.codePoints().filter(Markup::isAllowed).forEach(point -> escape(point, into));
  }

  private static void escape(int point, StringBuilder into) {
    switch (point) {
      case '&' -> into.append("&amp;");
      case '<' -> into.append("&lt;");
      case '>' -> into.append("&gt;");
      case '"' -> into.append("&quot;");
      case '\'' -> into.append("&#39;");
      default -> into.appendCodePoint(point);
    }
  }

  /** The characters of XML 1.0, section 2.2. */
  private static boolean isAllowed(int point) {
    return point == 0x9
        || point == 0xA
        || point == 0xD
        || (point >= 0x20 && point <= 0xD7FF)
        || (point >= 0xE000 && point <= 0xFFFD)
        || point >= 0x10000;
  }
}
