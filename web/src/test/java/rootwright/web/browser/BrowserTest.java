package rootwright.web.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;
import rootwright.web.DeskServer;
import rootwright.web.DeskSettings;

/** Tests of a page in a real browser: a desk of their own, and for each test a person before it. */
abstract class BrowserTest {

  @TempDir static Path folder;
  private static DeskServer desk;
  private Visit visit;

  @BeforeAll
  static void startDesk() {
    desk = DeskServer.start(new DeskSettings(0, folder));
  }

  @AfterAll
  static void stopDesk() {
    desk.close();
  }

  @BeforeEach
  void sitDown() {
    visit = Visit.of(desk.address());
  }

  /** Every visit must be quiet: no script error, and no word to anybody but this machine. */
  @AfterEach
  void nothingLeftTheMachineAndNothingComplained() {
    try (Visit ended = visit) {
      String own = desk.address().toString();
      assertThat(ended.requests())
          .allMatch(url -> url.startsWith(own) || url.startsWith("blob:" + own));
      assertThat(ended.complaints()).isEmpty();
    }
  }

  static DeskServer desk() {
    return desk;
  }

  Visit visit() {
    return visit;
  }

  Page page() {
    return visit.page();
  }

  /** Goes to another page of the desk. */
  void goTo(String path) {
    page().navigate(desk.address() + path);
  }

  /** Whether the element with the focus is such a one. */
  boolean focused(String selector) {
    return (Boolean) page().evaluate("s => document.activeElement.matches(s)", selector);
  }

  /** A narrow page in the dark fits and has no barrier, once {@code there} stands on it. */
  static void fitsAPhoneInTheDark(String path, String there) {
    try (Visit phone = Visit.of(desk.address(), 360, ColorScheme.DARK)) {
      phone.page().navigate(desk.address() + path);
      phone.page().waitForSelector(there);
      assertThat(phone.page().evaluate("document.documentElement.scrollWidth")).isEqualTo(360);
      assertThat(phone.barriers()).isEmpty();
    }
  }
}
