package rootwright.desk.contract;

import com.fasterxml.jackson.databind.node.ObjectNode;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.LatexWriter;
import rootwright.algebra.notation.MathmlWriter;
import rootwright.algebra.notation.PlainWriter;
import rootwright.algebra.notation.SpokenWriter;

/** In which notations every formula of an object is written. */
public enum FormulaForms {
  /** Plain text that the reader reads back, and LaTeX. */
  FOR_SCRIPTS {
    @Override
    public void write(ObjectNode into, Formula formula) {
      into.put("text", PlainWriter.write(formula));
      into.put("latex", LatexWriter.write(formula));
    }
  },
  /** The same with MathML and the spoken sentence, for a page. */
  FOR_PAGES {
    @Override
    public void write(ObjectNode into, Formula formula) {
      FOR_SCRIPTS.write(into, formula);
      into.put("mathml", MathmlWriter.write(formula));
      into.put("spoken", SpokenWriter.write(formula));
    }
  };

  /** Writes the formula into an object, one field for each notation. */
  public abstract void write(ObjectNode into, Formula formula);
}
