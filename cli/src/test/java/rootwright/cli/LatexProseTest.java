package rootwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import rootwright.desk.Desk;
import rootwright.working.problem.Statement;
import rootwright.working.route.ClassProfile;

class LatexProseTest {

  @Test
  void signsThatAPlainFontLacksBecomeMathematics() {
    assertThat(LatexProse.of("e₁² − 2e₂, P′ ≠ 0 & 5 %"))
        .isEqualTo(
            "e\\ensuremath{_{1}}\\ensuremath{^{2}} \\ensuremath{-} 2e\\ensuremath{_{2}},"
                + " P\\ensuremath{'} \\ensuremath{\\neq} 0 \\& 5 \\%");
  }

  @Test
  void aWholeReportIsPlainAscii() throws Exception {
    for (String ask : new String[] {"Σ 1/(r-3)", "Σ r^2", "r^2 s + s^2 t + t^2 r", "Π (1+r)"}) {
      String report =
          LatexReport.of(
              new Desk().work(Statement.of("5x^3 - 10x^2 + x - 4", ask), ClassProfile.EVERYTHING));
      assertThat(report.chars().filter(c -> c > 126).mapToObj(Character::toString).toList())
          .as(ask)
          .isEmpty();
    }
  }
}
