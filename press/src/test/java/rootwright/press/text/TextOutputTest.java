package rootwright.press.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import rootwright.press.Printed;
import rootwright.press.Samples;

class TextOutputTest {

  @Test
  void noLineIsWiderThanTheLetter() {
    for (var paper : List.of(Samples.worksheet(), Samples.key(), Samples.solutions())) {
      assertThat(Printed.text("text", paper).lines())
          .allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(76));
    }
  }

  @Test
  void aReasonStandsAtTheLinesEnd() {
    assertThat(Printed.text("text", Samples.solutions()).lines())
        .anySatisfy(line -> assertThat(line).hasSize(76).endsWith("[divide]"));
  }

  @Test
  void aFormulaIsNotBrokenAtItsBlanks() {
    List<String> lines =
        TextLines.wrap("Find x" + TextLines.FIRM + "+" + TextLines.FIRM + "y now", 9);
    assertThat(lines).containsExactly("Find", "x\u00A0+\u00A0y now");
  }

  @Test
  void everyMarkerStandsBesideItsText() {
    TextLines lines = new TextLines(24);
    lines.in(" 1. ", () -> lines.wrapped("one two three four five"));
    assertThat(lines.finished()).isEqualTo(" 1. one two three four\n    five\n");
  }
}
