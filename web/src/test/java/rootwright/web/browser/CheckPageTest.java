package rootwright.web.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/**
 * Somebody's working on the page. The problem is our own: e₁ = 3, e₂ = 1/2, so Σr² = 9 − 1 = 8; who
 * takes away one cross term instead of two gets 17/2.
 */
class CheckPageTest extends BrowserTest {

  private static final String CUBIC = "2x^3 - 6x^2 + x + 5";
  private static final String RIGHT = "e1 = 3, e2 = 1/2\nΣ r^2 = e1^2 - 2 e2\n= 9 - 1 = 8";
  private static final String WRONG = "e1 = 3, e2 = 1/2\nΣ r^2 = e1^2 - e2 = 17/2\nso I am done";

  @BeforeEach
  void openThePage() {
    goTo("check.html");
    marked("wrong");
    visit().type("polynomial", CUBIC);
  }

  private void write(String lines) {
    page().locator("#lines").fill(lines);
  }

  /** Waits until the lines are marked so, in this order. */
  private void marked(String... verdicts) {
    visit()
        .until(
            "[...document.querySelectorAll('#working:not([aria-busy]) .marked > li')].map(e =>"
                + " e.dataset.verdict).join().includes('"
                + String.join(",", verdicts)
                + "')");
  }

  @Test
  void everyLineIsMarkedAndTheFirstWrongOneHasItsSlipInTheMargin() {
    write(WRONG);
    marked("follows", "wrong", "remark");
    assertThat(page().locator(".verdict").textContent())
        .contains("The first wrong line is line 2.")
        .contains("ends in a wrong answer");
    List<String> notes = page().locator(".marked .first .note.slip").allTextContents();
    assertThat(notes).first().asString().contains("Line 2 is the first wrong one");
    assertThat(notes).anySatisfy(note -> assertThat(note).startsWith("One cross term?"));
    double margin = page().locator(".note.slip").first().boundingBox().x;
    assertThat(margin).isGreaterThan(page().locator(".line").first().boundingBox().x + 500);
    assertThat(visit().barriers()).isEmpty();
  }

  @Test
  void aRightWorkingArrives() {
    write(RIGHT);
    marked("follows", "follows", "follows");
    assertThat(page().locator(".verdict").textContent())
        .contains("No line is wrong.")
        .contains("arrives at the answer");
    assertThat(page().locator(".note.slip").count()).isZero();
  }

  @Test
  void linesThatAreTypedWithTheKeyboardAreMarked() {
    page().locator("#lines").focus();
    page().keyboard().press("Control+A");
    page().keyboard().type("e1 = 3");
    marked("follows");
    page().keyboard().press("Enter");
    page().keyboard().type("e2 = 5");
    marked("follows", "wrong");
    assertThat(page().locator("#herald").textContent()).contains("line 2");
  }

  @Test
  void theLinesSurviveAReload() {
    write(WRONG);
    marked("follows", "wrong", "remark");
    page().reload();
    marked("follows", "wrong", "remark");
    assertThat(page().locator("#lines").inputValue()).isEqualTo(WRONG);
    assertThat(page().locator("[data-blank=polynomial] input").inputValue()).isEqualTo(CUBIC);
  }

  @Test
  void aProblemIsTakenToTheCheckAndBack() {
    visit().open(CUBIC, "Σ r^3");
    page().getByText("Check somebody's working").click();
    visit().until("document.querySelector('[data-blank=find] input')?.value === 'Σ r^3'");
    marked("follows");
    page().locator("#work-it").click();
    visit().worked();
    assertThat(page().locator("[data-blank=find] input").inputValue()).isEqualTo("Σ r^3");
  }

  @Test
  void aWorkingWithALetterIsMarkedAndWhatMustBeThrownOutIsNamed() {
    goTo(
        "check.html?polynomial="
            + URLEncoder.encode("x^2-(m-1)x+(m+1)", StandardCharsets.UTF_8)
            + "&find="
            + URLEncoder.encode("m if r^2+s^2 = 4, roots real", StandardCharsets.UTF_8));
    write("(m-1)^2 - 2(m+1) = 4\nm^2 - 4m - 5 = 0\nm = 5 or m = -1");
    marked("follows", "follows", "wrong");
    List<String> notes = page().locator(".marked .first .note.slip").allTextContents();
    assertThat(notes).anySatisfy(note -> assertThat(note).startsWith("Existence unchecked?"));
    write("(m-1)^2 - 2(m+1) = 4\nm = 5 or m = -1\nm = 5: D = -8 < 0\nm = -1");
    marked("follows", "follows", "follows", "follows");
    assertThat(page().locator(".verdict").textContent()).contains("arrives at the answer");
  }

  @Test
  void anUnreadableProblemIsSaidAndUnderlined() {
    visit().type("polynomial", "2x^^3");
    page().waitForSelector("[data-blank=polynomial].unread mark");
    assertThat(page().locator("#refusal").textContent()).isNotBlank();
    assertThat(visit().barriers()).isEmpty();
  }

  @Test
  void theNarrowPageFitsAndHasNoBarrier() {
    fitsAPhoneInTheDark("check.html", ".marked .note.slip");
  }
}
