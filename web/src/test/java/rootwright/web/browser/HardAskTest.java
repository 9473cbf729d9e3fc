package rootwright.web.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.nio.file.Path;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rootwright.algebra.notation.UnreadableException;
import rootwright.desk.Desk;
import rootwright.web.DeskServer;
import rootwright.web.DeskSettings;
import rootwright.working.problem.Statement;
import rootwright.working.route.ClassProfile;
import rootwright.working.solve.Solution;

/**
 * An ask that is not done before it is stopped. How long hard asks take changes with the machine
 * and the methods, so one is worked here again and again, all of it for real, until the kernel
 * itself lets go because the page gave it up.
 */
class HardAskTest {

  private static final String SEXTIC = "x^6 - 12x - 7";
  private static final String HARD = "r s^2 t^3";
  private static final long GUARD_SECONDS = 20;

  @TempDir static Path folder;
  private static final Desk DESK = new Desk();
  private static final Semaphore ENDED = new Semaphore(0);
  private static DeskServer desk;

  @BeforeAll
  static void startDesk() {
    desk = DeskServer.start(new DeskSettings(0, folder), DESK, HardAskTest::heldBack);
  }

  @AfterAll
  static void stopDesk() {
    desk.close();
  }

  @BeforeEach
  void forget() {
    ENDED.drainPermits();
  }

  private static Solution heldBack(Statement statement, ClassProfile profile)
      throws UnreadableException {
    if (statement.find().equals(HARD)) {
      try {
        while (true) {
          DESK.work(statement, profile);
        }
      } finally {
        ENDED.release();
      }
    }
    return DESK.work(statement, profile);
  }

  private static Visit waiting() {
    Visit visit = Visit.of(desk.address());
    visit.open("x^2 - 5x + 3", "Σ r^2").type("polynomial", SEXTIC).type("find", HARD);
    visit.page().waitForSelector(".waiting button");
    return visit;
  }

  private static boolean theWorkEnded() throws InterruptedException {
    return ENDED.tryAcquire(GUARD_SECONDS, TimeUnit.SECONDS);
  }

  @Test
  void canBeStoppedByThePerson() throws InterruptedException {
    try (Visit visit = waiting()) {
      Page page = visit.page();
      assertThat(page.locator(".waiting").textContent()).contains("Working this out");
      page.locator(".waiting button").click();
      visit.until("document.querySelector('#refusal').textContent === 'Stopped.'");
      assertThat(page.locator(".waiting").count()).isZero();
      assertThat(page.locator("#answer").count()).isZero();
      assertThat(theWorkEnded()).isTrue();
      assertThat(visit.barriers()).isEmpty();
    }
  }

  @Test
  void isStoppedWhenAnotherProblemIsTyped() throws InterruptedException {
    try (Visit visit = waiting()) {
      visit.type("polynomial", "x^2 - 5x + 3").type("find", "Σ r^2");
      visit.untilAnswer("19");
      assertThat(theWorkEnded()).isTrue();
    }
  }

  @Test
  void isStoppedWhenItsPageIsClosed() throws InterruptedException {
    waiting().close();
    assertThat(theWorkEnded()).isTrue();
  }
}
