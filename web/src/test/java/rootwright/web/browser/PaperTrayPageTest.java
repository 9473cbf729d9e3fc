package rootwright.web.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Download;
import com.microsoft.playwright.Page;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The paper tray in a real browser. */
class PaperTrayPageTest extends BrowserTest {

  @BeforeAll
  static void fillTheShelf() throws IOException {
    Files.writeString(folder.resolve("shelf.txt"), "x^3 - 4x + 1 ; S_4\n");
  }

  private void open() {
    goTo("tray.html");
    visit().until("document.querySelector('#papers li')");
  }

  private void draft(String title, String problems, int versions, String arrangement) {
    if (page().locator("#new-paper").isHidden()) {
      page().locator("#fresh").click();
    }
    page().locator("[name=title]").fill(title);
    page().locator("[name=date]").fill("2026-11-26");
    page().locator("[name=versions]").selectOption(String.valueOf(versions));
    page().locator("[name=arrangement]").selectOption(arrangement);
    page().locator("[name=problems]").fill(problems);
    page().locator("#make").click();
    untilState("draft");
  }

  private void untilState(String state) {
    visit()
        .until(
            "document.querySelector('.sheet-head .way .now')?.textContent === '"
                + state
                + "' && !document.querySelector('#paper').hasAttribute('aria-busy')");
  }

  private void press(String words) {
    page().locator("#paper button", new Page.LocatorOptions().setHasText(words)).first().click();
  }

  @Test
  void aPaperGoesFromTypedLinesToADownloadedKey() throws Exception {
    open();
    draft(
        "Thursday",
        "x^3 - 6x^2 + 5x - 1 ; Σ 1/r^2\n2x^3 - 6x^2 + x + 5 ; r^2 + s^2 + t^2 ; choice",
        1,
        "reordered");
    assertThat(page().locator("[data-item='1'] .key-line").textContent()).contains("13");
    assertThat(page().locator("[data-item='2'] .options li").count()).isEqualTo(4);
    press("check it");
    untilState("checked");

    page().locator("[data-item='1'] .edit").click();
    page().locator("[data-item='1'] .change input").first().fill("x^3 - 6x^2 + 5x - 2");
    press("write it");
    untilState("draft");
    assertThat(page().locator("[data-item='1'] .key-line.stale").textContent())
        .contains("stale key")
        .contains("13");
    assertThat(page().locator("#papers .stale").count()).isEqualTo(1);
    assertThat(page().locator("text=freeze it").count()).isZero();

    page().locator("[data-item='1'] .edit").click();
    page().locator("[data-item='1'] .change select").selectOption("choice");
    press("write it");
    untilState("draft");
    press("check it");
    untilState("checked");
    assertThat(page().locator("[data-item='1'] .options li").count()).isGreaterThan(2);
    press("freeze it");
    untilState("frozen");
    String code = page().locator(".sheet-head .code").textContent();
    assertThat(code).matches("[0-9A-Z]{5}-[0-9A-Z]{5}");
    assertThat(page().locator(".edit").count()).isZero();
    page().locator("[name=format][value=pdf]").uncheck();
    page().locator("[name=format][value=text]").check();
    page().locator("#print").click();
    untilState("printed");
    visit().until("document.querySelectorAll('.files a').length === 3");
    Download key =
        page().waitForDownload(() -> page().locator(".files a:has-text('-key.txt')").click());
    assertThat(key.suggestedFilename()).isEqualTo(code + "-key.txt");
    assertThat(Files.readString(key.path(), StandardCharsets.UTF_8)).contains("1/4").contains(code);

    page().locator(".cause input").fill("The constant was misprinted.");
    press("begin a new edition");
    untilState("draft");
    assertThat(page().locator(".sheet-head").textContent())
        .contains("edition 2")
        .contains("It corrects " + code);
    assertThat(page().locator("#papers li").count()).isGreaterThanOrEqualTo(2);
  }

  @Test
  void versionsStandSideBySideAndTheShelfGivesProblems() {
    open();
    page().locator("#fresh").click();
    if (page().locator("#new-paper").isHidden()) {
      page().locator("#fresh").click();
    }
    page().locator("#kept summary").click();
    page().locator("#shelf button").first().click();
    assertThat(page().locator("[name=problems]").inputValue()).isEqualTo("x^3 - 4x + 1 ; S_4");
    draft("Siblings", "x^3 - 6x^2 + 5x - 1 ; Σ 1/r^2", 3, "renumbered");
    assertThat(page().locator(".versions-compared thead th").count()).isEqualTo(4);
    assertThat(page().locator(".versions-compared .key").count()).isEqualTo(3);
    assertThat(visit().barriers()).isEmpty();
  }

  @Test
  void whatCannotBeDraftedIsSaidAndNothingIsLost() {
    open();
    if (page().locator("#new-paper").isHidden()) {
      page().locator("#fresh").click();
    }
    page().locator("[name=problems]").fill("x^3 - 6x^2 + 5x - 1");
    page().locator("#make").click();
    visit().until("document.querySelector('#refusal').textContent !== ''");
    assertThat(page().locator("#refusal").textContent()).contains("line 1 has no ask");
    assertThat(page().locator("[name=problems]").inputValue()).isEqualTo("x^3 - 6x^2 + 5x - 1");
  }

  @Test
  void theTrayFitsAPhoneAndHasNoBarriersInTheDark() {
    fitsAPhoneInTheDark("tray.html", "#papers li");
  }
}
