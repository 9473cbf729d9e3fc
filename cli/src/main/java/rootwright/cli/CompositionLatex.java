package rootwright.cli;

import java.util.List;
import java.util.stream.Collectors;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.LatexWriter;
import rootwright.composing.blueprint.Composed;
import rootwright.composing.option.Choices;
import rootwright.composing.option.Option;
import rootwright.desk.table.Margin;

/**
 * Composed problems as LaTeX source for a plain {@code article} with {@code amsmath}: the problems
 * with their options, then on a new page, for the coach, everything else.
 */
final class CompositionLatex {

  private CompositionLatex() {}

  static String of(List<Composed> problems) {
    StringBuilder source = new StringBuilder("% \\usepackage{amsmath} is needed\n");
    source.append("\\begin{enumerate}\n");
    problems.forEach(composed -> source.append(sheet(composed)));
    source.append("\\end{enumerate}\n\n\\newpage\n\\noindent For the coach.\n");
    source.append("\\begin{enumerate}\n");
    problems.forEach(composed -> source.append(coach(composed)));
    return source.append("\\end{enumerate}").toString();
  }

  private static String sheet(Composed composed) {
    StringBuilder source = new StringBuilder();
    source
        .append("\\item ")
        .append(LatexProse.of(composed.solution().statement()))
        .append("\\\\\n");
    Choices choices = composed.choices();
    for (int k = 0; k < choices.options().size() && choices.options().size() > 1; k++) {
      source
          .append("  (%s)~$".formatted(CompositionPrinter.letter(k)))
          .append(written(choices.options().get(k)))
          .append("$\\qquad\n");
    }
    return source.toString();
  }

  private static String coach(Composed composed) {
    StringBuilder source = new StringBuilder("\\item ");
    Choices choices = composed.choices();
    source.append(
        "Key (%s): $%s$."
            .formatted(CompositionPrinter.letter(choices.keyIndex()), written(choices.key())));
    for (int k = 0; k < choices.options().size(); k++) {
      Option option = choices.options().get(k);
      if (!option.isKey()) {
        source.append(
            "\n  (%s) comes of %s."
                .formatted(
                    CompositionPrinter.letter(k),
                    LatexProse.of(String.join(", ", option.slips()))));
      }
    }
    choices.fewer().ifPresent(why -> source.append("\n  ").append(LatexProse.of(why)).append('.'));
    Margin margin = Margin.of(composed);
    margin
        .level()
        .ifPresent(
            level -> source.append("\n\n  ").append(LatexProse.of(level.words())).append('.'));
    source
        .append("\n\n  Good: ")
        .append(LatexProse.of(String.join("; ", composed.good())))
        .append(".\n");
    composed
        .conditions()
        .forEach(
            condition ->
                source.append("\n  ").append(LatexProse.of(condition.sentence())).append(".\n"));
    if (!margin.hints().isEmpty()) {
      source.append("\n  Hints:\n  \\begin{enumerate}\n");
      margin
          .hints()
          .forEach(rung -> source.append("  \\item " + LatexProse.of(rung.text()) + "\n"));
      source.append("  \\end{enumerate}\n");
    }
    composed.solution().routes().forEach(working -> source.append(LatexReport.working(working)));
    return source.toString();
  }

  private static String written(Option option) {
    return option.value().alternatives().stream()
        .map((Formula each) -> LatexWriter.write(each))
        .collect(Collectors.joining("\\text{ or }"));
  }
}
