package rootwright.press.latex;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import rootwright.press.PaperSamples;
import rootwright.press.Printed;
import rootwright.press.Samples;
import rootwright.press.deliverable.Deliverable;
import rootwright.press.deliverable.Deliverables;
import rootwright.press.document.Document;
import rootwright.press.document.Layout;
import rootwright.press.document.TextSize;
import rootwright.press.paper.BlockedException;
import rootwright.press.paper.Paper;

class LatexOutputTest {

  private static final List<String> SOURCES = sources();

  /** Samples, and every document of a paper with problems of many kinds. */
  private static List<String> sources() {
    List<String> sources = new ArrayList<>();
    for (Document document : List.of(Samples.worksheet(), Samples.key(), Samples.solutions())) {
      sources.add(Printed.text("latex", document));
    }
    Paper paper = PaperSamples.ofManyKinds();
    for (Deliverable deliverable : Deliverables.ALL) {
      try {
        sources.add(Printed.text("latex", deliverable.document(paper, "", Layout.USUAL)));
      } catch (BlockedException blocked) {
        throw new AssertionError(blocked);
      }
    }
    return sources;
  }

  @Test
  void everySignIsOneThatPlainLatexCanSet() {
    for (String source : SOURCES) {
      assertThat(source.codePoints().filter(point -> point > 126).mapToObj(Character::toString))
          .isSubsetOf("·", "ä", "ö", "ü", "é");
    }
  }

  @Test
  void everyEnvironmentEndsWhereItsOwnBeginsAndEveryLeftBracketHasItsRight() {
    for (String source : SOURCES) {
      Deque<String> open = new ArrayDeque<>();
      Pattern.compile("\\\\(begin|end)\\{([a-z*]+)\\}")
          .matcher(source)
          .results()
          .forEach(
              found -> {
                if (found.group(1).equals("begin")) {
                  open.push(found.group(2));
                } else {
                  assertThat(open.pop()).isEqualTo(found.group(2));
                }
              });
      assertThat(open).isEmpty();
      for (String formula : source.split("(?<!\\\\)\\$")) {
        assertThat(count(formula, "\\left") - count(formula, "\\leftskip"))
            .as(formula)
            .isEqualTo(count(formula, "\\right") - count(formula, "\\rightskip"));
      }
    }
  }

  /** Commands of plain LaTeX, amsmath and amssymb; another one would need a package. */
  @Test
  void onlyCommandsOfPlainLatexAreUsed() {
    for (String source : SOURCES) {
      String body = source.substring(source.indexOf("\\begin{document}"));
      assertThat(Pattern.compile("\\\\([A-Za-z]+)").matcher(body).results().map(f -> f.group(1)))
          .isSubsetOf(KNOWN);
    }
  }

  private static final Set<String> KNOWN =
      Set.copyOf(
          List.of(
              ("begin end section subsection textbf emph textit item par hrule hline hfill null rule"
                      + " parbox fbox linewidth raggedright raggedleft centering arraybackslash"
                      + " raggedright LARGE Large large small footnotesize bfseries sffamily selectfont"
                      + " fontsize smallskip medskip bigskip vspace hspace label reason leftskip parskip"
                      + " newpage clearpage pagebreak nopagebreak filbreak displaystyle frac tfrac sqrt"
                      + " left right cdot times pm ne le ge approx sum prod text ldots dots allowbreak"
                      + " quad qquad surd to circ alpha beta gamma delta theta mu pi sigma omega Delta"
                      + " Sigma Pi infty Rightarrow equiv in mathbb operatorname cos sin tan cot sec csc"
                      + " log ln bmod pmod lfloor rfloor lvert rvert mid max min textless textgreater"
                      + " textbar textbackslash textasciitilde textasciicircum binom penalty nobreak"
                      + " unskip hfil hbox leavevmode noindent minipage vfill stretch hskip kern"
                      + " setcounter mbox fill hrulefill underline prime boldsymbol mathrm varepsilon lambda")
                  .split(" ")));

  @Test
  void onlyPackagesOfEveryDistributionAreUsed() {
    for (String source : SOURCES) {
      assertThat(source).startsWith("\\documentclass[11pt,a4paper]{article}");
      assertThat(
              Pattern.compile("\\\\usepackage(?:\\[[^]]*\\])?\\{([^}]*)\\}")
                  .matcher(source)
                  .results()
                  .flatMap(found -> List.of(found.group(1).split(",")).stream()))
          .isSubsetOf("inputenc", "amsmath", "amssymb", "array", "geometry");
    }
  }

  @Test
  void bracesAndEnvironmentsBalance() {
    for (String source : SOURCES) {
      String bare = source.replace("\\{", "").replace("\\}", "");
      assertThat(bare.chars().filter(sign -> sign == '{').count())
          .isEqualTo(bare.chars().filter(sign -> sign == '}').count());
      assertThat(count(source, "\\begin{")).isEqualTo(count(source, "\\end{"));
      assertThat(source.chars().filter(sign -> sign == '$').count() % 2).isZero();
    }
  }

  @Test
  void wordsAreNeverCommands() {
    assertThat(LatexText.of("50% of {a_b} & \\end ~ ^ #1 $"))
        .isEqualTo(
            "50\\% of \\{a\\_b\\} \\& \\textbackslash{}end \\textasciitilde{} \\textasciicircum{}"
                + " \\#1 \\$");
    assertThat(LatexText.of("−2 ≈ x²")).isEqualTo("$-$2 $\\approx$ x${}^2$");
  }

  @Test
  void largePrintIsSetAtItsSize() {
    assertThat(
            Printed.text(
                "latex", Samples.worksheet().withLayout(Layout.USUAL.withSize(TextSize.LARGE))))
        .contains("\\fontsize{18}{24}");
  }

  private static int count(String source, String part) {
    return source.split(Pattern.quote(part), -1).length - 1;
  }
}
