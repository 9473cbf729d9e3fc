package rootwright.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rootwright.desk.keep.KeptProfile;
import rootwright.web.frame.DeskPage;

/** The server as anybody on the network would meet it. */
class DeskServerTest {

  @TempDir Path folder;
  private DeskServer desk;

  @BeforeEach
  void start() {
    desk = DeskServer.start(new DeskSettings(0, folder));
  }

  @AfterEach
  void stop() {
    desk.close();
  }

  private String own() {
    return "127.0.0.1:" + desk.address().getPort();
  }

  private RawRequest put(String path, String body) {
    return new RawRequest("PUT", path, Map.of("Host", own()), body);
  }

  private RawRequest get(String path) {
    return new RawRequest("GET", path, Map.of("Host", own()), "");
  }

  @Test
  void listensOnLoopbackOnly() {
    assertThat(desk.address().getHost()).isEqualTo("127.0.0.1");
  }

  @Test
  void servesThePageWithoutAnythingInlineOrForeign() throws IOException {
    String reply = RawRequest.visit(own()).sentTo(desk.address());
    assertThat(reply).startsWith("HTTP/1.1 200").contains("<main");
    assertThat(reply)
        .contains("Content-Security-Policy: default-src 'self';")
        .doesNotContain("unsafe-inline")
        .doesNotContain("unsafe-eval");
  }

  @Test
  void answersEveryLoopbackName() throws IOException {
    for (String name : new String[] {"127.0.0.1", "localhost", "LOCALHOST", "[::1]"}) {
      String host = name + ":" + desk.address().getPort();
      assertThat(RawRequest.visit(host).statusFrom(desk.address())).as(host).isEqualTo(200);
    }
  }

  @Test
  void refusesAForeignHost() throws IOException {
    for (String host : new String[] {"evil.example", "127.0.0.1.evil.example:80", "10.0.0.7"}) {
      assertThat(RawRequest.visit(host).statusFrom(desk.address())).as(host).isEqualTo(403);
    }
  }

  @Test
  void refusesAForeignOrigin() throws IOException {
    for (String origin :
        new String[] {"http://evil.example", "null", "https://" + own(), "http://127.0.0.1:1"}) {
      RawRequest request = put("/api/profile", "{\"without\":[]}").with("Origin", origin);
      assertThat(request.statusFrom(desk.address())).as(origin).isEqualTo(403);
    }
    RawRequest ours = put("/api/profile", "{\"without\":[]}").with("Origin", "http://" + own());
    assertThat(ours.statusFrom(desk.address())).isEqualTo(200);
  }

  @Test
  void refusesABodyOverTheLimit() throws IOException {
    String reply = put("/api/profile", " ".repeat(300 * 1024)).sentTo(desk.address());
    assertThat(reply).startsWith("HTTP/1.1 413").contains("too long for the desk");
  }

  @Test
  void answersNonsenseWithAPlainSentence() throws IOException {
    for (String body : new String[] {"", "[]", "{", "\"text\"", "\u0000"}) {
      String reply = put("/api/profile", body).sentTo(desk.address());
      assertThat(reply).as(body).startsWith("HTTP/1.1 400").contains("\"text\":\"The request");
      assertThat(reply).doesNotContain("Exception").doesNotContain("at rootwright");
    }
  }

  @Test
  void servesNothingOutsideThePage() throws IOException {
    for (String path :
        new String[] {
          "/../DeskServer.class", "/%2e%2e/DeskServer.class", "/etc/passwd", "/api/nothing"
        }) {
      String reply = get(path).sentTo(desk.address());
      assertThat(reply).as(path).matches("(?s)HTTP/1.1 40[04] .*");
    }
  }

  @Test
  void everyScriptOfThePageIsAnnouncedSoThatNoneWaitsForAnother() throws Exception {
    Path scripts = Path.of(DeskServer.class.getResource("/rootwright/web/page/script").toURI());
    StringBuilder page = new StringBuilder();
    for (DeskPage one : DeskPage.ALL) {
      page.append(get(one.path()).sentTo(desk.address()));
    }
    try (var files = Files.list(scripts)) {
      assertThat(files.map(file -> "script/" + file.getFileName()))
          .isNotEmpty()
          .allSatisfy(script -> assertThat(page.toString()).contains('"' + script + '"'));
    }
  }

  @Test
  void anUnknownJobIsOver() throws IOException {
    assertThat(get("/api/jobs/none").with("Accept", "text/event-stream").sentTo(desk.address()))
        .contains("This work is over.");
  }

  @Test
  void theClassProfileSurvivesARestart() throws IOException {
    put("/api/profile", "{\"without\":[\"newton\",\"log-derivative\"]}").sentTo(desk.address());
    desk.close();
    start();
    assertThat(get("/api/profile").sentTo(desk.address()))
        .contains("\"newton\"")
        .contains("\"log-derivative\"");
  }

  /**
   * The command line reads and writes the class of the page by the same name in the same folder.
   */
  @Test
  void theClassOfThePageIsThatOfTheCommandLine() throws IOException {
    put("/api/profile", "{\"without\":[\"newton\"]}").sentTo(desk.address());
    KeptProfile ofTheCommandLine = new KeptProfile(folder, KeptProfile.USUAL);
    assertThat(ofTheCommandLine.without()).containsExactly("newton");
    ofTheCommandLine.choose(Set.of("evaluate"));
    assertThat(get("/api/profile").sentTo(desk.address())).contains("\"without\":[\"evaluate\"]");
  }

  @Test
  void aClassIsKeptUnderANameThatTheCommandLineKnows() throws IOException {
    put("/api/profile/year-9", "{\"without\":[\"newton\"]}").sentTo(desk.address());
    assertThat(new KeptProfile(folder, "year-9").without()).containsExactly("newton");
    assertThat(get("/api/profile").sentTo(desk.address()))
        .contains("\"classes\":{\"year-9\":[\"newton\"]}");
    assertThat(put("/api/profile/..%2Fyear", "{\"without\":[]}").statusFrom(desk.address()))
        .isBetween(400, 422);
  }

  @Test
  void aSpoiltFileIsPutAsideNotLost() throws IOException {
    desk.close();
    Files.writeString(folder.resolve("recent-problems.json"), "[{");
    start();
    assertThat(get("/api/recent").sentTo(desk.address())).endsWith("[]");
    assertThat(folder.resolve("recent-problems.json.unreadable")).hasContent("[{");
  }

  @Test
  void aTakenPortIsReplacedByAFreeOne() {
    URI first = desk.address();
    try (DeskServer second = DeskServer.start(new DeskSettings(first.getPort(), folder))) {
      assertThat(second.address().getPort()).isNotEqualTo(first.getPort());
    }
  }
}
