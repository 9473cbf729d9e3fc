package rootwright.web.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rootwright.desk.lesson.LessonDesk;
import rootwright.desk.lesson.LessonOrder;
import rootwright.lesson.caption.Cue;
import rootwright.lesson.caption.WebVtt;
import rootwright.lesson.caption.Wording;
import rootwright.lesson.narration.Chapters;
import rootwright.lesson.narration.Script;
import rootwright.lesson.show.LessonFile;
import rootwright.web.DeskServer;
import rootwright.web.DeskSettings;

/** The board page, the show, and captions as the browser's own reader of WebVTT takes them. */
class LessonPageTest {

  @TempDir static Path folder;
  private static DeskServer desk;

  @BeforeAll
  static void start() {
    desk = DeskServer.start(new DeskSettings(0, folder));
  }

  @AfterAll
  static void stop() {
    desk.close();
  }

  @Test
  void aPlanIsMadeEditedAndABadLineIsNamed() {
    try (Visit visit = Visit.of(desk.address())) {
      Page page = visit.page();
      page.navigate(desk.address() + "board.html");
      page.waitForSelector("#order option[value=newton-identities]", attached());
      page.click("#make");
      page.waitForSelector("#slides figure");
      int figures = page.locator("#slides figure").count();
      String plan = page.inputValue("#plan");

      assertThat(figures).isGreaterThan(8);
      assertThat(page.textContent("#times")).contains("The fact");
      assertThat(visit.barriers()).isEmpty();

      page.fill("#plan", plan.replace("p_2 - e_1*p_1 + 2*e_2 = 0", "p_2 - e_1*p_1 + 3*e_2 = 0"));
      page.waitForSelector("#complaints li");

      assertThat(page.textContent("#complaints")).contains("no longer follows").contains("Line ");
      page.reload();
      page.waitForSelector("#complaints li");
      assertThat(page.inputValue("#plan")).contains("3*e_2 = 0");
      assertThat(visit.complaints()).isEmpty();
      assertThat(visit.requests()).allMatch(url -> url.startsWith(desk.address().toString()));
    }
  }

  @Test
  void filesAreTakenAwayAndAFilmIsBegunAndStopped() throws Exception {
    try (Visit visit = Visit.of(desk.address())) {
      Page page = visit.page();
      page.navigate(desk.address() + "board.html");
      page.waitForSelector("#order option[value=newton-identities]", attached());
      page.click("#make");
      page.waitForSelector("#slides figure");
      page.locator("#formulas").selectOption("written");
      var captions =
          page.waitForDownload(
              () -> page.getByText("vtt", new Page.GetByTextOptions().setExact(true)).click());
      assertThat(Files.readString(captions.path())).startsWith("WEBVTT");
      page.click("#film");
      visit.until("document.querySelector('#taken').textContent.includes(' pictures')");
      page.locator("#taken button").click();
      visit.until("document.querySelector('#taken').textContent === 'Stopped.'");
      assertThat(visit.barriers()).isEmpty();
      assertThat(visit.complaints()).isEmpty();
    }
  }

  @Test
  void onAPhoneNothingRunsOutOfThePage() {
    try (Visit visit = Visit.of(desk.address(), 360, ColorScheme.DARK)) {
      Page page = visit.page();
      page.navigate(desk.address() + "board.html");
      page.waitForSelector("#order option[value=newton-identities]", attached());
      page.click("#make");
      page.waitForSelector("#slides figure");

      assertThat(page.evaluate("document.documentElement.scrollWidth")).isEqualTo(360);
      assertThat(visit.barriers()).isEmpty();
    }
  }

  @Test
  void theBrowsersOwnReaderFindsEveryCaptionAndChapter() throws Exception {
    Script script = script();

    assertCuesRead(script.cues());
    assertCuesRead(Chapters.of(script));
  }

  /** The track element has the reader of the WebVTT standard that the browser ships. */
  private static void assertCuesRead(List<Cue> cues) {
    try (Visit visit = Visit.of(desk.address())) {
      Page page = visit.page();
      page.setContent("<video><track default></video>");
      Object read =
          page.evaluate(
              "text => new Promise((done, fail) => {"
                  + "const track = document.querySelector('track');"
                  + "track.onload = () => done([...track.track.cues].map("
                  + "cue => [cue.startTime, cue.endTime, cue.text]));"
                  + "track.onerror = () => fail(new Error('not read'));"
                  + "track.track.mode = 'hidden';"
                  + "track.src = URL.createObjectURL(new Blob([text], {type: 'text/vtt'}));})",
              WebVtt.write(cues));
      List<?> found = (List<?>) read;

      assertThat(found).hasSameSizeAs(cues);
      for (int k = 0; k < cues.size(); k++) {
        List<?> cue = (List<?>) found.get(k);
        assertThat(((Number) cue.get(0)).doubleValue()).isEqualTo(cues.get(k).from() / 1000.0);
        assertThat(((Number) cue.get(1)).doubleValue()).isEqualTo(cues.get(k).to() / 1000.0);
        assertThat(cue.get(2)).isEqualTo(String.join("\n", cues.get(k).lines()));
      }
    }
  }

  @Test
  void theShowGoesOnWithKeysAndShowsTheCoachWhatToSay() throws Exception {
    Script script = script();
    LessonFile show = new LessonDesk().files(script, "html").findFirst().orElseThrow();
    Path file = Files.write(folder.resolve("show.html"), show.bytes());
    try (Visit visit = Visit.of(desk.address())) {
      Page page = visit.page();
      page.navigate(file.toUri().toString());

      assertThat(page.locator(".slide.now").count()).isEqualTo(1);
      assertThat(page.isVisible("#coach")).isFalse();
      page.keyboard().press("c");
      assertThat(page.isVisible("#coach")).isTrue();
      assertThat(page.textContent("#said")).isEqualTo("Newton's identities.");
      page.keyboard().press("PageDown");
      assertThat(page.textContent("#said")).startsWith("Find sums of squares");
      page.keyboard().press("PageUp");
      assertThat(page.textContent("#said")).isEqualTo("Newton's identities.");
      page.keyboard().press("End");
      assertThat(page.textContent("#next")).isEqualTo("The end.");
      assertThat(page.locator(".slide.now g[data-from]:not(.seen)").count()).isZero();
      assertThat(visit.complaints()).isEmpty();
      assertThat(visit.requests()).allMatch(url -> url.startsWith("file:"));
    }
  }

  private static Script script() throws Exception {
    LessonDesk lessons = new LessonDesk();
    return lessons.lesson(lessons.plan(LessonOrder.usual("newton-identities")), Wording.SPOKEN);
  }

  private static Page.WaitForSelectorOptions attached() {
    return new Page.WaitForSelectorOptions()
        .setState(com.microsoft.playwright.options.WaitForSelectorState.ATTACHED);
  }
}
