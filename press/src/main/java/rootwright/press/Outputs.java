package rootwright.press;

import java.util.List;
import java.util.Optional;
import rootwright.press.formula.FormulaScripts;
import rootwright.press.html.HtmlOutput;
import rootwright.press.latex.LatexOutput;
import rootwright.press.output.Output;
import rootwright.press.pdf.PdfOutput;
import rootwright.press.qti.QtiOutput;
import rootwright.press.text.TextOutput;

/**
 * The outputs we have. A new one is registered here and nowhere else.
 *
 * @param all in the order in which they are offered
 */
public record Outputs(List<Output> all) {

  public Outputs {
    all = List.copyOf(all);
  }

  /** Every output, writing formulas as the house does. */
  public static Outputs usual() {
    return with(FormulaScripts.USUAL);
  }

  /** Every output, writing formulas in these scripts. */
  public static Outputs with(FormulaScripts scripts) {
    return new Outputs(
        List.of(
            new PdfOutput(scripts),
            new HtmlOutput(scripts),
            new LatexOutput(scripts),
            new TextOutput(scripts),
            new QtiOutput(scripts)));
  }

  /** The output of this name, empty if there is none. */
  public Optional<Output> named(String name) {
    return all.stream().filter(output -> output.name().equals(name)).findFirst();
  }
}
