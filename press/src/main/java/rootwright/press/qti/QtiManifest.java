package rootwright.press.qti;

import rootwright.press.document.Block;
import rootwright.press.document.Document;
import rootwright.press.markup.Markup;

/** The manifest of a package: every file once, the test with the items it depends on. */
final class QtiManifest {

  /** The file of the test. */
  static final String TEST_FILE = "test.xml";

  /** The identifier of the test. */
  static final String TEST = "test";

  private static final String NAMESPACE = "http://www.imsglobal.org/xsd/qti/qtiv3p0/imscp_v1p1";

  private QtiManifest() {}

  static String identifier(Block.Item item) {
    return "item-" + item.number();
  }

  static String file(Block.Item item) {
    return "items/" + identifier(item) + ".xml";
  }

  static String write(Document document) {
    Markup into = new Markup().raw(Qti.DECLARATION);
    into.open("manifest", "xmlns", NAMESPACE, "identifier", "manifest");
    into.open("metadata");
    into.leaf("schema", "QTI Package").leaf("schemaversion", "3.0.0");
    into.close().empty("organizations").open("resources");
    into.open("resource", "identifier", TEST, "type", "imsqti_test_xmlv3p0", "href", TEST_FILE);
    into.empty("file", "href", TEST_FILE);
    for (Block.Item item : document.items()) {
      into.empty("dependency", "identifierref", identifier(item));
    }
    into.close();
    for (Block.Item item : document.items()) {
      into.open(
          "resource",
          "identifier",
          identifier(item),
          "type",
          "imsqti_item_xmlv3p0",
          "href",
          file(item));
      into.empty("file", "href", file(item)).close();
    }
    return into.close().close().finished() + "\n";
  }
}
