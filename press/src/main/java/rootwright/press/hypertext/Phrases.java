package rootwright.press.hypertext;

import java.util.List;
import rootwright.algebra.notation.Formula;
import rootwright.press.document.Language;
import rootwright.press.document.Piece;
import rootwright.press.formula.Breaks;
import rootwright.press.formula.FormulaScripts;
import rootwright.press.markup.Markup;

/**
 * The pieces of a line as phrasing content of HTML, well formed as XML, each formula a {@code math}
 * element.
 */
public final class Phrases implements Piece.Cases<Markup> {

  private final Language language;
  private final FormulaScripts scripts;
  private final int keptWhole;
  private final Markup into;

  /**
   * Writes into markup.
   *
   * @param keptWhole a formula with more signs than this is broken into several elements, between
   *     which a line may end, since browsers do not break formulas
   */
  public Phrases(Language language, FormulaScripts scripts, int keptWhole, Markup into) {
    this.language = language;
    this.scripts = scripts;
    this.keptWhole = keptWhole;
    this.into = into;
  }

  /** Writes the pieces one after the other. */
  public Markup all(List<Piece> pieces) {
    pieces.forEach(piece -> piece.choose(this));
    return into;
  }

  @Override
  public Markup words(Piece.Words words) {
    return into.text(words.text());
  }

  @Override
  public Markup mathematics(Piece.Mathematics mathematics) {
    boolean first = true;
    for (Formula piece : Breaks.pieces(mathematics.formula(), this::isShort)) {
      if (!first) {
        into.empty("wbr");
      }
      into.raw(scripts.mathml().apply(piece));
      first = false;
    }
    return into;
  }

  private boolean isShort(Formula formula) {
    return scripts.unicode().apply(formula).length() <= keptWhole;
  }

  @Override
  public Markup blank(Piece.Blank blank) {
    return into.text("_".repeat(blank.letters()));
  }

  @Override
  public Markup emphasis(Piece.Emphasis emphasis) {
    into.open("em");
    all(emphasis.pieces());
    return into.close();
  }

  @Override
  public Markup strong(Piece.Strong strong) {
    into.open("strong");
    all(strong.pieces());
    return into.close();
  }

  @Override
  public Markup decimal(Piece.Decimal decimal) {
    return into.text(language.decimal(decimal.value()));
  }

  @Override
  public Markup enumeration(Piece.Enumeration enumeration) {
    String between = "";
    for (List<Piece> member : enumeration.members()) {
      into.text(between);
      all(member);
      between = language.separator(enumeration);
    }
    return into;
  }
}
