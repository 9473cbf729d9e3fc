package rootwright.press.paper;

import java.util.List;
import java.util.stream.Collectors;
import rootwright.algebra.notation.PlainWriter;
import rootwright.press.document.Piece;

/** Pieces of a line in one fixed spelling, to be digested. */
final class CanonicalPieces implements Piece.Cases<String> {

  private static final CanonicalPieces SPELLING = new CanonicalPieces();

  private CanonicalPieces() {}

  static String of(List<Piece> pieces) {
    return pieces.stream().map(piece -> piece.choose(SPELLING)).collect(Collectors.joining());
  }

  @Override
  public String words(Piece.Words words) {
    return words.text();
  }

  @Override
  public String mathematics(Piece.Mathematics mathematics) {
    return "$" + PlainWriter.write(mathematics.formula()) + "$";
  }

  @Override
  public String blank(Piece.Blank blank) {
    return "_" + blank.letters() + "_";
  }

  @Override
  public String emphasis(Piece.Emphasis emphasis) {
    return "*" + of(emphasis.pieces()) + "*";
  }

  @Override
  public String strong(Piece.Strong strong) {
    return "**" + of(strong.pieces()) + "**";
  }

  @Override
  public String decimal(Piece.Decimal decimal) {
    return decimal.value().toPlainString();
  }

  @Override
  public String enumeration(Piece.Enumeration enumeration) {
    return enumeration.members().stream()
        .map(CanonicalPieces::of)
        .collect(Collectors.joining(", ", "[", "]"));
  }
}
