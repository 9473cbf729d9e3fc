package rootwright.press.qti;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import rootwright.press.Printed;
import rootwright.press.Samples;
import rootwright.press.document.Language;
import rootwright.press.document.Scoring;
import rootwright.press.output.UnprintableException;

/** The rules of QTI 3.0 (1EdTech 2022) that bear on our packages; no schema is at hand. */
class QtiOutputTest {

  private static final String ITEM = "http://www.imsglobal.org/xsd/imsqtiasi_v3p0";

  private static final Map<String, String> FILES =
      Printed.files(Printed.bytes("qti", Samples.key()));

  private static Document parsed(String file) throws Exception {
    DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
    factory.setNamespaceAware(true);
    return factory.newDocumentBuilder().parse(new InputSource(new StringReader(FILES.get(file))));
  }

  private static List<Element> all(Document document, String name) {
    List<Element> found = new ArrayList<>();
    NodeList nodes = document.getElementsByTagNameNS("*", name);
    for (int k = 0; k < nodes.getLength(); k++) {
      found.add((Element) nodes.item(k));
    }
    return found;
  }

  @Test
  void theManifestListsEveryFileOnceAndNothingElse() throws Exception {
    Document manifest = parsed("imsmanifest.xml");
    List<String> listed =
        all(manifest, "file").stream().map(file -> file.getAttribute("href")).toList();
    assertThat(listed).doesNotHaveDuplicates();
    List<String> packed = new ArrayList<>(FILES.keySet());
    packed.remove("imsmanifest.xml");
    assertThat(listed).containsExactlyInAnyOrderElementsOf(packed);
    assertThat(all(manifest, "resource"))
        .allSatisfy(
            resource ->
                assertThat(resource.getAttribute("type"))
                    .isIn("imsqti_item_xmlv3p0", "imsqti_test_xmlv3p0"));
    assertThat(all(manifest, "schema").get(0).getTextContent()).isEqualTo("QTI Package");
  }

  @Test
  void theTestRefersToItemsOfTheManifestInTheOrderOfThePaper() throws Exception {
    List<String> referred =
        all(parsed("test.xml"), "qti-assessment-item-ref").stream()
            .map(item -> item.getAttribute("href"))
            .toList();
    assertThat(referred).hasSize(10).first().isEqualTo("items/item-1.xml");
    assertThat(referred).last().isEqualTo("items/item-10.xml");
    assertThat(FILES.keySet()).containsAll(referred);
  }

  @Test
  void identifiersAreNames() throws Exception {
    Pattern name = Pattern.compile("[A-Za-z_][A-Za-z0-9_.-]*");
    for (String file : FILES.keySet()) {
      Matches.inAttributes(parsed(file).getDocumentElement(), "identifier", name);
    }
  }

  @Test
  void partsOfAnItemStandInTheOrderOfTheSpecification() throws Exception {
    List<String> order =
        List.of(
            "qti-response-declaration",
            "qti-outcome-declaration",
            "qti-item-body",
            "qti-response-processing");
    for (String file : FILES.keySet()) {
      if (file.startsWith("items/")) {
        Element root = parsed(file).getDocumentElement();
        assertThat(root.getNamespaceURI()).isEqualTo(ITEM);
        List<String> names = children(root).stream().map(Node::getLocalName).toList();
        assertThat(names).isSubsetOf(order);
        assertThat(names.stream().map(order::indexOf).toList()).isSorted();
      }
    }
  }

  @Test
  void everyInteractionAnswersADeclaredResponse() throws Exception {
    for (String file : FILES.keySet()) {
      if (file.startsWith("items/")) {
        Document item = parsed(file);
        List<String> declared =
            all(item, "qti-response-declaration").stream()
                .map(declaration -> declaration.getAttribute("identifier"))
                .toList();
        assertThat(declared).hasSize(1);
        List<String> used = new ArrayList<>();
        for (String kind :
            List.of(
                "qti-choice-interaction",
                "qti-text-entry-interaction",
                "qti-extended-text-interaction")) {
          all(item, kind).forEach(found -> used.add(found.getAttribute("response-identifier")));
        }
        assertThat(used).as(file).isEqualTo(declared);
      }
    }
  }

  @Test
  void theRightChoiceIsAmongTheChoicesAndEarnsThePoints() throws Exception {
    Document item = parsed("items/item-3.xml");
    List<String> choices =
        all(item, "qti-simple-choice").stream()
            .map(choice -> choice.getAttribute("identifier"))
            .toList();
    assertThat(choices).hasSize(5).doesNotHaveDuplicates();
    String right = all(item, "qti-value").get(0).getTextContent();
    assertThat(choices).contains(right);
    Element entry = all(item, "qti-map-entry").get(0);
    assertThat(entry.getAttribute("map-key")).isEqualTo(right);
    assertThat(entry.getAttribute("mapped-value")).isEqualTo("4");
    assertThat(all(item, "qti-response-processing").get(0).getAttribute("template"))
        .endsWith("/map_response");
  }

  @Test
  void everySpellingOfARightAnswerEarnsThePoints() throws Exception {
    List<String> keys =
        all(parsed("items/item-6.xml"), "qti-map-entry").stream()
            .map(entry -> entry.getAttribute("map-key"))
            .toList();
    assertThat(keys)
        .doesNotHaveDuplicates()
        .contains("3 or -10", "3 or −10", "-10 or 3", "3, -10", "3,-10", "3,−10");
  }

  @Test
  void theDecimalMarkOfTheLanguageIsAcceptedToo() {
    assertThat(
            TypedForms.of(new Scoring.ByText("27/4", List.of("6.75", "6 3/4")), Language.of("de")))
        .contains("27/4", "6.75", "6,75", "6 3/4")
        .doesNotContain("63/4");
  }

  @Test
  void anItemForAPersonIsNotScoredByTheProgram() throws Exception {
    Document item = parsed("items/item-7.xml");
    assertThat(all(item, "qti-response-processing")).isEmpty();
    assertThat(all(item, "qti-outcome-declaration").get(0).getAttribute("external-scored"))
        .isEqualTo("human");
    assertThat(all(item, "qti-extended-text-interaction")).hasSize(1);
  }

  @Test
  void formulasAreMathematicalMarkup() throws Exception {
    List<Element> formulas = all(parsed("items/item-3.xml"), "math");
    assertThat(formulas).isNotEmpty();
    assertThat(formulas)
        .allSatisfy(
            formula ->
                assertThat(formula.getNamespaceURI())
                    .isEqualTo("http://www.w3.org/1998/Math/MathML"));
  }

  @Test
  void aPaperWithoutItemsIsRefused() {
    assertThatThrownBy(() -> Printed.bytes("qti", Samples.solutions()))
        .isInstanceOf(UnprintableException.class)
        .hasMessageContaining("no item");
  }

  @Test
  void printingAgainGivesTheSameBytes() {
    var output = Printed.OUTPUTS.named("qti").orElseThrow();
    assertThat(output.print(Samples.key())).isEqualTo(output.print(Samples.key()));
  }

  private static List<Element> children(Element element) {
    List<Element> children = new ArrayList<>();
    for (Node child = element.getFirstChild(); child != null; child = child.getNextSibling()) {
      if (child instanceof Element inner) {
        children.add(inner);
      }
    }
    return children;
  }

  /** Looks at an attribute wherever it occurs. */
  private static final class Matches {
    static void inAttributes(Element element, String attribute, Pattern pattern) {
      if (element.hasAttribute(attribute)) {
        assertThat(element.getAttribute(attribute)).matches(pattern);
      }
      children(element).forEach(child -> inAttributes(child, attribute, pattern));
    }
  }
}
