package rootwright.algebra.notation;

import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Reads an ask, a plain phrase or a formula, and settles how the roots are called. */
public final class AskReader {

  private AskReader() {}

  /**
   * The ask with the usual names of the roots, or those it implies ({@link RootNames}).
   *
   * @param degree how many roots
   * @param letters what the polynomial uses, its unknown included
   * @throws UnreadableException if the text is neither a known phrase nor a formula, or names a
   *     letter that is neither a root nor of the polynomial
   */
  public static ReadAsk read(String text, int degree, Set<String> letters)
      throws UnreadableException {
    Optional<ReadFormula> phrase = PhraseReader.read(text, RootNames.usual(degree, letters));
    if (phrase.isPresent()) {
      return ask(phrase.get(), RootNames.usual(degree, letters));
    }
    ReadFormula read = FormulaReader.read(text);
    return ask(read, RootNames.implied(read.formula(), text, degree, letters));
  }

  /**
   * The ask where the roots have these names.
   *
   * @throws UnreadableException as {@link #read(String, int, Set)}
   */
  public static ReadAsk read(String text, List<String> roots, Set<String> letters)
      throws UnreadableException {
    Optional<ReadFormula> phrase = PhraseReader.read(text, roots);
    if (phrase.isPresent()) {
      return ask(phrase.get(), roots);
    }
    ReadFormula read = FormulaReader.read(text);
    RootNames.requireKnown(read.formula(), text, roots, letters);
    return ask(read, roots);
  }

  private static ReadAsk ask(ReadFormula read, List<String> roots) {
    return new ReadAsk(read.formula(), roots, read.readings());
  }
}
