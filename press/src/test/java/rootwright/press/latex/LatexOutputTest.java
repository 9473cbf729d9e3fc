package rootwright.press.latex;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import rootwright.press.Printed;
import rootwright.press.Samples;
import rootwright.press.document.Layout;
import rootwright.press.document.TextSize;

class LatexOutputTest {

  private static final List<String> SOURCES =
      List.of(
          Printed.text("latex", Samples.worksheet()),
          Printed.text("latex", Samples.key()),
          Printed.text("latex", Samples.solutions()));

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
