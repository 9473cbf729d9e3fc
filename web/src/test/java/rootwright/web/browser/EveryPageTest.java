package rootwright.web.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.Contrast;
import com.microsoft.playwright.options.Media;
import java.util.stream.Stream;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rootwright.web.frame.DeskPage;

/** What holds for every page of the desk, as it stands when it is opened. */
class EveryPageTest extends BrowserTest {

  static Stream<Named<String>> pages() {
    return DeskPage.ALL.stream().map(page -> Named.of(page.name(), page.path().substring(1)));
  }

  private static void settled(Visit visit, String path) {
    visit.page().navigate(desk().address() + path);
    visit.page().waitForLoadState(com.microsoft.playwright.options.LoadState.NETWORKIDLE);
  }

  private static void fits(Visit visit) {
    assertThat(
            (Integer)
                visit.page().evaluate("document.documentElement.scrollWidth - window.innerWidth"))
        .isLessThanOrEqualTo(0);
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("pages")
  void isReachedFromEveryOtherAndHasNoBarrierInLightDarkAndHighContrast(String path) {
    settled(visit(), path);
    assertThat(page().locator(".head nav a").count()).isEqualTo(DeskPage.ALL.size());
    assertThat(page().locator(".head [aria-current=page]").count()).isEqualTo(1);
    assertThat(page().locator("h1").count()).isEqualTo(1);
    assertThat(visit().barriers()).as("light").isEmpty();
    page()
        .emulateMedia(
            new Page.EmulateMediaOptions()
                .setColorScheme(ColorScheme.DARK)
                .setContrast(Contrast.MORE));
    assertThat(visit().barriers()).as("dark, more contrast").isEmpty();
    page().emulateMedia(new Page.EmulateMediaOptions().setMedia(Media.PRINT));
    assertThat(page().locator(".head").isVisible()).isFalse();
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("pages")
  void fitsFromAPhoneToAWideScreenAndTwiceAsLarge(String path) {
    try (Visit other = Visit.zoomed(desk().address())) {
      settled(other, path);
      fits(other);
      for (int width : new int[] {360, 1920}) {
        other.page().setViewportSize(width, 900);
        fits(other);
      }
    }
  }
}
