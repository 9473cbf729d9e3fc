package rootwright.press.pdf;

import java.io.ByteArrayOutputStream;
import java.io.StringReader;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Date;
import javax.xml.parsers.ParserConfigurationException;
import javax.xml.parsers.SAXParserFactory;
import org.apache.fop.apps.FOUserAgent;
import org.apache.fop.apps.Fop;
import org.apache.fop.apps.MimeConstants;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.XMLReader;
import rootwright.press.document.Document;
import rootwright.press.formula.FormulaScripts;
import rootwright.press.output.Output;
import rootwright.press.output.UnprintableException;

/**
 * PDF 1.4 and above: tagged, with title and language, every formula and figure with a text
 * alternative, fonts embedded. It keeps the rules of PDF/UA-1 that a program can check; the tests
 * have a validator confirm that.
 *
 * <p>The bytes depend on the document alone, except that the time zone of the machine stands in two
 * dates.
 */
public final class PdfOutput implements Output {

  private final FormulaScripts scripts;

  /** With the ways to write formulas. */
  public PdfOutput(FormulaScripts scripts) {
    this.scripts = scripts;
  }

  @Override
  public String name() {
    return "pdf";
  }

  @Override
  public String title() {
    return "PDF, to print";
  }

  @Override
  public String extension() {
    return "pdf";
  }

  @Override
  public String mediaType() {
    return "application/pdf";
  }

  @Override
  public byte[] print(Document document) {
    String objects = PageSetter.set(document, scripts);
    ByteArrayOutputStream bytes = new ByteArrayOutputStream(200_000);
    try {
      Fop formatter = Formatter.factory().newFop(MimeConstants.MIME_PDF, agent(document), bytes);
      XMLReader reader = reader();
      reader.setContentHandler(formatter.getDefaultHandler());
      reader.parse(new InputSource(new StringReader(objects)));
    } catch (SAXException | ParserConfigurationException unset) {
      throw new UnprintableException("The pages could not be set: " + unset.getMessage(), unset);
    } catch (java.io.IOException impossible) {
      throw new java.io.UncheckedIOException(impossible);
    }
    return Stamp.on(bytes.toByteArray(), document.identity().date());
  }

  private static XMLReader reader() throws ParserConfigurationException, SAXException {
    SAXParserFactory factory = SAXParserFactory.newInstance();
    factory.setNamespaceAware(true);
    return factory.newSAXParser().getXMLReader();
  }

  private static FOUserAgent agent(Document document) {
    FOUserAgent agent = Formatter.factory().newFOUserAgent();
    agent.setCreator("Rootwright");
    agent.setProducer("Rootwright");
    agent.setCreationDate(midnight(document.identity().date()));
    agent.getEventBroadcaster().addEventListener(new Complaints());
    return agent;
  }

  private static Date midnight(LocalDate date) {
    return Date.from(date.atStartOfDay(ZoneOffset.UTC).toInstant());
  }
}
