package rootwright.web.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.Contrast;
import com.microsoft.playwright.options.ForcedColors;
import com.microsoft.playwright.options.Media;
import com.microsoft.playwright.options.ReducedMotion;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * The problem page in a real browser, used as a coach uses it.
 *
 * <p>Polynomials and their values are our own; each value was worked by hand beside its test.
 */
class ProblemPageTest extends BrowserTest {

  /** e₁ = 3, e₂ = 1/2, so Σr² = 9 − 1 = 8. */
  private static final String CUBIC = "2x^3 - 6x^2 + x + 5";

  @Test
  void aFreshPageShowsAWorkedExample() {
    visit().open();
    assertThat(page().locator(".lines > li").count()).isPositive();
    assertThat(page().locator(".opinion").textContent()).contains("Second opinion agrees");
  }

  @Test
  void typingAProblemShowsItsAnswer() {
    visit().open().type("polynomial", CUBIC).type("find", "r^2+s^2+t^2");
    visit().untilAnswer("8");
    assertThat(page().locator("[data-blank=polynomial] .set math").count()).isEqualTo(1);
    assertThat(page().locator(".roots").textContent()).isEqualTo("r, s, t");
  }

  @Test
  void everyNotationOfTheReaderMayBePasted() {
    visit().open(CUBIC, "Σ r^2");
    for (String same :
        List.of("2x³ − 6x² + x + 5", "2x^{3}-6x^{2}+x+5", "2 -6 1 5", "2x^3 + x = 6x^2 - 5")) {
      visit().type("polynomial", "x - 1");
      visit().untilAnswer("1");
      visit().type("polynomial", same);
      visit().untilAnswer("8");
    }
  }

  @Test
  void aHalfTypedFormulaIsUnderlinedWhereItBreaks() {
    visit().open(CUBIC, "Σ r^2").type("polynomial", "2x^3 - 6x^^2");
    page().waitForSelector("[data-blank=polynomial].unread mark");
    assertThat(page().locator("[data-blank=polynomial] .broken").textContent())
        .isEqualTo("2x^3 - 6x^^2");
    assertThat(page().locator("[data-blank=polynomial] mark").textContent()).startsWith("^2");
    assertThat(page().locator("[data-blank=polynomial] input").getAttribute("aria-invalid"))
        .isEqualTo("true");
    assertThat(page().locator("#refusal").textContent()).isNotBlank();
    visit()
        .until(
            "!document.querySelector('#answer') || document.querySelector('#working').getAttribute('aria-busy')");
  }

  @Test
  void anAskThatCannotBeWorkedIsSaidInASentence() {
    visit().open(CUBIC, "Σ r^2").type("find", "r + q");
    visit().until("document.querySelector('#refusal').textContent.length > 10");
    assertThat(page().locator("#refusal").textContent()).contains("q");
  }

  /** P(−1) = −4, P(0) = 5, P(2) = −1 and P grows beyond: three real roots. */
  @Test
  void choosingAnotherKindOfAskChangesTheSentence() {
    visit().open(CUBIC, "Σ r^2");
    page().getByText("Ask something else").click();
    page().locator("[data-kind=real-roots]").click();
    visit().worked();
    assertThat(page().locator("#sentence").textContent())
        .contains("How many roots of")
        .contains("are real");
    visit().until("new URLSearchParams(location.search).get('find') === 'real roots'");
    assertThat(page().locator("[data-blank=polynomial] input").inputValue()).isEqualTo(CUBIC);
    visit().untilAnswer("3");
  }

  @Test
  void aSecondRouteOpensAndStandsBesideTheFirst() {
    visit().open(CUBIC, "Σ r^2");
    page().locator(".others .other button[aria-expanded]").first().click();
    assertThat(page().locator(".others .opened:not([hidden]) .lines > li").count()).isPositive();
    page().locator(".set-beside").first().click();
    assertThat(page().locator(".pair > .route").count()).isEqualTo(2);
    assertThat(page().locator(".pair .lines").count()).isEqualTo(2);
    page().locator(".set-beside").first().click();
    assertThat(page().locator(".pair").count()).isZero();
    assertThat(page().locator("#route-1").isVisible()).isTrue();
  }

  /** Lead forgotten: e₁ = 6, e₂ = 1, so 36 − 2 = 34. */
  @Test
  void slipsStandInTheMarginWithTheWrongAnswerTheyGive() {
    visit().open(CUBIC, "Σ r^2");
    List<String> slips = page().locator(".note.slip").allTextContents();
    assertThat(slips)
        .anySatisfy(slip -> assertThat(slip).contains("Lead forgotten").contains("34"));
    assertThat(slips).noneSatisfy(slip -> assertThat(slip).endsWith("Gives 8."));
    double margin = page().locator(".note.slip").first().boundingBox().x;
    assertThat(margin).isGreaterThan(page().locator(".line").first().boundingBox().x + 500);
  }

  @Test
  void notesInTheMarginDoNotCoverOneAnother() {
    visit().open(CUBIC, "Σ r^2");
    page().waitForTimeout(150);
    Object overlaps =
        page()
            .evaluate(
                "(() => { const boxes = [...document.querySelectorAll('.beside > *')].map(e =>"
                    + " e.getBoundingClientRect()).filter(b => b.height > 0); let n = 0; for (let i = 1;"
                    + " i < boxes.length; i++) if (boxes[i].top < boxes[i-1].bottom - 1) n++; return n;"
                    + " })()");
    assertThat(overlaps).isEqualTo(0);
  }

  @Test
  void theStatementStandsInWordsWithItsFormulasSet() {
    visit().open(CUBIC, "Σ r^2");
    assertThat(page().locator(".worded").textContent())
        .startsWith("Problem. Let r, s, t be the roots of")
        .contains("complex roots counted with multiplicity");
    assertThat(page().locator(".worded math").count()).isEqualTo(5);
  }

  @Test
  void theSecondOpinionStandsBesideTheLastLine() {
    visit().open(CUBIC, "Σ r^2");
    assertThat(page().locator("#route-1 .last .note.seal").textContent())
        .contains("exact normal form")
        .contains("certified enclosures of the roots, to 30 digits");
  }

  /** The same two lines with the letters u, v, w: Σ over the names that the coach gives. */
  @Test
  void theRootsMayBeNamedByTheCoach() {
    visit().open(CUBIC, "u^2 + v^2 + w^2");
    visit().untilAnswer("8");
    visit().type("find", "Σ a^2");
    page().getByText("Name the roots yourself").click();
    page().locator("[name=roots]").fill("a, b, c");
    visit().until("new URLSearchParams(location.search).get('roots') === 'a, b, c'");
    visit().untilAnswer("8");
    assertThat(page().locator(".roots").textContent()).isEqualTo("a, b, c");
    page().reload();
    visit().worked();
    assertThat(page().locator("[name=roots]").inputValue()).isEqualTo("a, b, c");
  }

  @Test
  void aLineOfAListOfProblemsMayBePasted() {
    visit().open("x^2 - 5x + 3", "Σ r^2");
    page()
        .evaluate(
            "text => { const data = new DataTransfer(); data.setData('text', text);"
                + " document.querySelector('[data-blank=polynomial] input').dispatchEvent(new"
                + " ClipboardEvent('paste', {clipboardData: data, bubbles: true, cancelable:"
                + " true})); }",
            CUBIC + " ; Σ r^2");
    visit().untilAnswer("8");
    assertThat(page().locator("[data-blank=polynomial] input").inputValue()).isEqualTo(CUBIC);
  }

  /** (x − 1)²(x + 4): r and s are names of one place. */
  @Test
  void bothNamesOfADoubleRootLightIt() {
    visit().open("(x-1)^2 (x+4)", "Σ r^2");
    for (String name : List.of("r", "s", "t")) {
      page().locator(".roots [data-root=" + name + "]").focus();
      assertThat(page().locator("svg g.lit").count()).as(name).isGreaterThanOrEqualTo(2);
    }
  }

  @Test
  void hoveringARootLightsItEverywhere() {
    visit().open(CUBIC, "Σ r^2");
    page().locator(".roots [data-root=r]").hover();
    assertThat(page().locator("svg [data-root=r].lit").count()).isPositive();
    page().locator(".roots [data-root=s]").focus();
    assertThat(page().locator("svg [data-root=s].lit").count()).isPositive();
    assertThat(page().locator("svg [data-root=r].lit").count()).isZero();
  }

  @Test
  void theSpaceBarShowsOneLineAfterAnother() {
    visit().open(CUBIC, "Σ r^2");
    page().locator("#route-1 .reveal").click();
    int lines = page().locator("#route-1 .lines > li").count();
    assertThat(page().locator("#route-1 .lines > li.yet").count()).isEqualTo(lines);
    page().keyboard().press(" ");
    assertThat(page().locator("#route-1 .lines > li.yet").count()).isEqualTo(lines - 1);
    page().keyboard().press("Backspace");
    assertThat(page().locator("#route-1 .lines > li.yet").count()).isEqualTo(lines);
    for (int i = 0; i <= lines; i++) {
      page().keyboard().press(" ");
    }
    assertThat(page().locator(".yet").count()).isZero();
    page().keyboard().press("Escape");
    assertThat(page().locator("body.showing").count()).isZero();
  }

  @Test
  void backAndForwardGoFromProblemToProblem() {
    visit().open(CUBIC, "Σ r^2").type("polynomial", "x^2 - 5x + 3");
    visit().untilAnswer("19");
    page().keyboard().press("Enter");
    page().goBack();
    visit().untilAnswer("8");
    assertThat(page().locator("[data-blank=polynomial] input").inputValue()).isEqualTo(CUBIC);
    page().goForward();
    visit().untilAnswer("19");
  }

  @Test
  void nothingTypedIsLostOnReload() {
    visit().open(CUBIC, "Σ r^2").type("polynomial", "2x^3 - 6x^2 + x + ");
    page().waitForSelector("[data-blank=polynomial].unread");
    page().reload();
    page().waitForSelector("[data-blank=polynomial].unread");
    assertThat(page().locator("[data-blank=polynomial] input").inputValue())
        .isEqualTo("2x^3 - 6x^2 + x + ");
  }

  @Test
  void theClassProfileBansARouteAndIsRemembered() {
    visit().open(CUBIC, "Σ r^2");
    String first = page().locator("#route-1").getAttribute("data-route");
    page().locator(".class [aria-expanded]").click();
    page().locator(".class input[value=" + first + "]").click();
    visit().until("document.querySelector('#route-1')?.dataset.route !== '" + first + "'");
    page().reload();
    visit().worked();
    assertThat(page().locator("#route-1").getAttribute("data-route")).isNotEqualTo(first);
    page().locator(".class [aria-expanded]").click();
    page().locator(".class input[value=" + first + "]").click();
    visit().until("document.querySelector('#route-1')?.dataset.route === '" + first + "'");
  }

  @Test
  void lastProblemsAreKeptAndCanBeTakenUpAgain() {
    visit().open("x^2 - 7x + 2", "Σ r^2");
    visit().open(CUBIC, "Σ r^2");
    page().locator(".lately a").first().click();
    visit().worked();
    assertThat(page().locator("[data-blank=polynomial] input").inputValue())
        .isEqualTo("x^2 - 7x + 2");
  }

  @Test
  void theWorkingCanBeCopied() {
    visit().open(CUBIC, "Σ r^2");
    page().locator("[data-copy=LaTeX]").click();
    visit().until("document.querySelector('.take').textContent.includes('LaTeX copied')");
    Object copied = page().evaluate("navigator.clipboard.readText()");
    assertThat(copied.toString())
        .contains("\\begin{align*}")
        .contains("\\underline{\\underline{8}}");
  }

  @Test
  void theKeyboardAloneIsEnough() {
    visit().open();
    page().keyboard().press("Tab");
    for (int i = 0; i < 12 && !focusIsIn("[data-blank=polynomial] input"); i++) {
      page().keyboard().press("Tab");
    }
    assertThat(focusIsIn("[data-blank=polynomial] input")).isTrue();
    page().keyboard().press("Control+A");
    page().keyboard().type("x^2 - 5x + 3");
    page().keyboard().press("Tab");
    page().keyboard().press("Control+A");
    page().keyboard().type("Σ r^2");
    visit().untilAnswer("19");
    for (int i = 0; i < 40 && !focusIsIn(".others [aria-expanded]"); i++) {
      page().keyboard().press("Tab");
    }
    page().keyboard().press("Enter");
    assertThat(page().locator(".others .opened:not([hidden])").count()).isEqualTo(1);
  }

  private boolean focusIsIn(String selector) {
    return (Boolean) page().evaluate("document.activeElement.matches(" + quoted(selector) + ")");
  }

  private static String quoted(String text) {
    return "\"" + text + "\"";
  }

  @Test
  void aClassIsKeptUnderANameAndTakenAgain() {
    visit().open(CUBIC, "Σ r^2");
    String first = page().locator("#route-1").getAttribute("data-route");
    page().locator(".class [aria-expanded]").click();
    page().locator(".class input[value=" + first + "]").click();
    visit().until("document.querySelector('#route-1').dataset.route !== '" + first + "'");
    page().locator(".class-name").fill("year-9");
    page().locator(".keep-class").click();
    visit().until("document.querySelector('.class [role=status]').textContent.includes('is kept')");
    page().locator(".class input[value=" + first + "]").click();
    visit().until("document.querySelector('#route-1').dataset.route === '" + first + "'");
    page().reload();
    visit().worked();
    page().locator("[data-class=year-9]").click();
    visit().until("document.querySelector('#route-1').dataset.route !== '" + first + "'");
    page().locator(".class [aria-expanded]").click();
    page().locator(".class input[value=" + first + "]").click();
    visit().until("document.querySelector('#route-1').dataset.route === '" + first + "'");
  }

  @Test
  void thePrintedPageIsClean() {
    visit().open(CUBIC, "Σ r^2");
    page().emulateMedia(new Page.EmulateMediaOptions().setMedia(Media.PRINT));
    for (String hidden :
        List.of(".head", "#sentence", "#kinds", "#names", ".take", ".class", ".how")) {
      assertThat(page().locator(hidden).first().isVisible()).as(hidden).isFalse();
    }
    for (String printed : List.of(".worded", "#answer", ".lines", ".opinion")) {
      assertThat(page().locator(printed).first().isVisible()).as(printed).isTrue();
    }
  }

  @Test
  void noScreenHasABarrier() {
    try (Visit wide = Visit.of(desk().address(), 1280, ColorScheme.DARK);
        Visit narrow = Visit.of(desk().address(), 360, ColorScheme.LIGHT)) {
      for (Visit other : List.of(wide, narrow)) {
        other.open(CUBIC, "Σ r^2");
        other.page().getByText("Ask something else").click();
        other.page().locator(".others [aria-expanded]").first().click();
        other.page().locator(".class [aria-expanded]").click();
        assertThat(other.barriers()).as("%s", other == wide ? "wide, dark" : "narrow").isEmpty();
      }
    }
    visit().open(CUBIC, "Σ r^2").type("polynomial", "2x^^");
    page().waitForSelector("[data-blank=polynomial].unread");
    assertThat(visit().barriers()).isEmpty();
  }

  @Test
  void highContrastAndForcedColoursHaveNoBarrierEither() {
    visit().open(CUBIC, "Σ r^2");
    page().emulateMedia(new Page.EmulateMediaOptions().setContrast(Contrast.MORE));
    assertThat(visit().barriers()).as("more contrast").isEmpty();
    page().emulateMedia(new Page.EmulateMediaOptions().setForcedColors(ForcedColors.ACTIVE));
    assertThat(visit().barriers()).as("forced colours").isEmpty();
  }

  /** At 200 % a window of 1280 × 900 has room for 640 × 450 of the page's own pixels. */
  @Test
  void atTwiceTheSizeEverythingIsStillThere() {
    try (Visit zoomed = Visit.zoomed(desk().address())) {
      zoomed.open(CUBIC, "Σ r^2");
      assertThat(zoomed.page().evaluate("devicePixelRatio")).isEqualTo(2);
      Object wider = zoomed.page().evaluate("document.documentElement.scrollWidth - innerWidth");
      assertThat((Integer) wider).isLessThanOrEqualTo(0);
      for (String shown : List.of("#sentence", "#answer", ".lines", ".note.slip", ".take")) {
        assertThat(zoomed.page().locator(shown).first().isVisible()).as(shown).isTrue();
      }
      assertThat(zoomed.barriers()).isEmpty();
    }
  }

  @Test
  void nothingMovesForThoseWhoWantItStill() {
    visit().open(CUBIC, "Σ r^2");
    page()
        .emulateMedia(new Page.EmulateMediaOptions().setReducedMotion(ReducedMotion.NO_PREFERENCE));
    assertThat(movements()).isPositive();
    page().emulateMedia(new Page.EmulateMediaOptions().setReducedMotion(ReducedMotion.REDUCE));
    assertThat(movements()).isZero();
  }

  private int movements() {
    return (Integer)
        page()
            .evaluate(
                "[...document.querySelectorAll('*')].filter(e => { const s = getComputedStyle(e);"
                    + " return s.transitionDuration.split(', ').some(d => d !== '0s') ||"
                    + " s.animationName !== 'none'; }).length");
  }

  /** Every kind that the list offers is worked by its own example, with no barrier on the way. */
  @Test
  void everyKindOfTheListIsWorkedWhenItIsChosen() {
    visit().open(CUBIC, "Σ r^2");
    page().getByText("Ask something else").click();
    List<String> kinds =
        page().locator("[data-kind]").all().stream()
            .map(kind -> kind.getAttribute("data-kind"))
            .toList();
    assertThat(kinds).hasSizeGreaterThan(15);
    for (String kind : List.of("identity", "given-values", "roots-of-unity", "value-at-angles")) {
      if (!page().locator("#kind-list").isVisible()) {
        page().getByText("Ask something else").click();
      }
      page().locator("[data-kind=" + kind + "]").click();
      visit().until("document.querySelector('#working:not([aria-busy]) #answer') !== null");
      visit().until("document.querySelectorAll('#sentence .set math').length >= 1");
      assertThat(page().locator("#refusal").textContent()).as(kind).isEmpty();
    }
    assertThat(visit().barriers()).isEmpty();
  }

  @Test
  void nothingIsWiderThanTheScreen() {
    for (int width : new int[] {360, 640, 1280, 1920}) {
      try (Visit other = Visit.of(desk().address(), width, ColorScheme.LIGHT)) {
        other.open("x^5 - 4x^4 + 3x^3 - 2x^2 + 7x - 11", "Σ 1/(r^2+1)");
        Object wider = other.page().evaluate("document.documentElement.scrollWidth - innerWidth");
        assertThat((Integer) wider).as("at %d", width).isLessThanOrEqualTo(0);
      }
    }
  }
}
