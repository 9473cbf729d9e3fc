package rootwright.web.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rootwright.web.DeskServer;
import rootwright.web.DeskSettings;

/** An ask that takes seconds: 120 ways to name the roots, each with a value of its own. */
class HardAskTest {

  private static final String SEXTIC = "x^6 - 12x - 7";
  private static final String HARD = "r s^2 t^3";

  @TempDir static Path folder;
  private static DeskServer desk;

  @BeforeAll
  static void startDesk() {
    desk = DeskServer.start(new DeskSettings(0, folder));
  }

  @AfterAll
  static void stopDesk() {
    desk.close();
  }

  private static Visit waiting() {
    Visit visit = Visit.of(desk.address());
    visit.open("x^2 - 5x + 3", "Σ r^2").type("polynomial", SEXTIC).type("find", HARD);
    visit.page().waitForSelector(".waiting button");
    return visit;
  }

  @Test
  void canBeStoppedByThePerson() {
    try (Visit visit = waiting()) {
      Page page = visit.page();
      page.locator(".waiting button").click();
      visit.until("document.querySelector('#refusal').textContent === 'Stopped.'");
      assertThat(page.locator(".waiting").count()).isZero();
      assertThat(page.locator("#answer").count()).isZero();
    }
  }

  @Test
  void isStoppedWhenItsPageIsClosed() throws IOException, InterruptedException {
    String job;
    try (Visit visit = waiting()) {
      Optional<String> followed =
          visit.requests().stream()
              .filter(url -> url.contains("/api/jobs/"))
              .reduce((old, latest) -> latest);
      job = followed.orElseThrow();
    }
    HttpRequest end = HttpRequest.newBuilder(URI.create(job + "/end")).build();
    HttpClient client = HttpClient.newHttpClient();
    HttpResponse<String> reply = client.send(end, HttpResponse.BodyHandlers.ofString());
    for (int turn = 0; turn < 200 && reply.statusCode() == 204; turn++) {
      Thread.sleep(100);
      reply = client.send(end, HttpResponse.BodyHandlers.ofString());
    }
    assertThat(reply.body()).startsWith("{\"error\":{\"code\":\"stopped\"");
  }
}
