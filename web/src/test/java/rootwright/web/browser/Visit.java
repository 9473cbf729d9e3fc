package rootwright.web.browser;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.deque.html.axecore.results.Rule;
import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.net.URI;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;

/** One person in front of the page, with everything the page asked for and complained of. */
final class Visit implements AutoCloseable {

  private final URI desk;
  private final BrowserContext context;
  private final Page page;
  private final List<String> requests = new CopyOnWriteArrayList<>();
  private final List<String> complaints = new CopyOnWriteArrayList<>();

  private Visit(URI desk, BrowserContext context) {
    this.desk = desk;
    this.context = context;
    this.page = context.newPage();
    page.setDefaultTimeout(60_000);
    page.onRequest(request -> requests.add(request.url()));
    page.onPageError(complaints::add);
    page.onConsoleMessage(
        message -> {
          if (message.type().equals("error") && !message.text().contains("status of 4")) {
            complaints.add(message.text());
          }
        });
  }

  /** A visit at a screen of this width. */
  static Visit of(URI desk, int width, ColorScheme scheme) {
    Browser.NewContextOptions options =
        new Browser.NewContextOptions()
            .setViewportSize(width, 900)
            .setColorScheme(scheme)
            .setPermissions(List.of("clipboard-read", "clipboard-write"));
    return new Visit(desk, Chromium.browser().newContext(options));
  }

  /** A visit at an ordinary screen, everything twice as large. */
  static Visit zoomed(URI desk) {
    Browser.NewContextOptions options =
        new Browser.NewContextOptions().setViewportSize(640, 450).setDeviceScaleFactor(2);
    return new Visit(desk, Chromium.browser().newContext(options));
  }

  /** A visit at an ordinary screen. */
  static Visit of(URI desk) {
    return of(desk, 1280, ColorScheme.LIGHT);
  }

  Page page() {
    return page;
  }

  /** Every address that was asked for. */
  List<String> requests() {
    return requests;
  }

  /** Script errors and refused content. */
  List<String> complaints() {
    return complaints;
  }

  /** Opens the page of a problem and waits for its working. */
  Visit open(String polynomial, String find) {
    page.navigate(desk + "?polynomial=" + encoded(polynomial) + "&find=" + encoded(find));
    return worked();
  }

  /** Opens the bare page and waits for its working. */
  Visit open() {
    page.navigate(desk.toString());
    return worked();
  }

  /** Waits until an answer stands on the page that belongs to the statement. */
  Visit worked() {
    page.waitForSelector("#working:not([aria-busy]) .answer .value");
    return this;
  }

  /**
   * Waits until an expression of the page is true. The page's own policy forbids to run text as
   * code, so the question is put from outside again and again.
   */
  Visit until(String expression) {
    for (int turn = 0; turn < 1200; turn++) {
      if (Boolean.TRUE.equals(page.evaluate("Boolean(" + expression + ")"))) {
        return this;
      }
      page.waitForTimeout(50);
    }
    throw new AssertionError(
        "never came true: " + expression + "; refusal: " + page.textContent("#refusal"));
  }

  /** Waits until this is the answer. */
  Visit untilAnswer(String answer) {
    return until(
        "document.querySelector('#working:not([aria-busy]) #answer')?.textContent.trim() === '"
            + answer
            + "'");
  }

  /** Replaces what stands in a blank, as a person would. */
  Visit type(String blank, String text) {
    Locator input = page.locator("[data-blank=" + blank + "] input");
    input.fill(text);
    return this;
  }

  /** The answer in words or signs, blanks taken out. */
  String answer() {
    return page.locator("#answer").textContent().replaceAll("[\\s\u2061\u2062]", "");
  }

  /** What an automatic check finds against WCAG 2.2 AA and good practice. */
  List<String> barriers() {
    return new AxeBuilder(page).analyze().getViolations().stream().map(Visit::told).toList();
  }

  private static String told(Rule rule) {
    return rule.getId()
        + ": "
        + rule.getHelp()
        + " "
        + rule.getNodes().stream().map(node -> node.getHtml()).limit(3).toList();
  }

  private static String encoded(String text) {
    return URLEncoder.encode(text, StandardCharsets.UTF_8);
  }

  @Override
  public void close() {
    context.close();
  }
}
