package rootwright.web.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicReference;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rootwright.algebra.stop.StoppedException;
import rootwright.desk.Desk;
import rootwright.working.problem.Statement;
import rootwright.working.route.ClassProfile;

/**
 * Work of every kind ends within the kernel when its job is stopped: each ask is worked again and
 * again, and nothing but the kernel itself ends it.
 */
class RealWorkIsStoppedTest {

  private static final Budget AMPLE = new Budget(Duration.ofMinutes(5), Duration.ofMinutes(5));
  private static final long GUARD_SECONDS = 60;
  private static final Desk DESK = new Desk();

  @ParameterizedTest(name = "{0}, {1}")
  @CsvSource(
      delimiter = ';',
      value = {
        "x^6 - 12x - 7; r s^2 t^3",
        "x^3 - x - 5; S_(20000)",
        "x^3 - x - 5; S_(10^12) mod 1000003",
        "x^5 - 3x^2 + 7x - 11; resolvent(r s + t)",
        "x^9 - 4x^5 + 3x - 1; discriminant",
        "x^4 - 2x^3 - 5x^2 + kx + 2; k if r = s + t",
        "x^3 - 2x + 7 and x^4 + x - 3; Π (r - s)",
        "2cos(2π/17), 2cos(4π/17), 2cos(6π/17), 2cos(8π/17), 2cos(10π/17), 2cos(12π/17), 2cos(14π/17), 2cos(16π/17); Σ r^6",
        "x^3 - 7x + k; k if integer roots",
        "x^3 - x - 1; period of S_k mod 1009",
        "x^2 + bx + 36; b if distinct integer roots",
        "'';(a^2+b^2+1)/(ab) if a, b positive integers, ab divides a^2+b^2+1"
      })
  void aStoppedJobLeavesTheKernel(String polynomial, String find) throws InterruptedException {
    AtomicReference<Throwable> why = new AtomicReference<>();
    CountDownLatch began = new CountDownLatch(1);
    CountDownLatch ended = new CountDownLatch(1);
    try (Jobs jobs = new Jobs(1)) {
      Job job =
          jobs.start(
              AMPLE,
              progress -> {
                began.countDown();
                try {
                  while (true) {
                    DESK.work(Statement.of(polynomial, find), ClassProfile.EVERYTHING);
                  }
                } catch (Throwable thrown) {
                  why.set(thrown);
                  throw thrown;
                } finally {
                  ended.countDown();
                }
              });
      assertThat(began.await(GUARD_SECONDS, TimeUnit.SECONDS)).isTrue();
      assertThat(job.await(Duration.ofMillis(60))).isEmpty();
      job.stop();
      assertThat(ended.await(GUARD_SECONDS, TimeUnit.SECONDS)).isTrue();
      assertThat(why.get()).isInstanceOf(StoppedException.class);
      assertThat(job.await(Duration.ofSeconds(GUARD_SECONDS)).orElseThrow().data().toString())
          .contains("\"stopped\"");
    }
  }
}
