package rootwright.algebra.notation;

import java.util.ArrayList;
import java.util.List;

/**
 * Reads a formula from plain text, Unicode or LaTeX, also mixed.
 *
 * <p>Factors may stand side by side; they bind more tightly than a stroke ({@code 1/rs} is {@code
 * 1/(r*s)}), but a fraction of two whole numbers is one number ({@code 1/2x} is {@code (1/2)*x}). Σ
 * and Π take the product that follows them. {@code mod} binds last. Decimals and mixed numbers are
 * exact. The result is in {@link NormalForm}; reading looks at a text once, in time linear in its
 * length, and computes nothing.
 */
public final class FormulaReader {

  private FormulaReader() {}

  /**
   * The formula with the readings that might surprise.
   *
   * @throws UnreadableException with the place, what was expected and, where it can be guessed, a
   *     text that would be read; also if a limit of {@link Limits} is exceeded
   */
  public static ReadFormula read(String text) throws UnreadableException {
    return Mend.tried(FormulaReader::readOnce, text);
  }

  /**
   * The formula alone.
   *
   * @throws UnreadableException as {@link #read}
   */
  public static Formula formula(String text) throws UnreadableException {
    return read(text).formula();
  }

  private static ReadFormula readOnce(String text) throws UnreadableException {
    return placed(text).read();
  }

  /** The formula with the place of each part. */
  static PlacedFormula placed(String text) throws UnreadableException {
    SourceText source = new SourceText(text);
    if (source.isBlank()) {
      throw source.refused("empty", "There is nothing to read.", 0, "a formula", "");
    }
    List<Reading> readings = new ArrayList<>();
    List<Token> tokens = BracketedModulo.opened(Tokenizer.tokens(source, readings));
    Parser parser = new Parser(source, tokens, readings);
    Piece piece = parser.whole();
    return new PlacedFormula(text, new ReadFormula(piece.formula(), readings), parser.places());
  }
}
