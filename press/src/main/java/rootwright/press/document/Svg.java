package rootwright.press.document;

import java.io.IOException;
import java.io.StringReader;
import java.util.Set;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Attr;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.xml.sax.ErrorHandler;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.SAXParseException;

/**
 * A drawing in SVG that is safe to put into any file: plain shapes and text only, no script, no
 * style sheet, nothing fetched from elsewhere.
 *
 * @param source one {@code svg} element with its namespace and a {@code viewBox}
 */
public record Svg(String source) {

  private static final String NAMESPACE = "http://www.w3.org/2000/svg";
  private static final Set<String> SHAPES =
      Set.of(
          "svg",
          "g",
          "path",
          "line",
          "circle",
          "ellipse",
          "rect",
          "polyline",
          "polygon",
          "text",
          "tspan",
          "title",
          "desc");

  /**
   * @throws IllegalArgumentException if the source is not such a drawing; the message says why
   */
  public Svg {
    Element root = parsed(source);
    if (!root.getLocalName().equals("svg") || box(root).length != 4) {
      throw new IllegalArgumentException("not a drawing with a viewBox: " + begin(source));
    }
    requirePlain(root);
  }

  /** The height of the drawing divided by its width. */
  public double heightToWidth() {
    String[] box = box(parsed(source));
    return Double.parseDouble(box[3]) / Double.parseDouble(box[2]);
  }

  private static String[] box(Element root) {
    return root.getAttribute("viewBox").trim().split("[\\s,]+");
  }

  private static void requirePlain(Element element) {
    if (!NAMESPACE.equals(element.getNamespaceURI()) || !SHAPES.contains(element.getLocalName())) {
      throw new IllegalArgumentException(
          "a drawing may not contain <%s>".formatted(element.getNodeName()));
    }
    for (int k = 0; k < element.getAttributes().getLength(); k++) {
      Attr attribute = (Attr) element.getAttributes().item(k);
      if (attribute.getName().startsWith("on")
          || attribute.getName().endsWith("href")
          || attribute.getName().equals("style")
          || attribute.getValue().contains("url(")) {
        throw new IllegalArgumentException(
            "a drawing may not contain %s=\"%s\""
                .formatted(attribute.getName(), attribute.getValue()));
      }
    }
    for (Node child = element.getFirstChild(); child != null; child = child.getNextSibling()) {
      if (child instanceof Element inner) {
        requirePlain(inner);
      }
    }
  }

  private static Element parsed(String source) {
    try {
      DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
      factory.setNamespaceAware(true);
      factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
      factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
      DocumentBuilder builder = factory.newDocumentBuilder();
      builder.setErrorHandler(new Strict());
      return builder.parse(new InputSource(new StringReader(source))).getDocumentElement();
    } catch (SAXException | IOException unreadable) {
      throw new IllegalArgumentException("not well-formed: " + begin(source), unreadable);
    } catch (ParserConfigurationException impossible) {
      throw new IllegalStateException("every Java reads XML", impossible);
    }
  }

  private static String begin(String source) {
    return source.substring(0, Math.min(60, source.length()));
  }

  /** Refuses what is not well formed, and writes nothing anywhere. */
  private static final class Strict implements ErrorHandler {
    @Override
    public void warning(SAXParseException warning) {}

    @Override
    public void error(SAXParseException error) throws SAXException {
      throw error;
    }

    @Override
    public void fatalError(SAXParseException error) throws SAXException {
      throw error;
    }
  }
}
