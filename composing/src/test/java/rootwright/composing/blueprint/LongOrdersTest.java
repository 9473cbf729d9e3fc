package rootwright.composing.blueprint;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import rootwright.algebra.number.Rational;
import rootwright.composing.scan.ScanControl;
import rootwright.composing.scan.ScanState;
import rootwright.working.kind.Kinds;
import rootwright.working.problem.Statement;

/** What watching, stopping, going on and more workers change: the time, and nothing else. */
class LongOrdersTest {

  /** Rare enough that many rows are scanned before the order is filled. */
  private static final Blueprint ORDER =
      Blueprint.of("Σ r^2", 3, 4, 11)
          .withPolynomial(
              new PolynomialWish(3, 40, 1, 2, RootsWish.IRREDUCIBLE, new RealWish.All()))
          .withAnswer(new AnswerWish.Between(18, 22))
          .withWorking(WorkingWish.USUAL.withSlips(OptionalInt.of(0)));

  private final Composer composer = new Composer(new Kinds());

  private static List<Statement> problems(Composition composition) {
    return composition.problems().stream().map(Composed::statement).toList();
  }

  @Test
  void theNumberOfWorkersChangesNothing() throws Exception {
    Composition alone = composer.compose(ORDER, Set.of(), ScanControl.alone());
    ExecutorService executor = Executors.newFixedThreadPool(3);
    try {
      Composition shared = composer.compose(ORDER, Set.of(), ScanControl.shared(executor, 3));
      assertThat(problems(shared)).isEqualTo(problems(alone)).hasSize(4);
      assertThat(shared.counts()).isEqualTo(alone.counts());
      assertThat(shared.rejected()).isEqualTo(alone.rejected());
    } finally {
      executor.shutdownNow();
    }
  }

  @Test
  void everyProblemIsHandedOnWhenItIsFoundAndTheCountsOnlyGrow() throws Exception {
    List<Composed> heard = new ArrayList<>();
    List<Screened> progress = new ArrayList<>();
    ComposingListener listener =
        new ComposingListener() {
          @Override
          public void screened(Screened sofar) {
            progress.add(sofar);
          }

          @Override
          public void found(Composed problem) {
            heard.add(problem);
          }
        };
    Composition composition =
        composer.compose(
            ORDER, Set.of(), ComposingControl.of(ScanControl.alone()).telling(listener));
    assertThat(heard).isEqualTo(composition.problems());
    assertThat(progress).hasSizeGreaterThan(2);
    for (int k = 1; k < progress.size(); k++) {
      assertThat(progress.get(k).examined()).isGreaterThan(progress.get(k - 1).examined());
      assertThat(progress.get(k).found()).isGreaterThanOrEqualTo(progress.get(k - 1).found());
    }
    Screened last = progress.get(progress.size() - 1);
    assertThat(last.counts()).isEqualTo(composition.counts());
    assertThat(last.passing()).isPositive().isLessThan(last.examined());
  }

  @Test
  void anOrderThatIsStoppedAgainAndAgainEndsAsOneThatIsNot() throws Exception {
    Composition whole = composer.compose(ORDER, Set.of(), ScanControl.alone());
    Notes notes = new Notes();
    Composition last = stopped(notes);
    int runs = 1;
    while (last.ending() == Composition.Ending.STOPPED) {
      last = stopped(notes);
      runs++;
    }
    assertThat(runs).isGreaterThan(2);
    assertThat(problems(last)).isEqualTo(problems(whole));
    assertThat(last.counts()).isEqualTo(whole.counts());
    assertThat(last.rejected()).isEqualTo(whole.rejected());
  }

  /** Runs until three more tasks are done. */
  private Composition stopped(Notes notes) throws Exception {
    AtomicInteger kept = new AtomicInteger();
    ScanBook book =
        new ScanBook() {
          @Override
          public Optional<ScanState> stateOf(String identity) {
            return notes.stateOf(identity);
          }

          @Override
          public void keep(ScanState state) {
            kept.incrementAndGet();
            notes.keep(state);
          }
        };
    // One call comes with the state that is gone on from.
    ScanControl control = ScanControl.alone().until(() -> kept.get() > 3);
    return composer.compose(ORDER, Set.of(), ComposingControl.of(control).keepingIn(book));
  }

  /** States as text, as a file keeps them. */
  private static final class Notes implements ScanBook {
    private final Map<String, String> texts = new HashMap<>();

    @Override
    public Optional<ScanState> stateOf(String identity) {
      return Optional.ofNullable(texts.get(identity)).map(ScanState::parse);
    }

    @Override
    public void keep(ScanState state) {
      texts.put(state.identity(), state.toText());
    }
  }

  @Test
  void anOrderOverTrillionsIsEstimatedBeforeItStarts() throws Exception {
    Blueprint hopeless =
        Blueprint.of("Σ r^2", 5, 5, 1)
            .withPolynomial(
                new PolynomialWish(5, 1_000, 1, 3, RootsWish.IRREDUCIBLE, new RealWish.All()))
            .withAnswer(new AnswerWish.Wanted(Rational.of(1)));
    long[] clock = {0};
    // A clock that ticks a microsecond a look, so that the estimate does not depend on the machine.
    OrderEstimate estimate = composer.estimate(hopeless, () -> clock[0] += 1_000, 50_000);
    assertThat(estimate.candidates().toString()).hasSizeGreaterThan(15);
    assertThat(estimate.sampled()).isPositive();
    assertThat(estimate.asks().get(0).scan().counts()).isNotEmpty();
    assertThat(estimate.nanosecondsAtMost(2).bitLength()).isGreaterThan(40);
  }
}
