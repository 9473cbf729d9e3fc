package rootwright.web.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rootwright.web.DeskServer;
import rootwright.web.DeskSettings;

/** The composer's table in a real browser. */
class ComposePageTest {

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
    page().navigate(desk.address() + "compose.html");
  }

  @AfterEach
  void nothingLeftTheMachineAndNothingComplained() {
    try (Visit ended = visit) {
      String own = desk.address().toString();
      assertThat(ended.requests()).allMatch(url -> url.startsWith(own));
      assertThat(ended.complaints()).isEmpty();
    }
  }

  private Page page() {
    return visit.page();
  }

  private void wish(String name, String text) {
    page().locator("[name=" + name + "]").fill(text);
  }

  private void compose(int many) {
    wish("many", String.valueOf(many));
    page().locator("#compose").click();
    visit.until("document.querySelectorAll('.composed').length >= " + many);
  }

  @Test
  void anOrderGivesProblemsWithChoicesFromSlipsAndTheCountsOfEveryWish() {
    compose(2);
    assertThat(page().locator(".composed").count()).isEqualTo(2);
    assertThat(page().locator(".composed").first().locator(".options .key").count()).isEqualTo(1);
    assertThat(page().locator(".options .why").allTextContents()).doesNotContain("");
    assertThat(page().locator(".composed h2").first().textContent()).contains("level");
    assertThat(page().locator(".counts").textContent()).contains(" of ").contains("41");
    assertThat(visit.barriers()).isEmpty();
  }

  @Test
  void oneMoreLikeItComesBehindItAndAProblemIsKeptOrDiscarded() throws IOException {
    compose(1);
    page().getByText("one more like this").first().click();
    visit.until("document.querySelectorAll('.composed').length === 2");
    page().getByText("keep on the shelf").first().click();
    visit.until("document.querySelector('#progress').textContent.startsWith('On the shelf')");
    assertThat(Files.readString(folder.resolve("shelf.txt"))).contains(" ; ");
    page().getByText("keep on the shelf").first().click();
    visit.until("document.querySelector('#progress').textContent.includes('already')");
    page().getByText("discard").first().click();
    assertThat(page().locator(".composed").first().locator(".options").isVisible()).isFalse();
    page().getByText("take it back").click();
    assertThat(page().locator(".composed").first().locator(".options").isVisible()).isTrue();
  }

  @Test
  void anOrderThatContradictsItselfIsToldWhy() {
    page().locator("[name=real]").selectOption("2");
    page().locator("#compose").click();
    visit.until("document.querySelector('#refusal').textContent.includes('contradicts itself')");
    assertThat(page().locator("#refusal").textContent()).contains("2 real roots");
  }

  @Test
  void aLongScanTellsHowFarItIsAndCanBeStopped() {
    wish("size", "700");
    page().locator("[name=kind]").selectOption("=");
    wish("detail", "987654321987");
    page().locator("#compose").click();
    visit.until("document.querySelector('#progress').textContent.includes('candidates looked at')");
    page().locator("#stop").click();
    visit.until("document.querySelector('#refusal').textContent === 'Stopped.'");
    assertThat(page().locator("#stop").isVisible()).isFalse();
  }

  @Test
  void anOrderBeyondAllBoundsIsRefusedInASentence() {
    wish("degree", "4");
    wish("size", "10000");
    page().locator("#compose").click();
    visit.until("document.querySelector('#refusal').textContent.includes('too many candidates')");
  }

  @Test
  void theOrderSurvivesAReloadAndCanBeCopiedAsACommand() {
    wish("seed", "77");
    page().reload();
    assertThat(page().locator("[name=seed]").inputValue()).isEqualTo("77");
    page().locator("#copy-order").click();
    visit.until("document.querySelector('#progress').textContent.includes('--seed 77')");
  }

  @Test
  void theNarrowPageFitsAndHasNoBarrier() {
    try (Visit narrow = Visit.of(desk.address(), 360, ColorScheme.DARK)) {
      narrow.page().navigate(desk.address() + "compose.html");
      Object wider = narrow.page().evaluate("document.documentElement.scrollWidth - innerWidth");
      assertThat((Integer) wider).isLessThanOrEqualTo(0);
      assertThat(narrow.barriers()).isEmpty();
    }
  }
}
