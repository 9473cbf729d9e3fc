package rootwright.web.browser;

import com.microsoft.playwright.options.ColorScheme;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rootwright.web.DeskServer;
import rootwright.web.DeskSettings;

/**
 * Measures the page; run by the command {@code web/time-page}, not with the tests. Prints a table:
 * start of the server, first paint, answer on the page, bytes on the wire, and the round trip of
 * working a problem.
 */
class TimePage {

  private static final int VISITS = 7;
  private static final int ROUND_TRIPS = 60;
  private static final int TYPED = 15;

  private static final String[][] PROBLEMS = {
    {"cubic, Σ r²", "3x^3 - 7x^2 + 2x - 5", "Σ r^2"},
    {"cubic, Σ 1/(r−3)", "3x^3 - 7x^2 + 2x - 5", "Σ 1/(r-3)"},
    {"cubic, cyclic sum", "x^3 - 5x + 1", "r^2 s + s^2 t + t^2 r"},
    {"quartic, Σ r³", "x^4 - 3x^3 + 2x^2 + 5x - 7", "Σ r^3"},
    {"quartic, Π (r²+1)", "x^4 - 3x^3 + 2x^2 + 5x - 7", "Π (r^2+1)"}
  };

  @Test
  void ofThePage(@TempDir Path folder) throws IOException, InterruptedException {
    long before = System.nanoTime();
    try (DeskServer desk = DeskServer.start(new DeskSettings(0, folder))) {
      row("server started", millis(before), "ms");
      long warm = System.nanoTime();
      desk.warmUp().awaitWarmUp();
      row("warmed up in the background after", millis(warm), "ms");
      visits(desk);
      typing(desk);
      roundTrips(desk.address());
    }
  }

  private static void visits(DeskServer desk) {
    List<Double> paints = new ArrayList<>();
    List<Double> answers = new ArrayList<>();
    double bytes = 0;
    for (int i = 0; i < VISITS; i++) {
      try (Visit visit = Visit.of(desk.address(), 1280, ColorScheme.LIGHT)) {
        visit.open(PROBLEMS[1][1], PROBLEMS[1][2]);
        answers.add(number(visit, "performance.now()"));
        paints.add(
            number(visit, "performance.getEntriesByName('first-contentful-paint')[0].startTime"));
        bytes =
            number(
                visit,
                "['navigation','resource'].flatMap(t => performance.getEntriesByType(t))"
                    + ".reduce((sum, e) => sum + e.transferSize, 0)");
      }
    }
    row("first contentful paint, median of " + VISITS, median(paints), "ms");
    row("answer on the page, median of " + VISITS, median(answers), "ms");
    row("bytes on the wire in all", bytes / 1000, "kB");
  }

  /** From a key pressed in a blank to its formula on the page. */
  private static void typing(DeskServer desk) {
    List<Double> waits = new ArrayList<>();
    try (Visit visit = Visit.of(desk.address(), 1280, ColorScheme.LIGHT)) {
      visit.open(PROBLEMS[1][1], PROBLEMS[1][2]);
      visit
          .page()
          .evaluate(
              "() => { const set = document.querySelector('[data-blank=polynomial] .set');"
                  + " const input = document.querySelector('[data-blank=polynomial] input');"
                  + " window.waits = []; let since; input.addEventListener('input', () => since ="
                  + " performance.now(), true); new MutationObserver(() =>"
                  + " window.waits.push(performance.now() - since)).observe(set, {childList: true});"
                  + " }");
      for (int i = 0; i < TYPED; i++) {
        visit.type("polynomial", "3x^3 - 7x^2 + 2x - " + (i + 6));
        visit.until("window.waits.length > " + i);
        waits.add(number(visit, "window.waits.at(-1)"));
        visit.worked();
      }
    }
    row("typed to set, median of " + TYPED, median(waits), "ms");
    row("typed to set, slowest", Collections.max(waits), "ms");
  }

  private static void roundTrips(URI desk) throws IOException, InterruptedException {
    HttpClient client = HttpClient.newHttpClient();
    for (String[] problem : PROBLEMS) {
      String body = "{\"polynomial\":\"%s\",\"find\":\"%s\"}".formatted(problem[1], problem[2]);
      HttpRequest request =
          HttpRequest.newBuilder(desk.resolve("/api/work"))
              .POST(HttpRequest.BodyPublishers.ofString(body))
              .build();
      List<Double> times = new ArrayList<>();
      for (int i = 0; i < ROUND_TRIPS; i++) {
        long before = System.nanoTime();
        HttpResponse<String> reply = client.send(request, HttpResponse.BodyHandlers.ofString());
        times.add(millis(before));
        if (reply.statusCode() != 200) {
          throw new IllegalStateException(problem[0] + ": " + reply.body());
        }
      }
      row("work round trip, " + problem[0] + ", first", times.get(0), "ms");
      row(
          "work round trip, " + problem[0] + ", median of the rest",
          median(times.subList(1, times.size())),
          "ms");
    }
  }

  private static double number(Visit visit, String expression) {
    return ((Number) visit.page().evaluate(expression)).doubleValue();
  }

  private static double median(List<Double> values) {
    List<Double> sorted = new ArrayList<>(values);
    Collections.sort(sorted);
    return sorted.get(sorted.size() / 2);
  }

  private static double millis(long since) {
    return (System.nanoTime() - since) / 1e6;
  }

  private static void row(String what, double value, String unit) {
    System.out.printf("| %s | %.1f %s |%n", what, value, unit);
  }
}
