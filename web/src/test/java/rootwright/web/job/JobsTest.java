package rootwright.web.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.TextNode;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import rootwright.algebra.notation.Refusal;
import rootwright.algebra.notation.UnreadableException;
import rootwright.web.reply.FaultException;

class JobsTest {

  private static final Duration GUARD = Duration.ofSeconds(20);
  private static final Budget AMPLE = new Budget(Duration.ofMinutes(1), Duration.ofMinutes(1));
  private static final JsonNode RESULT = TextNode.valueOf("result");

  /** Faults that are meant need not stand in the log of the build; held, lest it be forgotten. */
  private static final Logger LOG = Logger.getLogger(Jobs.class.getName());

  private final Jobs jobs = new Jobs(2);

  @BeforeAll
  static void keepTheLogQuiet() {
    LOG.setLevel(Level.OFF);
  }

  @AfterAll
  static void letTheLogSpeak() {
    LOG.setLevel(null);
  }

  @AfterEach
  void end() {
    jobs.close();
  }

  /** Works until it is told to stop. */
  private static JsonNode forever(Progress progress) throws InterruptedException {
    while (!progress.stopped()) {
      Thread.sleep(5);
    }
    return RESULT;
  }

  private static String codeOf(Event event) {
    return event.data().path("error").path("code").asText();
  }

  @Test
  void workThatEndsGivesItsResult() throws InterruptedException {
    Event last = jobs.start(AMPLE, progress -> RESULT).await(GUARD).orElseThrow();
    assertThat(last).isEqualTo(new Event("done", RESULT));
  }

  @Test
  void aLateFollowerHearsEverythingFromTheFirstFindingOn() throws InterruptedException {
    Job job =
        jobs.start(
            AMPLE,
            progress -> {
              progress.found(TextNode.valueOf("first"));
              progress.at(1, 3, "looking");
              progress.at(2, 3, "looking");
              return RESULT;
            });
    job.await(GUARD);
    List<String> heard = Collections.synchronizedList(new ArrayList<>());
    job.follow(event -> heard.add(event.name() + " " + event.data().path("done").asText()));
    assertThat(heard).containsExactly("found ", "progress 2", "done ");
  }

  @Test
  void anUnreadableTextIsRefusedWithItsPlace() throws InterruptedException {
    Refusal refusal = new Refusal("odd", "This is odd.", "x^^2", 2, "an exponent", "x^2");
    Event last =
        jobs.start(
                AMPLE,
                progress -> {
                  throw new UnreadableException(refusal);
                })
            .await(GUARD)
            .orElseThrow();
    assertThat(last.name()).isEqualTo("failed");
    assertThat(last.data().path("error").path("at").asInt()).isEqualTo(2);
    assertThat(last.data().path("error").path("mend").asText()).isEqualTo("x^2");
  }

  @Test
  void whatGoesWrongInsideReachesThePageAsANumberOnly() throws InterruptedException {
    Event last =
        jobs.start(
                AMPLE,
                progress -> {
                  throw new IllegalStateException("secret of the house");
                })
            .await(GUARD)
            .orElseThrow();
    assertThat(codeOf(last)).isEqualTo("ours-to-mend");
    assertThat(last.data().toString()).doesNotContain("secret").doesNotContain("Exception");
  }

  @Test
  void endlessRecursionEndsInAPlainMessage() throws InterruptedException {
    Event last = jobs.start(AMPLE, JobsTest::deeper).await(GUARD).orElseThrow();
    assertThat(codeOf(last)).isEqualTo("ours-to-mend");
  }

  @SuppressWarnings("InfiniteRecursion")
  private static JsonNode deeper(Progress progress) {
    return JsonNodeFactory.instance.objectNode().set("in", deeper(progress));
  }

  @Test
  void workOverItsTimeIsStopped() throws InterruptedException {
    Budget short_ = new Budget(Duration.ofMillis(50), Duration.ofMinutes(1));
    Event last = jobs.start(short_, JobsTest::forever).await(GUARD).orElseThrow();
    assertThat(codeOf(last)).isEqualTo("too-long");
  }

  @Test
  void workOverItsTimeIsInterruptedWhereItSleeps() throws InterruptedException {
    Budget short_ = new Budget(Duration.ofMillis(50), Duration.ofMinutes(1));
    CountDownLatch interrupted = new CountDownLatch(1);
    jobs.start(
        short_,
        progress -> {
          try {
            new CountDownLatch(1).await();
          } catch (InterruptedException ended) {
            interrupted.countDown();
          }
          return RESULT;
        });
    assertThat(interrupted.await(GUARD.toMillis(), TimeUnit.MILLISECONDS)).isTrue();
  }

  @Test
  void workThatNobodyWaitsForIsStopped() throws InterruptedException {
    Budget lonely = new Budget(Duration.ofMinutes(1), Duration.ofMillis(50));
    CountDownLatch ended = new CountDownLatch(1);
    Job job =
        jobs.start(
            lonely,
            progress -> {
              try {
                return forever(progress);
              } finally {
                ended.countDown();
              }
            });
    Consumer<Event> follower = event -> {};
    job.follow(follower);
    assertThat(job.await(Duration.ofMillis(300))).isEmpty();
    job.leave(follower);
    assertThat(codeOf(job.await(GUARD).orElseThrow())).isEqualTo("stopped");
    assertThat(ended.await(GUARD.toMillis(), TimeUnit.MILLISECONDS)).isTrue();
  }

  @Test
  void whenMemoryRunsOutTheHungriestJobIsEndedAndNoOther() throws Exception {
    Process program =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xmx48m",
                "-cp",
                System.getProperty("java.class.path"),
                HungryJob.class.getName())
            .redirectErrorStream(true)
            .start();
    String told = new String(program.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertThat(told.lines().toList())
        .hasSize(2)
        .satisfiesExactly(
            hungry -> assertThat(hungry).contains("\"too-large\"").contains("more memory"),
            frugal -> assertThat(frugal).contains("\"stopped\""));
  }

  @Test
  void aJobMayBeNamedByThePageButOnlyOnce() {
    UUID name = UUID.randomUUID();
    assertThat(jobs.start(name, AMPLE, JobsTest::forever).id()).isEqualTo(name.toString());
    assertThatThrownBy(() -> jobs.start(name, AMPLE, JobsTest::forever))
        .isInstanceOf(FaultException.class)
        .hasMessageContaining("already");
  }

  @Test
  void oneMoreThanTheDeskCanDoIsRefused() {
    jobs.start(AMPLE, JobsTest::forever);
    jobs.start(AMPLE, JobsTest::forever);
    assertThatThrownBy(() -> jobs.start(AMPLE, JobsTest::forever))
        .isInstanceOf(FaultException.class)
        .hasMessageContaining("other asks");
  }

  @Test
  void anEndedJobIsFoundForAWhileAndAnUnknownOneIsNot() throws InterruptedException {
    Job job = jobs.start(AMPLE, progress -> RESULT);
    job.await(GUARD);
    assertThat(jobs.find(job.id())).contains(job);
    assertThat(jobs.find("unknown")).isEmpty();
  }
}
