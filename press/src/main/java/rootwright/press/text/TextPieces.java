package rootwright.press.text;

import java.util.List;
import java.util.stream.Collectors;
import rootwright.algebra.notation.Formula;
import rootwright.press.document.Language;
import rootwright.press.document.Piece;
import rootwright.press.formula.Breaks;
import rootwright.press.formula.FormulaScripts;

/** The pieces of a line in plain text. */
final class TextPieces implements Piece.Cases<String> {

  /** A formula up to this many signs is not broken. */
  private static final int KEPT_WHOLE = 40;

  private final Language language;
  private final FormulaScripts scripts;

  TextPieces(Language language, FormulaScripts scripts) {
    this.language = language;
    this.scripts = scripts;
  }

  String all(List<Piece> pieces) {
    return pieces.stream().map(piece -> piece.choose(this)).collect(Collectors.joining());
  }

  @Override
  public String words(Piece.Words words) {
    return words.text();
  }

  @Override
  public String mathematics(Piece.Mathematics mathematics) {
    StringBuilder into = new StringBuilder();
    boolean blank = false;
    for (Formula piece : Breaks.pieces(mathematics.formula(), this::isShort)) {
      if (!into.isEmpty()) {
        into.append(blank || Breaks.leadingRoom(piece) > 0 ? ' ' : TextLines.MAY_END);
      }
      String text = scripts.unicode().apply(piece);
      into.append(text.strip().replace(' ', TextLines.FIRM));
      blank = piece instanceof Formula.Words && text.endsWith(" ");
    }
    return into.toString();
  }

  private boolean isShort(Formula formula) {
    return scripts.unicode().apply(formula).length() <= KEPT_WHOLE;
  }

  @Override
  public String blank(Piece.Blank blank) {
    return "_".repeat(blank.letters());
  }

  @Override
  public String emphasis(Piece.Emphasis emphasis) {
    return all(emphasis.pieces());
  }

  @Override
  public String strong(Piece.Strong strong) {
    return all(strong.pieces());
  }

  @Override
  public String decimal(Piece.Decimal decimal) {
    return language.decimal(decimal.value());
  }

  @Override
  public String enumeration(Piece.Enumeration enumeration) {
    return enumeration.members().stream()
        .map(this::all)
        .collect(Collectors.joining(language.separator(enumeration)));
  }
}
