package rootwright.composing.blueprint;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.concurrent.CompletableFuture;
import java.util.function.Supplier;
import rootwright.algebra.notation.UnreadableException;
import rootwright.algebra.stop.StoppedException;
import rootwright.composing.scan.ScanResult.FilterCount;
import rootwright.working.Subjects;
import rootwright.working.problem.Statement;
import rootwright.working.route.ClassProfile;
import rootwright.working.solve.CheckFailedException;
import rootwright.working.solve.Given;

/**
 * Statements drawn by a seed and handed to the picker one after the other. Several are worked at
 * once where there are several workers; the picker sees them in the order of the draw, so that the
 * result is the same on any number of threads.
 */
final class StatementLot implements Lot {

  /** So many draws are made for each statement that is worked at most. */
  private static final int DRAWS_EACH = 10;

  /** So many are worked at once if there are workers; part of what the counts depend on. */
  private static final int AT_ONCE = 4;

  /**
   * After so many draws that give nothing new a pattern has nothing more, as far as one can see.
   */
  private static final int MOST_IDLE = 600;

  /** An odd number far from round in binary, so that neighbouring draws share nothing. */
  private static final long APART = 0xD1342543DE82EF95L;

  private final StatementSource source;
  private final String ask;
  private final Subjects subjects;
  private final Judge judge;
  private final int kept;
  private final long seed;

  StatementLot(
      StatementSource source, String ask, Subjects subjects, Judge judge, int kept, long seed) {
    this.source = source;
    this.ask = ask;
    this.subjects = subjects;
    this.judge = judge;
    this.kept = kept;
    this.seed = seed;
  }

  @Override
  public Outcome run(Picker picker, int until, ComposingControl control, int wanted) {
    Tally tally = new Tally();
    long most = (long) DRAWS_EACH * kept;
    while (picker.picked().size() < until
        && tally.worked < kept
        && tally.drawn < most
        && tally.idle < MOST_IDLE
        && !control.isStopped()) {
      List<Drawn> batch = batch(picker, most, tally, control);
      for (Drawn each : batch) {
        if (picker.picked().size() < until && !control.isStopped()) {
          picker.offer(each.statement(), each.given(), judge, each.worked());
        }
      }
      tell(control, picker, tally, most, wanted);
    }
    return new Outcome(tally.counts(), false);
  }

  /** A statement that was read, and what works it. */
  private record Drawn(Statement statement, Given given, Supplier<Worked> worked) {}

  private List<Drawn> batch(Picker picker, long most, Tally tally, ComposingControl control) {
    List<Drawn> batch = new ArrayList<>();
    while (batch.size() < AT_ONCE && tally.drawn < most && tally.idle < MOST_IDLE) {
      tally.idle++;
      Optional<Statement> statement = source.at(seed + APART * tally.drawn++);
      if (statement.isEmpty()) {
        tally.unfit++;
        continue;
      }
      try {
        Given given = subjects.read(statement.get());
        if (picker.isNew(given)) {
          tally.worked++;
          tally.idle = 0;
          CompletableFuture<Worked> future =
              CompletableFuture.supplyAsync(
                  () -> worked(statement.get()), control.scan().executor());
          batch.add(new Drawn(statement.get(), given, future::join));
        } else {
          batch.add(new Drawn(statement.get(), given, () -> Worked.failed("a repetition")));
        }
      } catch (UnreadableException beyond) {
        tally.unfit++;
      }
    }
    return batch;
  }

  private Worked worked(Statement statement) {
    try {
      return Worked.of(subjects.work(statement, ClassProfile.EVERYTHING));
    } catch (UnreadableException beyond) {
      return Worked.failed("beyond what can be worked");
    } catch (StoppedException stopped) {
      return Worked.failed("stopped while it was worked");
    } catch (CheckFailedException ours) {
      return Worked.failed(
          "a check refuted a line, which is a mistake of the program: %s ; %s"
              .formatted(statement.polynomial(), statement.find()));
    }
  }

  private void tell(ComposingControl control, Picker picker, Tally tally, long most, int wanted) {
    control
        .listener()
        .screened(
            new Screened(
                ask,
                tally.drawn,
                most,
                tally.drawn - tally.unfit,
                tally.counts(),
                picker.rejected(),
                picker.picked().size(),
                wanted));
  }

  /** What was drawn so far. */
  private static final class Tally {

    private int drawn;
    private int unfit;
    private int worked;

    /** How many draws in a row gave nothing new. */
    private int idle;

    List<FilterCount> counts() {
      return List.of(
          new FilterCount(
              "numbers-fit",
              "the numbers drawn make a statement that is fit to be printed",
              drawn,
              unfit,
              OptionalLong.empty()));
    }
  }
}
