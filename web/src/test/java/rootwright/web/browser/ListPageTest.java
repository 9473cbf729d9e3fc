package rootwright.web.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Download;
import com.microsoft.playwright.Locator;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/**
 * A list of problems on its page. Of the first e₁ = 3 and e₂ = 1/2, so Σr² = 9 − 1 = 8; of the
 * second e₁ = 5 and e₂ = 3, so S₂ = 25 − 6 = 19; of the mended ones S₂ = 0 + 8 = 8, and r³ = 4
 * three times.
 */
class ListPageTest extends BrowserTest {

  private static final String LIST =
      "# Thursday\n2x^3 - 6x^2 + x + 5 ; Σ r^2\nx^3 - 4x + 1\n\nx^2 - 5x + 3 ; S_2\n2x^^3 ; S_4";

  @BeforeEach
  void openThePage() {
    goTo("list.html");
    visit().until("document.querySelector('#numbers').textContent !== ''");
  }

  private void work(String list) {
    page().locator("#lines").fill(list);
    page().locator("#work").click();
    visit().until("document.querySelector('#progress').textContent.includes('worked')");
    visit().until("document.querySelector('#stop').hidden");
  }

  private Locator line(int number) {
    return page().locator("[data-line='" + number + "']");
  }

  @Test
  void everyLineIsWorkedAndABadOneIsNamedWhereItStands() {
    work(LIST);
    assertThat(page().locator(".worked > li").count()).isEqualTo(4);
    assertThat(line(2).locator(".value").textContent()).isEqualTo("8");
    assertThat(line(5).locator(".value").textContent()).isEqualTo("19");
    assertThat(line(3).textContent()).contains("There is no ask");
    assertThat(line(6).locator("mark").textContent()).startsWith("^3");
    assertThat(page().locator("#progress").textContent())
        .contains("2 problems are worked; 2 lines could not be worked");
    assertThat(visit().barriers()).isEmpty();
  }

  @Test
  void aBadLineIsMendedInItsPlaceAndInTheList() {
    work(LIST);
    line(6).locator("input").fill("2x^3 - 8 ; S_3");
    line(6).locator("input").press("Enter");
    visit().until("document.querySelector('[data-line=\"6\"] .value')?.textContent === '12'");
    assertThat(page().locator("#lines").inputValue()).endsWith("\n2x^3 - 8 ; S_3");
    line(3).getByText("x^3 - 4x + 1 ; S_2").click();
    visit().until("document.querySelector('[data-line=\"3\"] .value')?.textContent === '8'");
  }

  @Test
  void aLineIsOpenedAsAProblemAndTheListIsThereOnTheWayBack() {
    work(LIST);
    line(2).getByText("open it").click();
    visit().worked();
    visit().untilAnswer("8");
    page().goBack();
    visit().until("document.querySelector('#lines')?.value.startsWith('# Thursday')");
  }

  @Test
  void theAnswersAreKeptAndDownloadedAsScriptsReadThem() throws IOException {
    work(LIST);
    page().getByText("Keep them all on the shelf").click();
    visit()
        .until("document.querySelector('.take [role=status]').textContent.includes('2 problems')");
    assertThat(Files.readString(folder.resolve("shelf.txt"))).contains("2*x^3 - 6*x^2 + x + 5 ; ");
    Download lines = page().waitForDownload(() -> page().getByText("JSON lines").click());
    assertThat(Files.readAllLines(lines.path(), StandardCharsets.UTF_8))
        .hasSize(4)
        .first()
        .asString()
        .contains("\"text\":\"8\"")
        .contains("\"line\":2");
    Download text = page().waitForDownload(() -> page().getByText("plain text").click());
    assertThat(Files.readString(text.path(), StandardCharsets.UTF_8))
        .contains("5. ")
        .contains("19");
    page().getByText("put them on a paper").click();
    visit()
        .until("document.querySelector('[name=problems]')?.value.includes('x^2 - 5x + 3 ; S_2')");
  }

  @Test
  void aFileIsTakenAndALongListCanBeStopped() throws IOException {
    Path file = folder.resolve("long.txt");
    Files.write(file, List.of("x^5 - 3x^2 + 7x - 11 ; Σ r^4 s^2 t\n".repeat(400)));
    page().locator("#file").setInputFiles(file);
    visit().until("document.querySelectorAll('.worked > li').length > 2");
    assertThat(page().locator("#progress").textContent()).contains("of 401 lines");
    page().locator("#stop").click();
    visit().until("document.querySelector('#refusal').textContent.startsWith('Stopped')");
    assertThat(page().locator(".worked > li").count()).isBetween(3, 399);
  }

  @Test
  void onAPhoneNothingRunsOutOfThePage() {
    fitsAPhoneInTheDark("list.html", "#numbers:not(:empty)");
  }
}
