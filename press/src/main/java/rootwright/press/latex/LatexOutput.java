package rootwright.press.latex;

import java.nio.charset.StandardCharsets;
import rootwright.press.document.Document;
import rootwright.press.formula.FormulaScripts;
import rootwright.press.output.Output;

/**
 * A LaTeX file for {@code article} with {@code amsmath}, {@code amssymb}, {@code array} and {@code
 * geometry} only. Figures are replaced by their text alternatives.
 */
public final class LatexOutput implements Output {

  private final FormulaScripts scripts;

  /** With the ways to write formulas. */
  public LatexOutput(FormulaScripts scripts) {
    this.scripts = scripts;
  }

  @Override
  public String name() {
    return "latex";
  }

  @Override
  public String title() {
    return "LaTeX source";
  }

  @Override
  public String extension() {
    return "tex";
  }

  @Override
  public String mediaType() {
    return "application/x-tex";
  }

  @Override
  public byte[] print(Document document) {
    StringBuilder into = new StringBuilder();
    begin(document, into);
    new LatexBlocks(document.language(), scripts, into).all(document.blocks());
    into.append("\\label{end}\n\\end{document}\n");
    return into.toString().getBytes(StandardCharsets.UTF_8);
  }

  private static void begin(Document document, StringBuilder into) {
    boolean large = document.layout().size().isLargePrint();
    String sheet =
        switch (document.layout().format()) {
          case A4 -> "a4paper";
          case LETTER -> "letterpaper";
        };
    into.append("\\documentclass[11pt,%s]{article}\n".formatted(sheet));
    into.append("\\usepackage[utf8]{inputenc}\n");
    into.append("\\usepackage{amsmath,amssymb,array}\n");
    into.append("\\usepackage[margin=%dmm]{geometry}\n".formatted(large ? 18 : 24));
    if (large) {
      into.append("\\usepackage{lmodern}\n");
    }
    into.append(
        """
        \\setlength{\\parindent}{0pt}
        \\setlength{\\parskip}{0.5em}
        \\renewcommand{\\arraystretch}{1.4}
        \\newcommand{\\reason}[1]{{\\unskip\\nobreak\\hfil\\penalty50\\hskip1em\\hbox{}\\nobreak
          \\hfil\\emph{#1}\\rightskip=0pt\\parfillskip=0pt\\finalhyphendemerits=0\\par}}
        """);
    foot(document, into);
    into.append("\\begin{document}\n");
    if (large) {
      int size = document.layout().size().points();
      into.append(
          "\\fontsize{%d}{%d}\\sffamily\\selectfont\n".formatted(size, Math.round(size * 1.35f)));
    }
    into.append("\\raggedright\n");
    into.append("{\\LARGE\\bfseries ").append(LatexText.of(document.title())).append('}');
    String version = document.identity().version();
    if (!version.isEmpty()) {
      into.append("\\hfill{\\bfseries ")
          .append(LatexText.of(document.language().word("version", version)))
          .append("}\\null");
    }
    into.append("\\par\\smallskip\\hrule\\bigskip\n\n");
  }

  private static void foot(Document document, StringBuilder into) {
    String code = document.identity().paperCode();
    String version = document.identity().version();
    String left = code.isEmpty() ? document.language().word("draft") : code;
    if (!version.isEmpty()) {
      left += " · " + document.language().word("version", version);
    }
    String[] around = document.language().word("page", "\u0000", "\u0000").split("\u0000", -1);
    into.append("\\makeatletter\n\\def\\ps@paper{\\def\\@oddhead{}\\def\\@oddfoot{\\footnotesize ")
        .append(LatexText.of(left))
        .append("\\hfil ")
        .append(LatexText.of(around[0]))
        .append("\\thepage{}")
        .append(LatexText.of(around[1]))
        .append("\\pageref{end}")
        .append(LatexText.of(around[2]))
        .append("}}\n\\makeatother\n\\pagestyle{paper}\n");
  }
}
