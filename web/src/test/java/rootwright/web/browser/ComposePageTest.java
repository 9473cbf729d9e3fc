package rootwright.web.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import java.io.IOException;
import java.nio.file.Files;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import rootwright.composing.blueprint.Blueprint;
import rootwright.desk.Desk;

/** The composer's table in a real browser. */
class ComposePageTest extends BrowserTest {

  @BeforeEach
  void openThePage() {
    goTo("compose.html");
    weighed();
  }

  private void wish(String name, String text) {
    page().locator("#order [name=" + name + "]").fill(text);
  }

  /** Waits until the order as it stands has been weighed. */
  private void weighed() {
    visit().until("document.querySelector('#weighed').textContent !== ''");
  }

  private void compose(int many) {
    wish("many", String.valueOf(many));
    page().locator("#compose").click();
    untilProblems(many);
    visit().until("document.querySelector('#stop').hidden");
  }

  private void untilProblems(int many) {
    visit().until("document.querySelectorAll('.composed').length >= " + many);
  }

  private String yaml() {
    return page().locator("#yaml").textContent();
  }

  @Test
  void anOrderGivesProblemsWithChoicesFromSlipsAndTheCountsOfEveryWish() {
    compose(2);
    assertThat(page().locator(".composed").count()).isEqualTo(2);
    assertThat(page().locator(".composed").first().locator(".options .key").count()).isEqualTo(1);
    assertThat(page().locator(".options .why").allTextContents()).doesNotContain("");
    assertThat(page().locator(".composed h2").first().textContent()).contains("level");
    assertThat(page().locator(".counts").textContent()).contains(" of ").contains("41");
    assertThat(visit().barriers()).isEmpty();
  }

  @Test
  void oneMoreLikeItComesBehindItAndAProblemIsKeptOrDiscarded() throws IOException {
    compose(1);
    page().getByText("one more like this").first().click();
    untilProblems(2);
    List<String> problems = page().locator(".told-problem").allTextContents();
    assertThat(problems).doesNotHaveDuplicates();
    page().getByText("keep on the shelf").first().click();
    visit().until("document.querySelector('#progress').textContent.startsWith('On the shelf')");
    assertThat(Files.readString(folder.resolve("shelf.txt"))).contains(" ; ");
    page().getByText("keep on the shelf").first().click();
    visit().until("document.querySelector('#progress').textContent.includes('already')");
    page().getByText("discard").first().click();
    assertThat(page().locator(".composed").first().locator(".options").isVisible()).isFalse();
    page().getByText("take it back").click();
    assertThat(page().locator(".composed").first().locator(".options").isVisible()).isTrue();
  }

  @Test
  void anOrderThatContradictsItselfIsToldWhy() {
    page().locator("[name=real]").selectOption("2");
    page().locator("#compose").click();
    visit().until("document.querySelector('#refusal').textContent.includes('contradicts itself')");
    assertThat(page().locator("#refusal").textContent()).contains("2 real roots");
  }

  @Test
  void aLongScanTellsHowFarItIsAndCanBeStopped() {
    wish("size", "700");
    page().locator("[name=kind]").selectOption("=");
    wish("detail", "987654321987");
    page().locator("#compose").click();
    visit()
        .until("document.querySelector('#progress').textContent.includes('candidates looked at')");
    page().locator("#stop").click();
    visit().until("document.querySelector('#refusal').textContent.startsWith('Stopped.')");
    assertThat(page().locator("#stop").isVisible()).isFalse();
  }

  @Test
  void aStoppedOrderIsKeptAcrossAReloadAndGoneOnWithOrGivenUp() throws IOException {
    wish("size", "700");
    wish("many", "1");
    page().locator("[name=kind]").selectOption("=");
    wish("detail", "987654321987");
    page().locator("#compose").click();
    visit()
        .until("document.querySelector('#progress').textContent.includes('candidates looked at')");
    page().locator("#stop").click();
    visit().until("!document.querySelector('#stopped').hidden");
    assertThat(visit().barriers()).isEmpty();
    wish("size", "5");
    page().reload();
    page().getByText("go on with it").click();
    visit()
        .until("document.querySelector('#progress').textContent.includes('candidates looked at')");
    assertThat(page().locator("#order [name=size]").first().inputValue()).isEqualTo("700");
    long looked = looked();
    page().locator("#stop").click();
    visit().until("document.querySelector('#stop').hidden");
    assertThat(looked).isPositive();
    page().getByText("give it up").click();
    visit().until("document.querySelector('#stopped').hidden");
    try (var files = Files.list(folder.resolve("stopped-orders"))) {
      assertThat(files).isEmpty();
    }
  }

  /** How many candidates the page says were looked at. */
  private long looked() {
    String told = page().locator("#progress").textContent().replaceAll("[,.]", "");
    return Long.parseLong(told.replaceAll("^\\D*(\\d+) of .*", "$1"));
  }

  @Test
  void anOrderPastedAsYamlStandsInTheSentences() {
    page().locator(".same-order summary").click();
    page()
        .locator("#pasted")
        .fill(
            "family: power-sum\ndegree: 4\nlead: 2..5\nanswer: 0..99\nwith: [newton]\nseed: 12\n");
    page().locator("#take-order").click();
    visit().until("document.querySelector('#taken-order').textContent.includes('sentences')");
    visit().until("document.querySelector('#yaml').textContent.includes('seed: 12')");
    assertThat(yaml())
        .contains("family: \"power-sum\"")
        .contains("degree: 4")
        .contains("lead: 2..5")
        .contains("answer: \"0..99\"")
        .contains("with: [\"newton\"]");
    page().locator("#pasted").fill("degre: 4");
    page().locator("#take-order").click();
    visit().until("document.querySelector('#taken-order').textContent.includes('degree')");
  }

  @Test
  void aClimbHasFiveProblemsEachWithAnIdeaMore() {
    page().locator("#climb button").click();
    untilProblems(5);
    assertThat(page().locator(".composed .note:has-text('It adds')").count())
        .isGreaterThanOrEqualTo(4);
    page().getByText("a list", new Page.GetByTextOptions().setExact(true)).click();
    assertThat(visit().barriers()).isEmpty();
  }

  @Test
  void whatIsToBeAvoidedDoesNotCome() {
    wish("size", "3");
    wish("degree", "2");
    wish("slips", "0");
    wish("many", "1");
    page().locator("#compose").click();
    untilProblems(1);
    visit().until("document.querySelector('#stop').hidden");
    Locator first = page().locator(".composed").first();
    String polynomial = first.getAttribute("data-polynomial");
    page().locator("#avoided").click();
    page().locator("#avoid").fill(polynomial + " ; " + first.getAttribute("data-find"));
    page().locator("#avoiding-done").click();
    assertThat(page().locator("#avoided").textContent()).isEqualTo("1 other problem");
    page().locator("#compose").click();
    visit().until("!document.querySelector('#stop').hidden");
    visit().until("document.querySelector('#stop').hidden");
    assertThat(
            page().locator(".composed").all().stream()
                .map(problem -> problem.getAttribute("data-polynomial")))
        .doesNotContain(polynomial);
  }

  @Test
  void anOrderBeyondAllBoundsIsRefusedInASentence() {
    wish("degree", "8");
    wish("size", "10000");
    visit().until("document.querySelector('#weighed.against') !== null");
    page().locator("#compose").click();
    visit().until("document.querySelector('#refusal').textContent.includes('more than can be')");
  }

  @Test
  void theOrderSurvivesAReloadAndCanBeCopiedAsACommand() {
    wish("seed", "77");
    page().reload();
    assertThat(page().locator("#order [name=seed]").inputValue()).isEqualTo("77");
    page().locator(".same-order summary").click();
    visit().until("document.querySelector('#command').textContent.includes('--seed 77')");
    page().locator("[data-copies=command]").click();
    visit().until("document.querySelector('.same-order').textContent.includes('copied')");
    assertThat(page().evaluate("navigator.clipboard.readText()").toString())
        .startsWith("./rootwright compose --ask 'Σ r^2 s' ")
        .endsWith("--seed 77");
  }

  /** The text that is copied says the same order: the composer's own reader reads it back. */
  @Test
  void theSameOrderStandsThereAsYaml() throws Exception {
    wish("degree", "4");
    page().locator("[name=asking]").selectOption("family");
    page().locator("[name=family]").selectOption("power-sum");
    visit().until("document.querySelector('#yaml').textContent.includes('power-sum')");
    Blueprint order = new Desk().table().readBlueprint(yaml());
    assertThat(order.polynomial().degree()).isEqualTo(4);
    assertThat(order.ask().words()).isEqualTo("family power-sum");
    assertThat(order.seed()).isEqualTo(41);
  }

  @Test
  void whatTheWishesLeaveIsToldWhileTheyAreChosen() {
    String before = page().locator("#weighed").textContent();
    assertThat(before).contains("candidates about");
    wish("size", "4");
    visit().until("document.querySelector('#weighed').textContent !== " + quoted(before));
    assertThat(page().locator("#weighed").textContent()).contains("Of 2,187 candidates");
    page().locator("[name=real]").selectOption("2");
    visit().until("document.querySelector('#weighed.against')");
    assertThat(page().locator("#weighed").textContent()).contains("contradicts itself");
  }

  private static String quoted(String text) {
    return "\"" + text.replace("\"", "\\\"") + "\"";
  }

  @Test
  void aRequiredRouteIsTakenAndAForbiddenOneIsNot() {
    page().locator("[data-picks=with]").click();
    page().locator("#picks-with [value=newton]").check();
    page().locator("#picks-with").getByText("done").click();
    assertThat(page().locator("[data-picks=with]").textContent()).contains("Newton");
    assertThat(visit().barriers()).isEmpty();
    wish("ask", "Σ r^3");
    visit().until("document.querySelector('#yaml').textContent.includes('with: [\"newton\"]')");
    compose(1);
    page().getByText("work it").first().click();
    visit().worked();
    assertThat(page().locator("[data-route=newton]").count()).isPositive();
  }

  @Test
  void aSurpriseBringsDifferentAsks() {
    page().locator("[name=asking]").selectOption("surprise");
    assertThat(page().locator("[name=ask]").isVisible()).isFalse();
    wish("degree", "2");
    wish("slips", "1");
    compose(2);
    List<Object> asks =
        page().locator(".composed").all().stream()
            .map(problem -> (Object) problem.getAttribute("data-find"))
            .distinct()
            .toList();
    assertThat(asks).hasSizeGreaterThan(1);
  }

  @Test
  void otherNumbersAndAHarderOneComeBehindIt() {
    compose(1);
    String ask = page().locator(".composed").first().getAttribute("data-find");
    page().getByText("other numbers").first().click();
    untilProblems(2);
    assertThat(page().locator(".composed").nth(1).getAttribute("data-find")).isEqualTo(ask);
    page().getByText("harder").first().click();
    visit().until("document.querySelector('#stop').hidden");
    visit()
        .until(
            "document.querySelectorAll('.composed').length === 3 ||"
                + " document.querySelector('#refusal').textContent.includes('There is not a harder')");
  }

  @Test
  void theSameSeedBringsTheSameProblems() {
    compose(2);
    List<String> first = page().locator(".told-problem").allTextContents();
    page().reload();
    weighed();
    compose(2);
    assertThat(page().locator(".told-problem").allTextContents()).isEqualTo(first);
  }

  @Test
  void theKeyboardAloneComposes() {
    page().locator("#order [name=many]").focus();
    page().keyboard().press("Control+A");
    page().keyboard().type("1");
    for (int i = 0; i < 40 && !focused("#compose"); i++) {
      page().keyboard().press("Tab");
    }
    page().keyboard().press("Enter");
    untilProblems(1);
    for (int i = 0; i < 12 && !focused(".hints summary"); i++) {
      page().keyboard().press("Tab");
    }
    page().keyboard().press("Enter");
    assertThat(page().locator(".hints[open]").count()).isEqualTo(1);
  }

  @Test
  void theNarrowPageFitsAndHasNoBarrier() {
    fitsAPhoneInTheDark("compose.html", "#weighed:not(:empty)");
  }
}
