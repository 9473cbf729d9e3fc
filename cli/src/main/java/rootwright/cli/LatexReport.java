package rootwright.cli;

import rootwright.algebra.notation.LatexWriter;
import rootwright.working.route.Working;
import rootwright.working.solve.Solution;
import rootwright.working.step.Step;

/** A solution as LaTeX source for a plain {@code article} with {@code amsmath}. */
final class LatexReport {

  private LatexReport() {}

  static String of(Solution solution) {
    StringBuilder source = new StringBuilder();
    source
        .append("% ")
        .append(solution.kind())
        .append('\n')
        .append("Given $")
        .append(LatexWriter.write(solution.given().polynomial()))
        .append("$ with the roots $")
        .append(String.join(", ", solution.given().roots()))
        .append("$, find\n\\[")
        .append(LatexWriter.write(solution.given().find()))
        .append(".\\]\n")
        .append("Answer: $")
        .append(LatexWriter.writeAlternatives(solution.answer().alternatives()))
        .append("$.\n");
    solution.routes().forEach(working -> source.append(working(working)));
    return source.toString().stripTrailing();
  }

  /** One working as a paragraph of aligned lines. */
  static String working(Working working) {
    StringBuilder source = new StringBuilder();
    source.append("\n\\paragraph{").append(LatexProse.of(working.title())).append(".}\n");
    source.append("\\begin{align*}\n");
    for (Step step : working.steps()) {
      source
          .append("  & ")
          .append(LatexWriter.write(step.shown()))
          .append(" && \\text{")
          .append(LatexProse.of(step.reason()))
          .append("} \\\\\n");
    }
    return source.append("\\end{align*}\n").toString();
  }
}
