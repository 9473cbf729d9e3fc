package rootwright.press.formula;

import java.util.function.Function;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.LatexWriter;
import rootwright.algebra.notation.MathmlWriter;
import rootwright.algebra.notation.PlainWriter;
import rootwright.algebra.notation.SpokenWriter;
import rootwright.algebra.notation.UnicodeWriter;

/**
 * The ways in which a formula is written out.
 *
 * @param latex mathematics without dollar signs
 * @param mathml a {@code math} element
 * @param unicode one line with superscripts and true signs, for people
 * @param linear one line of ASCII, for searching and copying
 * @param spoken a sentence that is read aloud
 */
public record FormulaScripts(
    Function<Formula, String> latex,
    Function<Formula, String> mathml,
    Function<Formula, String> unicode,
    Function<Formula, String> linear,
    Function<Formula, String> spoken) {

  /** The scripts of the house. */
  public static final FormulaScripts USUAL =
      new FormulaScripts(
          formula -> Fences.snug(LatexWriter.write(formula)),
          MathmlWriter::write,
          UnicodeWriter::write,
          PlainWriter::write,
          SpokenWriter::write);
}
