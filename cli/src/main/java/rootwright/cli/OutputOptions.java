package rootwright.cli;

import picocli.CommandLine.Option;

/** In which form composed problems are printed. */
final class OutputOptions {

  @Option(names = "--json", description = "One JSON object.")
  boolean json;

  @Option(names = "--latex", description = "LaTeX source: the problems, then what the coach needs.")
  boolean latex;

  OutputForm form() {
    return json ? OutputForm.JSON : latex ? OutputForm.LATEX : OutputForm.TERMINAL;
  }
}
