package rootwright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.time.Duration;
import java.util.concurrent.atomic.AtomicBoolean;
import org.junit.jupiter.api.Test;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.UnreadableException;
import rootwright.algebra.stop.Stop;
import rootwright.algebra.stop.StoppedException;
import rootwright.working.problem.Statement;
import rootwright.working.solve.CheckFailedException;

class PatienceTest {

  private static final Statement STATEMENT = Statement.of("x^2 - 2", "r s");

  @Test
  void workThatTakesTooLongIsStoppedAndRefused() {
    AtomicBoolean stopped = new AtomicBoolean();
    UnreadableException refused =
        catchThrowableOfType(
            UnreadableException.class,
            () ->
                new Patience(Duration.ofMillis(20))
                    .spentOn(
                        STATEMENT,
                        () -> {
                          try {
                            while (true) {
                              Stop.ifUnwanted();
                            }
                          } catch (StoppedException unwanted) {
                            stopped.set(true);
                            throw unwanted;
                          }
                        }));
    assertThat(refused.refusal().code()).isEqualTo("too-long");
    assertThat(stopped).isTrue();
  }

  @Test
  void aFaultOfOursStaysAFault() {
    CheckFailedException fault =
        catchThrowableOfType(
            CheckFailedException.class,
            () ->
                new Patience(Duration.ofSeconds(10))
                    .spentOn(
                        STATEMENT,
                        () -> {
                          throw new CheckFailedException("the answer", Formula.number(1), "wrong");
                        }));
    assertThat(fault).hasMessageContaining("wrong");
  }
}
