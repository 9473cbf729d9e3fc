package rootwright.web.browser;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Playwright;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

/** The browser of this machine, started once for all tests that look at a page. */
public final class Chromium {

  private static final List<String> QUIET =
      List.of(
          "--no-sandbox",
          "--disable-gpu",
          "--disable-quic",
          "--no-first-run",
          "--disable-background-networking",
          "--disable-component-update",
          "--disable-sync",
          "--font-render-hinting=none");

  private static final List<Path> USUAL_PLACES =
      List.of(Path.of("/usr/bin/chromium"), Path.of("/usr/bin/chromium-browser"));

  private Chromium() {}

  /** The running browser. */
  public static Browser browser() {
    return Holder.BROWSER;
  }

  private static Path program() {
    String named = System.getProperty("rootwright.chromium", "");
    if (!named.isEmpty()) {
      return Path.of(named);
    }
    return USUAL_PLACES.stream()
        .filter(Files::isExecutable)
        .findFirst()
        .orElseThrow(
            () ->
                new IllegalStateException(
                    "no Chromium in "
                        + USUAL_PLACES
                        + ": apt-get install chromium, or -Drootwright.chromium=PROGRAM"));
  }

  private static final class Holder {
    private static final Browser BROWSER = start();

    private static Browser start() {
      Playwright driver =
          Playwright.create(
              new Playwright.CreateOptions()
                  .setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
      Runtime.getRuntime().addShutdownHook(new Thread(driver::close));
      return driver
          .chromium()
          .launch(new BrowserType.LaunchOptions().setExecutablePath(program()).setArgs(QUIET));
    }
  }
}
