package rootwright.press.pdf;

import rootwright.press.markup.Markup;

/** The properties of a document as formatting objects: its title and its language. */
final class Properties {

  private Properties() {}

  static void write(String title, String language, Markup into) {
    into.open("fo:declarations");
    into.open("x:xmpmeta", "xmlns:x", "adobe:ns:meta/");
    into.open("rdf:RDF", "xmlns:rdf", "http://www.w3.org/1999/02/22-rdf-syntax-ns#");
    into.open("rdf:Description", "rdf:about", "", "xmlns:dc", "http://purl.org/dc/elements/1.1/");
    // Two languages keep the formatter from writing the title without its language.
    into.open("dc:title").open("rdf:Alt");
    into.leaf("rdf:li", title, "xml:lang", "x-default");
    into.leaf("rdf:li", title, "xml:lang", language);
    into.close().close();
    into.open("dc:language").open("rdf:Bag");
    into.leaf("rdf:li", language);
    into.close().close();
    into.close().close().close().close();
  }
}
