package rootwright.web.job;

import com.fasterxml.jackson.databind.node.TextNode;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CountDownLatch;

/** A program of its own, since it fills its memory: a hungry job beside a frugal one. */
final class HungryJob {

  private static final Budget AMPLE = new Budget(Duration.ofMinutes(1), Duration.ofMinutes(1));

  private HungryJob() {}

  /** Prints how the hungry job ended, and then how the frugal one did. */
  public static void main(String[] none) throws InterruptedException {
    try (Jobs jobs = new Jobs(2)) {
      Job frugal =
          jobs.start(
              AMPLE,
              progress -> {
                // Only an interruption ends it, so that it cannot end by itself once it is stopped.
                new CountDownLatch(1).await();
                return TextNode.valueOf("frugal");
              });
      Job hungry =
          jobs.start(
              AMPLE,
              progress -> {
                List<byte[]> eaten = new ArrayList<>();
                while (!progress.stopped()) {
                  eaten.add(new byte[64 * 1024]);
                  Thread.sleep(1);
                }
                return TextNode.valueOf("ate " + eaten.size());
              });
      System.out.println(hungry.await(Duration.ofSeconds(40)).orElseThrow().data());
      frugal.stop();
      System.out.println(frugal.await(Duration.ofSeconds(10)).orElseThrow().data());
    }
  }
}
