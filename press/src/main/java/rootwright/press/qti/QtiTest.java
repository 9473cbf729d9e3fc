package rootwright.press.qti;

import java.util.List;
import rootwright.press.document.Block;
import rootwright.press.document.Document;
import rootwright.press.formula.FormulaScripts;
import rootwright.press.markup.Markup;

/**
 * The test of a package: one part, one section, the items in the order of the paper, the score the
 * sum of theirs. Paragraphs before the first item become the instructions.
 */
final class QtiTest {

  private final Document document;
  private final FormulaScripts scripts;
  private final Markup into = new Markup();

  QtiTest(Document document, FormulaScripts scripts) {
    this.document = document;
    this.scripts = scripts;
  }

  String write() {
    into.raw(Qti.DECLARATION);
    into.open(
        "qti-assessment-test",
        "xmlns",
        Qti.NAMESPACE,
        "identifier",
        QtiManifest.TEST,
        "title",
        document.title(),
        "xml:lang",
        document.language().tag());
    into.empty(
        "qti-outcome-declaration",
        "identifier",
        "SCORE",
        "cardinality",
        "single",
        "base-type",
        "float");
    into.open(
        "qti-test-part",
        "identifier",
        "part",
        "navigation-mode",
        "nonlinear",
        "submission-mode",
        "simultaneous");
    into.open(
        "qti-assessment-section",
        "identifier",
        "section",
        "title",
        document.title(),
        "visible",
        "true");
    instructions();
    for (Block.Item item : document.items()) {
      into.empty(
          "qti-assessment-item-ref",
          "identifier",
          QtiManifest.identifier(item),
          "href",
          QtiManifest.file(item));
    }
    into.close().close();
    into.open("qti-outcome-processing").open("qti-set-outcome-value", "identifier", "SCORE");
    into.open("qti-sum").empty("qti-test-variables", "variable-identifier", "SCORE");
    return into.close().close().close().close().finished() + "\n";
  }

  private void instructions() {
    List<Block> paragraphs =
        document.blocks().stream()
            .takeWhile(block -> !(block instanceof Block.Item))
            .filter(Block.Paragraph.class::isInstance)
            .toList();
    if (!paragraphs.isEmpty()) {
      into.open("qti-rubric-block", "use", "instructions", "view", "candidate");
      into.open("qti-content-body");
      new QtiBlocks(document.language(), scripts, into).all(paragraphs);
      into.close().close();
    }
  }
}
