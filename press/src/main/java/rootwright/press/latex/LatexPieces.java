package rootwright.press.latex;

import java.util.List;
import java.util.stream.Collectors;
import rootwright.press.document.Language;
import rootwright.press.document.Piece;
import rootwright.press.formula.FormulaScripts;

/** The pieces of a line in LaTeX. */
final class LatexPieces implements Piece.Cases<String> {

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

  /** In a line, so that TeX may break it after its signs, with fractions of full size. */
  @Override
  public String mathematics(Piece.Mathematics mathematics) {
    return "$\\displaystyle " + scripts.latex().apply(mathematics.formula()) + "$";
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
