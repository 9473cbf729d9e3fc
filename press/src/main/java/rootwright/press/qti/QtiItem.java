package rootwright.press.qti;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import rootwright.press.document.Block;
import rootwright.press.document.Language;
import rootwright.press.document.Response;
import rootwright.press.document.Scoring;
import rootwright.press.formula.FormulaScripts;
import rootwright.press.hypertext.Phrases;
import rootwright.press.markup.Markup;

/**
 * One item of a package: the declarations, the body with one interaction, and how the response is
 * scored.
 */
final class QtiItem implements Scoring.Cases<Markup>, Response.Cases<Markup> {

  private static final String RESPONSE = "RESPONSE";

  private final Language language;
  private final FormulaScripts scripts;
  private final Block.Item item;
  private final Markup into = new Markup();

  QtiItem(Language language, FormulaScripts scripts, Block.Item item) {
    this.language = language;
    this.scripts = scripts;
    this.item = item;
  }

  String write() {
    into.raw(Qti.DECLARATION);
    into.open(
        "qti-assessment-item",
        "xmlns",
        Qti.NAMESPACE,
        "identifier",
        QtiManifest.identifier(item),
        "title",
        String.valueOf(item.number()),
        "adaptive",
        "false",
        "time-dependent",
        "false",
        "xml:lang",
        language.tag());
    Scoring scoring = item.scoring().orElseGet(Scoring.ByHand::new);
    scoring.choose(this);
    outcome(scoring);
    into.open("qti-item-body");
    new QtiBlocks(language, scripts, into).all(item.statement());
    item.response().choose(this);
    into.close();
    if (!(scoring instanceof Scoring.ByHand)) {
      into.empty("qti-response-processing", "template", Qti.MAP_RESPONSE);
    }
    return into.close().finished() + "\n";
  }

  private String worth() {
    return String.valueOf(item.points().orElse(1));
  }

  private void outcome(Scoring scoring) {
    String[] always = {
      "identifier",
      "SCORE",
      "cardinality",
      "single",
      "base-type",
      "float",
      "normal-maximum",
      worth()
    };
    into.open(
        "qti-outcome-declaration", scoring instanceof Scoring.ByHand ? byPerson(always) : always);
    into.open("qti-default-value").leaf("qti-value", "0").close().close();
  }

  private static String[] byPerson(String[] attributes) {
    String[] all = Arrays.copyOf(attributes, attributes.length + 2);
    all[attributes.length] = "external-scored";
    all[attributes.length + 1] = "human";
    return all;
  }

  @Override
  public Markup byLetter(Scoring.ByLetter scoring) {
    declare("identifier").open("qti-correct-response");
    into.leaf("qti-value", identifier(scoring.letter())).close();
    into.open("qti-mapping", "default-value", "0");
    into.empty("qti-map-entry", "map-key", identifier(scoring.letter()), "mapped-value", worth());
    return into.close().close();
  }

  @Override
  public Markup byText(Scoring.ByText scoring) {
    declare("string").open("qti-correct-response");
    into.leaf("qti-value", scoring.exact()).close();
    into.open("qti-mapping", "default-value", "0");
    Set<String> forms = TypedForms.of(scoring, language);
    for (String form : forms) {
      into.empty(
          "qti-map-entry", "map-key", form, "mapped-value", worth(), "case-sensitive", "false");
    }
    return into.close().close();
  }

  @Override
  public Markup byHand(Scoring.ByHand scoring) {
    return declare(item.response() instanceof Response.Choices ? "identifier" : "string").close();
  }

  private Markup declare(String baseType) {
    return into.open(
        "qti-response-declaration",
        "identifier",
        RESPONSE,
        "cardinality",
        "single",
        "base-type",
        baseType);
  }

  @Override
  public Markup work(Response.Work work) {
    return into.empty(
        "qti-extended-text-interaction",
        "response-identifier",
        RESPONSE,
        "expected-lines",
        String.valueOf(Math.max(1, work.lines())));
  }

  @Override
  public Markup shortAnswer(Response.ShortAnswer answer) {
    into.open("p").text(language.word("answer") + " ");
    return into.empty(
            "qti-text-entry-interaction", "response-identifier", RESPONSE, "expected-length", "20")
        .close();
  }

  @Override
  public Markup choices(Response.Choices choices) {
    into.open(
        "qti-choice-interaction",
        "response-identifier",
        RESPONSE,
        "max-choices",
        "1",
        "shuffle",
        "false");
    List<Response.Choice> all = choices.choices();
    for (Response.Choice choice : all) {
      into.open("qti-simple-choice", "identifier", identifier(choice.letter()));
      new Phrases(language, scripts, Integer.MAX_VALUE, into).all(choice.pieces());
      into.close();
    }
    return into.close();
  }

  private static String identifier(String letter) {
    return "choice-" + letter;
  }
}
