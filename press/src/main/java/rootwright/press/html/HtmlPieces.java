package rootwright.press.html;

import java.util.List;
import rootwright.algebra.notation.Formula;
import rootwright.press.document.Language;
import rootwright.press.document.Piece;
import rootwright.press.formula.Breaks;
import rootwright.press.formula.FormulaScripts;
import rootwright.press.markup.Markup;

/** The pieces of a line as phrasing content. */
final class HtmlPieces implements Piece.Cases<Markup> {

  /** A formula with more signs than this may be broken: browsers do not break formulas. */
  private static final int SIGNS_KEPT_WHOLE = 40;

  private final Language language;
  private final FormulaScripts scripts;
  private final Markup into;

  HtmlPieces(Language language, FormulaScripts scripts, Markup into) {
    this.language = language;
    this.scripts = scripts;
    this.into = into;
  }

  Markup all(List<Piece> pieces) {
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
    return scripts.unicode().apply(formula).length() <= SIGNS_KEPT_WHOLE;
  }

  @Override
  public Markup blank(Piece.Blank blank) {
    into.open("span", "class", "blank", "style", "width:" + blank.letters() + "ch");
    return into.close();
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
