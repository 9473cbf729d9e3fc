package rootwright.press.latex;

import java.util.List;
import java.util.stream.Collectors;
import rootwright.algebra.notation.Formula;
import rootwright.press.document.Language;
import rootwright.press.document.Piece;
import rootwright.press.formula.Breaks;
import rootwright.press.formula.FormulaScripts;

/** The pieces of a line in LaTeX. */
final class LatexPieces implements Piece.Cases<String> {

  /** A formula up to this many signs is left to TeX. */
  private static final int KEPT_WHOLE = 30;

  private final Language language;
  private final FormulaScripts scripts;

  LatexPieces(Language language, FormulaScripts scripts) {
    this.language = language;
    this.scripts = scripts;
  }

  String all(List<Piece> pieces) {
    return pieces.stream().map(piece -> piece.choose(this)).collect(Collectors.joining());
  }

  @Override
  public String words(Piece.Words words) {
    return LatexText.of(words.text());
  }

  /**
   * In a line, so that TeX may break it, with fractions of full size. TeX itself breaks after signs
   * of a formula only; a long one may be broken wherever the other outputs would.
   */
  @Override
  public String mathematics(Piece.Mathematics mathematics) {
    return Breaks.pieces(mathematics.formula(), this::isShort).stream()
        .map(piece -> LatexText.inFormula(scripts.latex().apply(piece)))
        .collect(Collectors.joining("\\allowbreak ", "$\\displaystyle ", "$"));
  }

  private boolean isShort(Formula formula) {
    return scripts.unicode().apply(formula).length() <= KEPT_WHOLE;
  }

  @Override
  public String blank(Piece.Blank blank) {
    return "\\rule{%dex}{0.4pt}".formatted(blank.letters());
  }

  @Override
  public String emphasis(Piece.Emphasis emphasis) {
    return "\\emph{" + all(emphasis.pieces()) + "}";
  }

  @Override
  public String strong(Piece.Strong strong) {
    return "\\textbf{" + all(strong.pieces()) + "}";
  }

  @Override
  public String decimal(Piece.Decimal decimal) {
    return LatexText.of(language.decimal(decimal.value()));
  }

  @Override
  public String enumeration(Piece.Enumeration enumeration) {
    return enumeration.members().stream()
        .map(this::all)
        .collect(Collectors.joining(language.separator(enumeration)));
  }
}
