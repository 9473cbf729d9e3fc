package rootwright.press.pdf;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Date;
import javax.xml.parsers.ParserConfigurationException;
import javax.xml.parsers.SAXParserFactory;
import org.apache.fop.apps.FOUserAgent;
import org.apache.fop.apps.Fop;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.XMLReader;
import rootwright.press.output.UnprintableException;

/** Formatting objects made into the bytes of a PDF, without a trace of the clock. */
final class Pages {

  private Pages() {}

  /**
   * The PDF.
   *
   * @param objects formatting objects, as XML
   * @throws UnprintableException if they cannot be set
   */
  static byte[] printed(String objects, LocalDate date) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream(200_000);
    try {
      Fop formatter = Formatter.shared().begin(agent(date), bytes);
      XMLReader reader = reader();
      reader.setContentHandler(formatter.getDefaultHandler());
      reader.parse(new InputSource(new StringReader(objects)));
    } catch (SAXException | ParserConfigurationException unset) {
      throw new UnprintableException("The pages could not be set: " + unset.getMessage(), unset);
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
    return Stamp.on(bytes.toByteArray(), date);
  }

  private static XMLReader reader() throws ParserConfigurationException, SAXException {
    SAXParserFactory factory = SAXParserFactory.newInstance();
    factory.setNamespaceAware(true);
    return factory.newSAXParser().getXMLReader();
  }

  private static FOUserAgent agent(LocalDate date) {
    FOUserAgent agent = Formatter.shared().agent();
    agent.setCreator("Rootwright");
    agent.setProducer("Rootwright");
    agent.setCreationDate(Date.from(date.atStartOfDay(ZoneOffset.UTC).toInstant()));
    agent.getEventBroadcaster().addEventListener(new Complaints());
    return agent;
  }
}
