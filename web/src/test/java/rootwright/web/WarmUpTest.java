package rootwright.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Duration;
import java.util.Map;
import java.util.concurrent.CountDownLatch;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rootwright.desk.Desk;
import rootwright.web.job.Budget;
import rootwright.web.job.Jobs;

class WarmUpTest {

  private static final Budget AMPLE = new Budget(Duration.ofMinutes(1), Duration.ofMinutes(1));

  @TempDir Path folder;

  @Test
  void aWarmedUpDeskHasWorkedNothingForTheCoach() throws Exception {
    try (DeskServer desk = DeskServer.start(new DeskSettings(0, folder)).warmUp()) {
      desk.awaitWarmUp();
      String own = "127.0.0.1:" + desk.address().getPort();
      assertThat(
              new RawRequest("GET", "/api/recent", Map.of("Host", own), "").sentTo(desk.address()))
          .endsWith("[]");
    }
  }

  @Test
  void whatIsWorkedForTheCoachGoesBefore() throws InterruptedException {
    CountDownLatch end = new CountDownLatch(1);
    try (Jobs jobs = new Jobs(1);
        WarmUp warmUp = new WarmUp(new Desk(), jobs)) {
      var job =
          jobs.start(
              AMPLE,
              progress -> {
                end.await();
                return com.fasterxml.jackson.databind.node.NullNode.instance;
              });
      warmUp.start();
      assertThat(warmUp.worked()).isZero();
      assertThat(job.await(Duration.ofMillis(200))).isEmpty();
      assertThat(warmUp.worked()).isZero();
      end.countDown();
      while (warmUp.worked() == 0) {
        Thread.sleep(5);
      }
      warmUp.close();
      warmUp.await();
    }
  }
}
