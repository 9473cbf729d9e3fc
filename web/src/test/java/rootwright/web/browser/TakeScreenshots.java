package rootwright.web.browser;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rootwright.web.DeskServer;
import rootwright.web.DeskSettings;

/**
 * Writes pictures of the main screens; run by the command {@code web/screenshots}, not with the
 * tests. The folder is given by the system property {@code rootwright.screenshots}.
 */
class TakeScreenshots {

  private static final Map<String, String[]> PROBLEMS =
      new TreeMap<>(
          Map.of(
              "problem", new String[] {"3x^3 - 7x^2 + 2x - 5", "Σ 1/(r-3)"},
              "several-values", new String[] {"x^3 - 5x + 1", "r^2 s + s^2 t + t^2 r"},
              "power-sum", new String[] {"x^3 - x^2 - 2x + 4", "S_9"},
              "letters", new String[] {"x^5 - 5x + k", "k if three real roots"}));

  @Test
  void ofTheMainScreens(@TempDir Path folder) {
    Path into = Path.of(System.getProperty("rootwright.screenshots", "target/screenshots"));
    try (DeskServer desk = DeskServer.start(new DeskSettings(0, folder))) {
      for (ColorScheme scheme : new ColorScheme[] {ColorScheme.LIGHT, ColorScheme.DARK}) {
        for (int width : new int[] {360, 1280, 1920}) {
          PROBLEMS.forEach((name, problem) -> shoot(desk, into, scheme, width, name, problem));
          shootComposer(desk, into, scheme, width);
          shootCheck(desk, into, scheme, width);
          shootList(desk, into, scheme, width);
        }
      }
    }
  }

  private static void shootComposer(DeskServer desk, Path into, ColorScheme scheme, int width) {
    try (Visit visit = Visit.of(desk.address(), width, scheme)) {
      visit.page().navigate(desk.address() + "compose.html");
      visit.page().locator("#order [name=many]").fill("3");
      visit.page().locator("#compose").click();
      visit.until("document.querySelectorAll('.composed').length === 3");
      picture(visit, into, "compose", width, scheme);
    }
  }

  private static void shootCheck(DeskServer desk, Path into, ColorScheme scheme, int width) {
    try (Visit visit = Visit.of(desk.address(), width, scheme)) {
      visit.page().navigate(desk.address() + "check.html");
      visit.page().waitForSelector(".marked .note.slip");
      picture(visit, into, "check", width, scheme);
    }
  }

  private static void shootList(DeskServer desk, Path into, ColorScheme scheme, int width) {
    try (Visit visit = Visit.of(desk.address(), width, scheme)) {
      visit.page().navigate(desk.address() + "list.html");
      visit.page().locator("#work").click();
      visit.page().waitForSelector(".take button");
      picture(visit, into, "list", width, scheme);
    }
  }

  private static void shoot(
      DeskServer desk, Path into, ColorScheme scheme, int width, String name, String[] problem) {
    try (Visit visit = Visit.of(desk.address(), width, scheme)) {
      visit.open(problem[0], problem[1]);
      visit.page().waitForTimeout(200);
      picture(visit, into, name, width, scheme);
    }
  }

  /** The whole page, and its first screen. */
  private static void picture(Visit visit, Path into, String name, int width, ColorScheme scheme) {
    String file = "%s-%d-%s".formatted(name, width, scheme.name().toLowerCase(Locale.ROOT));
    Page.ScreenshotOptions whole = new Page.ScreenshotOptions().setFullPage(true);
    visit.page().screenshot(whole.setPath(into.resolve(file + ".png")));
    Page.ScreenshotOptions first = new Page.ScreenshotOptions();
    visit.page().screenshot(first.setPath(into.resolve(file + "-first-screen.png")));
  }
}
