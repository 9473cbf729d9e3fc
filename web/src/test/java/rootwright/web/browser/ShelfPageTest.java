package rootwright.web.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/**
 * The shelf, and how problems are related. With r → −r the cubic x³ − 4x + 1 becomes x³ − 4x − 1.
 */
class ShelfPageTest extends BrowserTest {

  @BeforeEach
  void openThePage() throws IOException {
    Files.writeString(
        folder.resolve("shelf.txt"), "# of last year\nx^3 - 4x + 1 ; S_4\nx^2 - 5x + 3 ; S_2\n");
    goTo("shelf.html");
    visit().until("document.querySelectorAll('#problems .does a').length === 2");
  }

  @Test
  void linesAreFoundByTheirWordsAndOpened() {
    page().locator("[name=words]").fill("S_4");
    visit().until("document.querySelectorAll('#problems .does a').length === 1");
    assertThat(visit().barriers()).isEmpty();
    page().getByText("open it").click();
    visit().worked();
    visit().untilAnswer("32");
  }

  @Test
  void aProblemIsRelatedToOneOfTheShelfAndToAnother() {
    page().locator("[name=polynomial]").fill("x^3 - 4x - 1");
    page().locator("[name=find]").fill("S_4");
    page().locator("#compare").click();
    visit().until("document.querySelector('#relations').textContent.startsWith('Yes')");
    assertThat(page().locator("#relations").textContent()).contains("line 2");
    page().getByText("compare it").last().click();
    page().locator("#compare").click();
    visit().until("document.querySelector('#relations').textContent.startsWith('No')");
    assertThat(visit().barriers()).isEmpty();
  }

  @Test
  void aProblemIsPutOnTheShelfOnce() {
    page().locator("[name=polynomial]").fill("x^3 - 7x + 3");
    page().locator("#put").click();
    visit().until("document.querySelectorAll('#problems .does a').length === 3");
    page().locator("#put").click();
    visit().until("document.querySelector('#relations').textContent.includes('already')");
  }

  @Test
  void whatCannotBeReadIsSaid() {
    page().locator("[name=polynomial]").fill("x^^2");
    page().locator("#compare").click();
    visit().until("document.querySelector('#refusal').textContent !== ''");
  }

  @Test
  void onAPhoneNothingRunsOutOfThePage() {
    fitsAPhoneInTheDark("shelf.html", "#problems .does a");
  }
}
