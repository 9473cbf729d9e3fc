package rootwright.press.pdf;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import org.apache.fop.apps.EnvironmentalProfileFactory;
import org.apache.fop.apps.FOPException;
import org.apache.fop.apps.FOUserAgent;
import org.apache.fop.apps.Fop;
import org.apache.fop.apps.FopConfParser;
import org.apache.fop.apps.FopFactory;
import org.apache.xmlgraphics.io.Resource;
import org.apache.xmlgraphics.io.ResourceResolver;
import org.apache.xmlgraphics.util.MimeConstants;
import org.xml.sax.SAXException;
import rootwright.press.markup.Markup;

/** The formatter, set up once: our typefaces only, tagged pages, and nothing read from outside. */
final class Formatter {

  /** The formatter wants addresses of a kind it knows; none of them leads to a file. */
  private static final String SHIPPED = "file";

  private final FopFactory factory = create();

  /** One that nobody has used yet; {@link #shared} is for all pages. */
  Formatter() {}

  /** The one for all pages; safe to use from several threads. */
  static Formatter shared() {
    return Once.SHARED;
  }

  private static final class Once {
    static final Formatter SHARED = new Formatter();
  }

  /** How one file is to be set. */
  FOUserAgent agent() {
    return factory.newFOUserAgent();
  }

  /**
   * Begins a PDF. Files are set beside one another but begun one after the other: at each beginning
   * the library looks into its settings, an XML tree that is unfolded while it is read and comes
   * out broken for good if two threads do so at once.
   */
  synchronized Fop begin(FOUserAgent agent, OutputStream into) throws FOPException {
    return factory.newFop(MimeConstants.MIME_PDF, agent, into);
  }

  private static FopFactory create() {
    try (InputStream configuration =
        new ByteArrayInputStream(configuration().getBytes(StandardCharsets.UTF_8))) {
      return new FopConfParser(
              configuration,
              EnvironmentalProfileFactory.createRestrictedIO(
                  URI.create(SHIPPED + ":/"), new ShippedOnly()))
          .getFopFactoryBuilder()
          .build();
    } catch (IOException | SAXException broken) {
      throw new IllegalStateException("the formatter cannot be set up", broken);
    }
  }

  private static String configuration() {
    Markup into = new Markup();
    into.open("fop", "version", "1.0");
    into.leaf("accessibility", "true");
    into.open("renderers").open("renderer", "mime", "application/pdf");
    into.leaf("pdf-ua-mode", "PDF/UA-1");
    into.open("fonts");
    for (Typeface typeface : Typeface.values()) {
      font(typeface, Typeface.Cut.PLAIN, "normal", "normal", into);
      font(typeface, Typeface.Cut.BOLD, "normal", "bold", into);
      font(typeface, Typeface.Cut.ITALIC, "italic", "normal", into);
      // Bold within italics: the bold cut stands for it.
      font(typeface, Typeface.Cut.BOLD, "italic", "bold", into);
    }
    into.close().close().close().close();
    return into.finished();
  }

  private static void font(
      Typeface typeface, Typeface.Cut cut, String style, String weight, Markup into) {
    into.open(
        "font",
        "kerning",
        "yes",
        "embedding-mode",
        "subset",
        "embed-url",
        SHIPPED + ":" + typeface.resource(cut));
    into.empty("font-triplet", "name", typeface.family(), "style", style, "weight", weight);
    into.close();
  }

  /** Reads what is shipped with the program and refuses everything else. */
  private static final class ShippedOnly implements ResourceResolver {
    @Override
    public Resource getResource(URI uri) throws IOException {
      InputStream stream =
          SHIPPED.equals(uri.getScheme()) && uri.getPath().startsWith(Typeface.FOLDER)
              ? Formatter.class.getResourceAsStream(uri.getPath())
              : null;
      if (stream == null) {
        throw new IOException("a page may not refer to " + uri);
      }
      return new Resource(stream);
    }

    @Override
    public OutputStream getOutputStream(URI uri) throws IOException {
      throw new IOException("a page may not write to " + uri);
    }
  }
}
