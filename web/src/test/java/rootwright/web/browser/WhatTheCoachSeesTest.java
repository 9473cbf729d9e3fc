package rootwright.web.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rootwright.web.DeskServer;
import rootwright.web.DeskSettings;

/**
 * What the page says about nine problems of a coach's week. The values were worked by hand; how is
 * said beside each.
 */
class WhatTheCoachSeesTest {

  @TempDir static Path folder;
  private static DeskServer desk;
  private static Visit visit;

  @BeforeAll
  static void sitDown() {
    desk = DeskServer.start(new DeskSettings(0, folder));
    visit = Visit.of(desk.address());
  }

  @AfterAll
  static void getUp() {
    visit.close();
    desk.close();
  }

  private static String margin() {
    return String.join(" ", visit.page().locator(".note").allTextContents());
  }

  private static String spoken() {
    return visit.page().locator("#answer math").first().getAttribute("alttext");
  }

  /** The values of the answer as plain text, from the downloadable object. */
  private static Object answerText(String polynomial, String find) {
    return visit
        .page()
        .evaluate(
            "([polynomial, find]) => fetch('/api/work', {method: 'POST', body:"
                + " JSON.stringify({polynomial, find})}).then(r => r.json()).then(s =>"
                + " s.answer.text)",
            List.of(polynomial, find));
  }

  /** e₁ = 2, e₂ = 3/4, so Σr² = 4 − 3/2 = 5/2. */
  @Test
  void aSumOfSquaresInFewLinesWithASecondOpinion() {
    visit.open("4x^3 - 8x^2 + 3x + 6", "Σ r^2");
    assertThat(answerText("4x^3 - 8x^2 + 3x + 6", "Σ r^2")).isEqualTo("5/2");
    assertThat(visit.page().locator("#route-1 .lines > li").count()).isLessThanOrEqualTo(4);
    assertThat(visit.page().locator(".opinion").textContent())
        .contains("Second opinion agrees")
        .contains("certified enclosures");
  }

  /** P(3) = 44 and P′(3) = 76, so Σ1/(3 − r) = 19/11 and Σ1/(r − 3) = −19/11. */
  @Test
  void aSumOfReciprocalsByTheDerivativeAndByAShift() {
    visit.open("5x^3 - 10x^2 + x - 4", "Σ 1/(r-3)");
    assertThat(spoken()).startsWith("minus nineteen");
    Object routes =
        visit
            .page()
            .evaluate("[...document.querySelectorAll('[data-route]')].map(e => e.dataset.route)");
    assertThat(routes.toString()).contains("log-derivative").contains("transform");
  }

  @Test
  void aRootThatMakesADenominatorZeroIsSaidAndAnotherAskOffered() {
    visit.open("x^3 - 3x^2 + x + 2", "Σ 1/(r-2)");
    assertThat(visit.page().locator("#answer").textContent()).contains("denominator zero");
    assertThat(margin()).contains("2 is a root").contains("Σ1/(r − 3)");
  }

  /** 1 + 1 + 16 = 18 with multiplicity, 1 + 16 = 17 for distinct roots. */
  @Test
  void aRepeatedRootIsCountedTwiceAndTheOtherReadingShown() {
    visit.open("(x-1)^2 (x+4)", "Σ r^2");
    visit.untilAnswer("18");
    assertThat(margin()).contains("17");
    assertThat(visit.page().locator("svg [aria-label*='2 times']").count()).isPositive();
    assertThat(visit.page().locator(".worded").textContent()).contains("+4=0");
  }

  /** D = 169, so the cyclic sum is (−7 ± 13)/2: 3 or −10. */
  @Test
  void aCyclicSumHasTwoValuesAndTheFigureShowsBoth() {
    visit.open("x^3 - x^2 - 4x - 1", "r^2 s + s^2 t + t^2 r");
    assertThat(visit.page().locator("#answer").textContent()).contains("3").contains("10");
    assertThat(margin()).contains("two possible values");
    assertThat(visit.page().locator(".figures svg").getAttribute("aria-label"))
        .contains("possible values")
        .contains("-10");
    assertThat(margin()).contains("sum −7").contains("all possible values");
  }

  /** e₁e₂ − 3e₃ = 3 and D = 256 − 27 = 229. */
  @Test
  void aCyclicSumWithARootStaysExact() {
    visit.open("x^3 - 4x + 1", "r^2 s + s^2 t + t^2 r");
    assertThat(visit.page().locator("#answer msqrt").count()).isEqualTo(2);
    assertThat(visit.page().locator("#answer").textContent())
        .contains("229")
        .doesNotContain("9.07");
  }

  /** ½(Σ1/(r−1) − Σ1/(r+1)) = ½(5 + 7/3) = 11/3. */
  @Test
  void aFractionWithTwoPolesIsSplit() {
    visit.open("x^3 - 3x^2 - 2x + 5", "Σ 1/(r^2-1)");
    assertThat(answerText("x^3 - 3x^2 - 2x + 5", "Σ 1/(r^2-1)")).isEqualTo("11/3");
    Object routes =
        visit
            .page()
            .evaluate("[...document.querySelectorAll('[data-route]')].map(e => e.dataset.route)");
    assertThat(routes.toString()).contains("partial-fractions");
    visit
        .page()
        .locator(".others [data-route=partial-fractions] [aria-expanded=false]")
        .all()
        .forEach(com.microsoft.playwright.Locator::click);
    List<String> values =
        visit.page().locator("[data-route=partial-fractions] .line math").all().stream()
            .map(line -> line.getAttribute("alttext"))
            .toList();
    assertThat(String.join("; ", values))
        .contains("equals five")
        .contains("equals minus seven thirds");
  }

  /** Lead forgotten 36 − 2; square of the sum 9; one cross term 9 − ½; wrong cross sign 9 + 1. */
  @Test
  void slipsGiveTheirWrongAnswersAndTheRightOneIsNeverAmongThem() {
    visit.open("2x^3 - 6x^2 + x + 5", "Σ r^2");
    visit.untilAnswer("8");
    List<String> spoken =
        visit.page().locator(".note.slip math").all().stream()
            .map(value -> value.getAttribute("alttext"))
            .toList();
    assertThat(spoken)
        .contains("thirty-four", "nine", "seventeen halves", "ten", "fifteen halves", "seven")
        .doesNotContain("eight");
    assertThat(visit.page().locator(".opinion").textContent()).contains("sign slip");
  }

  /** e₁ = 2, e₂ = 2: Σr² = 4 − 4 = 0; an answer of nought is an answer. */
  @Test
  void aSumOfSquaresMayBeNought() {
    visit.open("x^3 - 2x^2 + 2x - 5", "Σ r^2");
    visit.untilAnswer("0");
    assertThat(visit.page().locator(".note.slip").count()).isPositive();
  }

  /**
   * The same as a question with five choices: 4 − 3·2 (Newton's count), 0, 4 − 2, 4 and 4 + 4. The
   * lead is 1, so the slips with the lead are silent.
   */
  @Test
  void fiveChoicesStandInAscendingOrderEachWithItsSlip() {
    visit.open("x^3 - 2x^2 + 2x - 5", "Σ r^2");
    visit.page().locator(".choices summary").click();
    visit.page().locator(".choices select").selectOption("5");
    List<String> options =
        visit.page().locator(".options li").allTextContents().stream()
            .map(option -> option.replace('−', '-'))
            .toList();
    assertThat(options)
        .containsExactly(
            "-2Newton count", "0the key", "2one cross term", "4square of the sum", "8cross sign");
    assertThat(visit.page().locator(".options .key").textContent()).startsWith("0");
    assertThat(visit.page().locator(".opinion").textContent())
        .contains("lead forgotten")
        .contains("lead half forgotten");
  }
}
