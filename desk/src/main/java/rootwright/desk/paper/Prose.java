package rootwright.desk.paper;

import java.util.ArrayList;
import java.util.List;
import rootwright.algebra.notation.FormulaReader;
import rootwright.algebra.notation.LatexWriter;
import rootwright.algebra.notation.PlainWriter;
import rootwright.algebra.notation.UnicodeWriter;
import rootwright.algebra.notation.UnreadableException;
import rootwright.press.document.Piece;

/** Lines of words with formulas between dollar signs, as a coach writes them into a file. */
final class Prose {

  private static final String FORMULA = "$";

  private Prose() {}

  /**
   * The pieces of a line.
   *
   * @throws UnreadableException if a formula cannot be read
   * @throws IllegalArgumentException if a dollar sign has no partner
   */
  static List<Piece> read(String line) throws UnreadableException {
    String[] parts = line.split("\\$", -1);
    if (parts.length % 2 == 0) {
      throw new IllegalArgumentException(
          "a formula begins with $ and does not end with $: " + line);
    }
    List<Piece> pieces = new ArrayList<>();
    for (int k = 0; k < parts.length; k++) {
      if (k % 2 == 1) {
        pieces.add(Piece.math(FormulaReader.formula(parts[k])));
      } else if (!parts[k].isEmpty()) {
        pieces.add(Piece.words(parts[k]));
      }
    }
    return pieces;
  }

  /** The lines as they are written into a file; emphasis is lost. */
  static String write(List<Piece> pieces) {
    StringBuilder line = new StringBuilder();
    pieces.forEach(piece -> line.append(piece.choose(new Spelling())));
    return line.toString();
  }

  private static final class Spelling implements Piece.Cases<String> {
    @Override
    public String words(Piece.Words words) {
      return words.text();
    }

    @Override
    public String mathematics(Piece.Mathematics mathematics) {
      String plain = PlainWriter.write(mathematics.formula());
      try {
        if (LatexWriter.write(FormulaReader.formula(plain))
            .equals(LatexWriter.write(mathematics.formula()))) {
          return FORMULA + plain + FORMULA;
        }
      } catch (UnreadableException words) {
        // Below: a formula that is not read back as it is stands as words.
      }
      return UnicodeWriter.write(mathematics.formula());
    }

    @Override
    public String blank(Piece.Blank blank) {
      return "_".repeat(blank.letters());
    }

    @Override
    public String emphasis(Piece.Emphasis emphasis) {
      return write(emphasis.pieces());
    }

    @Override
    public String strong(Piece.Strong strong) {
      return write(strong.pieces());
    }

    @Override
    public String decimal(Piece.Decimal decimal) {
      return decimal.value().toPlainString();
    }

    @Override
    public String enumeration(Piece.Enumeration enumeration) {
      return String.join(", ", enumeration.members().stream().map(Prose::write).toList());
    }
  }
}
