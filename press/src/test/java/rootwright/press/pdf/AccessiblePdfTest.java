package rootwright.press.pdf;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.TestAssertion;
import org.verapdf.pdfa.results.ValidationResult;
import rootwright.press.PaperSamples;
import rootwright.press.Printed;
import rootwright.press.Samples;
import rootwright.press.deliverable.Deliverable;
import rootwright.press.deliverable.Deliverables;
import rootwright.press.document.Document;
import rootwright.press.document.Layout;
import rootwright.press.document.TextSize;
import rootwright.press.paper.BlockedException;
import rootwright.press.paper.Paper;

/**
 * The rules of PDF/UA-1 (ISO 14289-1) that a program can check, put to an independent validator.
 */
class AccessiblePdfTest {

  @BeforeAll
  static void wakeTheValidator() {
    VeraGreenfieldFoundryProvider.initialise();
  }

  static Stream<Arguments> documents() throws BlockedException {
    Paper paper = PaperSamples.frozen();
    Stream.Builder<Arguments> all = Stream.builder();
    for (Deliverable deliverable : Deliverables.ALL) {
      all.add(Arguments.of(deliverable.name(), deliverable.document(paper, "", Layout.USUAL)));
    }
    all.add(
        Arguments.of(
            "large print", Samples.worksheet().withLayout(Layout.USUAL.withSize(TextSize.GIANT))));
    return all.build();
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("documents")
  void aValidatorFindsNoRuleOfPdfUaBroken(String name, Document document) throws Exception {
    ValidationResult result = validated(Printed.bytes("pdf", document));
    List<String> broken =
        result.getTestAssertions().stream()
            .filter(assertion -> assertion.getStatus() == TestAssertion.Status.FAILED)
            .map(assertion -> assertion.getRuleId().getClause() + ": " + assertion.getMessage())
            .distinct()
            .toList();
    assertThat(broken).as(name).isEmpty();
    assertThat(result.isCompliant()).isTrue();
    assertThat(result.getTotalAssertions()).isGreaterThan(500);
  }

  private static ValidationResult validated(byte[] pdf) throws Exception {
    try (PDFAParser parser =
        Foundries.defaultInstance()
            .createParser(new ByteArrayInputStream(pdf), PDFAFlavour.PDFUA_1)) {
      return Foundries.defaultInstance()
          .createValidator(PDFAFlavour.PDFUA_1, false)
          .validate(parser);
    }
  }
}
