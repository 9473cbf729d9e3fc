package rootwright.press.prose;

import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.FormulaReader;
import rootwright.algebra.notation.UnreadableException;

/** Formulas with three dots in them, which the reader of formulas does not know. */
public final class Dots {

  /** Stands for the dots while the formula is read; no coach names a root so. */
  private static final String STAND_IN = "ξ";

  private static final Formula DOTS = new Formula.Words("…");

  private Dots() {}

  public static Formula read(String typed) throws UnreadableException {
    if (typed.indexOf('…') < 0) {
      return FormulaReader.formula(typed);
    }
    return FormulaReader.formula(typed.replace("…", STAND_IN))
        .rewrite(
            part ->
                part instanceof Formula.Name name && name.letter().equals(STAND_IN) ? DOTS : part);
  }
}
