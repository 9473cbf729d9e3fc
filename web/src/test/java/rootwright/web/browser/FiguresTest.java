package rootwright.web.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.Contrast;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** There is something to see of every kind of problem, and it is said in words too. */
class FiguresTest extends BrowserTest {

  @ParameterizedTest(name = "{0}, {1}")
  @CsvSource(
      delimiter = ';',
      value = {
        "x^3 - 9x^2 + kx - 24; k if r = 2s; At k = 26 the real roots are near 2",
        "x^5 - 5x + k; k if three real roots; The answer is k from −4 to 4",
        "x^2 + kx + 6; r^2 + s^2; The graph of r^2 + s^2 by k",
        "x^2 - 2mx + m + 6; least r^2+s^2 if roots real; with the value 8 marked",
        "x^3 - 2x^2 - 5x + 6 and x^2 - 4x + 3; common roots; Common: 1; 3.",
        "x^3 - 2x^2 - 3x + 5; polynomial with roots (r^2); the roots of the new polynomial",
        "'';greatest x if x+y+z+w=8, x^2+y^2+z^2+w^2=28, x, y, z, w real; between -1 and 5",
        "x^3 - x - 1; period of S_k mod 2; come round after 7",
        "x^3 - x - 1; S_(-3); from S -3",
        "'';P(6) if P is a monic quartic, P(k) = k^2+1 for k = 1..4; P of 6 is 157",
        "sqrt(x+7) = x-5; solutions; meet at 9",
        "'';(a^2+b^2+1)/(ab) if a, b positive integers, ab divides a^2+b^2+1; 2 and 5; 5 and 13",
        "x^3 - 12x^2 + 44x - 46; area of the triangle with sides r, s, t; A triangle with sides",
        "x^3 - x^2 - 4x - 1; r^2 s + s^2 t + t^2 r; possible values on a line"
      })
  void aFigureShowsItAndSaysIt(String polynomial, String find, String said) {
    visit().open(polynomial, find);
    assertThat(page().locator(".figures svg").all())
        .extracting(figure -> figure.getAttribute("aria-label"))
        .anySatisfy(label -> assertThat(label).contains(said));
    assertThat(page().locator(".figures svg g[role=img]").all())
        .extracting(mark -> mark.getAttribute("aria-label"))
        .doesNotContainNull()
        .doesNotContain("");
    assertThat(page().locator(".figures figcaption").allTextContents()).doesNotContain("");
  }

  @Test
  void describedAndGivenNumbersStandInThePlane() {
    for (String[] problem :
        new String[][] {
          {"9th roots of unity other than 1", "Π (3-r)", "8"},
          {"", "xyz if x+y+z=3, x^2+y^2+z^2=5, x^3+y^3+z^3=12", "3"}
        }) {
      visit().open(problem[0], problem[1]);
      Locator roots = page().locator(".answer svg [data-root]");
      assertThat(roots.count()).isEqualTo(Integer.parseInt(problem[2]));
      String name = roots.first().getAttribute("data-root");
      page()
          .locator(".sentence [data-root='" + name + "'], .lines [data-root='" + name + "']")
          .first()
          .hover();
      assertThat(roots.first().getAttribute("class")).contains("lit");
    }
  }

  @Test
  void figuresHaveNoBarrierInTheDarkAndInHighContrast() {
    for (String[] problem :
        new String[][] {
          {"x^5 - 5x + k", "k if three real roots"}, {"x^3 - x - 1", "period of S_k mod 7"}
        }) {
      visit().open(problem[0], problem[1]);
      page().emulateMedia(new Page.EmulateMediaOptions().setColorScheme(ColorScheme.DARK));
      assertThat(visit().barriers()).as(problem[1]).isEmpty();
      page().emulateMedia(new Page.EmulateMediaOptions().setContrast(Contrast.MORE));
      assertThat(visit().barriers()).as(problem[1]).isEmpty();
    }
  }
}
