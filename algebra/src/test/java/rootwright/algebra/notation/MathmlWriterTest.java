package rootwright.algebra.notation;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Set;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

class MathmlWriterTest {

  private static final String NAMESPACE = "http://www.w3.org/1998/Math/MathML";

  /** The elements of MathML Core, from memory; mfenced is not among them. */
  private static final Set<String> CORE =
      Set.of(
          "math",
          "mi",
          "mn",
          "mo",
          "mtext",
          "ms",
          "mspace",
          "mrow",
          "mfrac",
          "msqrt",
          "mroot",
          "mstyle",
          "merror",
          "mpadded",
          "mphantom",
          "msub",
          "msup",
          "msubsup",
          "munder",
          "mover",
          "munderover",
          "mmultiscripts",
          "mprescripts",
          "mtable",
          "mtr",
          "mtd",
          "semantics",
          "annotation",
          "annotation-xml");

  /** How many children these elements have. */
  private static final Map<String, Integer> CHILDREN =
      Map.of("mfrac", 2, "msup", 2, "msub", 2, "mroot", 2);

  private static Element parsed(String markup) throws Exception {
    DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
    factory.setNamespaceAware(true);
    factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
    return factory
        .newDocumentBuilder()
        .parse(new ByteArrayInputStream(markup.getBytes(StandardCharsets.UTF_8)))
        .getDocumentElement();
  }

  private static Formula formula(String text) throws UnreadableException {
    return FormulaReader.formula(text);
  }

  @Test
  void onlyElementsOfMathmlCoreWithTheirNumberOfChildrenAreWritten() throws Exception {
    long seed = RandomFormulas.seed(61);
    RandomFormulas formulas = new RandomFormulas(seed);
    for (int sample = 0; sample < 1_000; sample++) {
      Formula formula = formulas.draw(3);
      String markup = MathmlWriter.write(formula);
      check(parsed(markup), "seed %d sample %d: %s".formatted(seed, sample, markup));
    }
  }

  private static void check(Element element, String shown) {
    assertThat(element.getNamespaceURI()).as(shown).isEqualTo(NAMESPACE);
    assertThat(CORE).as(shown).contains(element.getLocalName());
    int children = 0;
    for (Node node = element.getFirstChild(); node != null; node = node.getNextSibling()) {
      if (node instanceof Element child) {
        children++;
        check(child, shown);
      }
    }
    Integer wanted = CHILDREN.get(element.getLocalName());
    if (wanted != null) {
      assertThat(children).as("%s in %s", element.getLocalName(), shown).isEqualTo(wanted);
    }
  }

  @Test
  void theMinusIsTheTypesetOneAndFactorsHaveInvisibleTimesBetweenThem() throws Exception {
    assertThat(MathmlWriter.write(formula("2x - 3")))
        .isEqualTo(
            "<math xmlns=\"http://www.w3.org/1998/Math/MathML\"><mrow><mrow><mn>2</mn>"
                + "<mo>\u2062</mo><mi>x</mi></mrow><mo>\u2212</mo><mn>3</mn></mrow></math>");
    assertThat(MathmlWriter.write(formula("P'(3)"))).contains("<mo>\u2061</mo>");
    assertThat(MathmlWriter.write(formula("x < 3"))).contains("<mo>&lt;</mo>");
  }

  @Test
  void namesOfRootsCarryTheirSpelling() throws Exception {
    MathmlWriter writer = MathmlWriter.marking(List.of("r", "x_1"));
    assertThat(writer.element(formula("r + k")))
        .isEqualTo("<mrow><mi data-name=\"r\">r</mi><mo>+</mo><mi>k</mi></mrow>");
    assertThat(writer.element(formula("x_1")))
        .isEqualTo("<msub data-name=\"x_1\"><mi>x</mi><mn>1</mn></msub>");
    assertThat(writer.block(formula("r"))).contains("display=\"block\"");
  }

  @Test
  void fractionsAndRootsNeedNoBracketsInside() throws Exception {
    assertThat(MathmlWriter.write(formula("(3+√229)/2"))).doesNotContain("(");
    assertThat(MathmlWriter.write(formula("(1/2)^2"))).contains("(");
    assertThat(MathmlWriter.write(formula("(r+s)(s+t)"))).contains("(");
  }
}
