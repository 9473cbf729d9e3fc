package rootwright.desk.table;

import java.io.IOException;
import java.math.BigInteger;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.BooleanSupplier;
import rootwright.algebra.notation.UnreadableException;
import rootwright.bank.shelf.Shelf;
import rootwright.bank.shelf.ShelfTwin;
import rootwright.composing.blueprint.Blueprint;
import rootwright.composing.blueprint.Composer;
import rootwright.composing.blueprint.ComposingControl;
import rootwright.composing.blueprint.ComposingListener;
import rootwright.composing.blueprint.Composition;
import rootwright.composing.blueprint.OrderEstimate;
import rootwright.composing.blueprint.PolynomialWish;
import rootwright.composing.blueprint.ScanBook;
import rootwright.composing.blueprint.Siblings;
import rootwright.composing.climb.Climb;
import rootwright.composing.climb.Climber;
import rootwright.composing.climb.Harder;
import rootwright.composing.scan.ScanControl;
import rootwright.composing.twin.Fingerprint;
import rootwright.composing.twin.Twin;
import rootwright.working.Subjects;
import rootwright.working.kind.Kinds;
import rootwright.working.problem.Statement;

/** What a coach does at the composer's table. Safe to use from several threads. */
public final class ComposersTable {

  private final Composer composer;
  private final Siblings siblings;
  private final Climber climber;
  private final Harder harder;
  private final Subjects subjects;

  /** With the kinds of ask to work candidates by. */
  public ComposersTable(Kinds kinds) {
    composer = new Composer(kinds);
    siblings = new Siblings(kinds);
    climber = new Climber(kinds);
    harder = new Harder(kinds);
    subjects = new Subjects(kinds);
  }

  /** An order as YAML that {@link #readBlueprint} reads back. */
  public String blueprintAsYaml(Blueprint blueprint) {
    return BlueprintYaml.of(blueprint);
  }

  /**
   * Reads an order from YAML or JSON; what it does not say is as usual.
   *
   * @throws UnreadableBlueprintException if something cannot be read; names the line and the mend
   */
  public Blueprint readBlueprint(String text) throws UnreadableBlueprintException {
    return BlueprintReader.read(text);
  }

  /**
   * Fills an order with all processors of the machine. Interrupting the calling thread, or the
   * caller's own word, stops it; what is found by then is returned.
   *
   * @param known fingerprints of problems to stay away from
   * @throws UnreadableException if the ask cannot be read
   * @throws rootwright.composing.blueprint.ContradictoryBlueprintException if the order contradicts
   *     itself
   */
  public Composition compose(Blueprint blueprint, Set<String> known, Attention attention)
      throws UnreadableException {
    return withWorkers(attention, control -> composer.compose(blueprint, known, control));
  }

  /**
   * Opens a file in which an order keeps how far it is; if it exists, the order goes on from there.
   *
   * @throws IllegalArgumentException if the file belongs to another order or is something else
   * @throws IOException if it cannot be read
   */
  public ScanFile progressFile(Path file, Blueprint blueprint) throws IOException {
    return ScanFile.open(file, blueprintAsYaml(blueprint));
  }

  /**
   * Finds problems of the same kind and level with other numbers; another seed gives others.
   *
   * @throws UnreadableException if the problem cannot be read
   * @throws rootwright.composing.blueprint.ContradictoryBlueprintException if it has no single
   *     answer
   */
  public Composition siblings(Statement statement, int many, long seed, Attention attention)
      throws UnreadableException {
    return withWorkers(attention, control -> siblings.of(statement, many, seed, control));
  }

  /**
   * One more problem by the same order, unlike those that are there.
   *
   * @param known fingerprints of the problems that are there and of those to stay away from
   * @param seed another seed than the order's gives other candidates
   * @throws UnreadableException if the ask cannot be read
   */
  public Composition oneMore(Blueprint blueprint, Set<String> known, long seed, Attention attention)
      throws UnreadableException {
    return compose(blueprint.withMany(1).withSeed(seed), known, attention);
  }

  /**
   * A problem of the next level: the same ask with other numbers if that can be so hard, else the
   * nearest ask of its kind that can.
   *
   * @param known fingerprints of problems to stay away from
   * @throws UnreadableException if the problem cannot be read
   * @throws rootwright.composing.blueprint.ContradictoryBlueprintException if it has the highest
   *     level already
   */
  public Composition harder(Statement statement, Set<String> known, long seed, Attention attention)
      throws UnreadableException {
    return withWorkers(attention, control -> harder.than(statement, seed, known, control));
  }

  /**
   * Five problems from a read-off to a hard one, each adding one idea to those before it.
   *
   * @param degree the degree of every polynomial
   * @param size the largest coefficient by size
   * @param kinds the kinds of ask that may come up after the read-off; empty for values
   * @param known fingerprints of problems to stay away from
   * @throws UnreadableException never for the asks of the house
   * @throws rootwright.composing.blueprint.ContradictoryBlueprintException if there can be no such
   *     polynomials
   */
  public Climb climb(
      int degree, int size, Set<String> kinds, long seed, Set<String> known, Attention attention)
      throws UnreadableException {
    PolynomialWish usual = PolynomialWish.USUAL;
    PolynomialWish wish =
        usual
            .withDegree(degree)
            .withSize(size)
            .withLead(1, Math.max(1, Math.min(size, usual.largestLead())));
    return withWorkers(attention, control -> climber.climb(wish, kinds, seed, known, control));
  }

  /**
   * How two problems are the same in other clothes, or shifted; empty if they are not related.
   *
   * @throws UnreadableException if a problem cannot be read
   */
  public Optional<Twin> relation(Statement earlier, Statement later) throws UnreadableException {
    return Twin.relation(subjects.read(earlier), subjects.read(later));
  }

  /**
   * The problems on a shelf to which a problem is related, with how.
   *
   * @throws UnreadableException if the problem cannot be read
   * @throws IOException if the shelf cannot be read
   */
  public List<ShelfTwin> relations(Path shelf, Statement later)
      throws UnreadableException, IOException {
    return new Shelf(shelf, subjects).twins(subjects.read(later));
  }

  /**
   * Looks at a sample of the candidates of an order for about so many milliseconds: how many each
   * wish leaves, and how long it may take.
   *
   * @throws UnreadableException if the ask cannot be read
   * @throws rootwright.composing.blueprint.ContradictoryBlueprintException if the order contradicts
   *     itself
   */
  public OrderEstimate estimate(Blueprint blueprint, int milliseconds) throws UnreadableException {
    return composer.estimate(blueprint, System::nanoTime, milliseconds * 1_000_000L);
  }

  /** How many seconds an order may take at most on this machine, by an estimate. */
  public BigInteger secondsAtMost(OrderEstimate estimate) {
    return estimate
        .nanosecondsAtMost(Runtime.getRuntime().availableProcessors())
        .divide(BigInteger.valueOf(1_000_000_000L));
  }

  /**
   * By what a composer knows a problem in whatever clothes.
   *
   * @throws UnreadableException if the problem cannot be read
   */
  public String fingerprint(Statement statement) throws UnreadableException {
    return Fingerprint.of(subjects.read(statement)).text();
  }

  /**
   * The fingerprints of all problems in files, shelves or plain lists.
   *
   * @throws IOException if a file cannot be read
   */
  public Set<String> fingerprints(Iterable<Path> files) throws IOException {
    Set<String> known = new HashSet<>();
    for (Path file : files) {
      known.addAll(new Shelf(file, subjects).fingerprints());
    }
    return known;
  }

  /** Something that composes. */
  private interface Composing<T> {
    T with(ComposingControl control) throws UnreadableException;
  }

  private static <T> T withWorkers(Attention attention, Composing<T> composing)
      throws UnreadableException {
    Thread caller = Thread.currentThread();
    int workers = Runtime.getRuntime().availableProcessors();
    ExecutorService executor = Executors.newFixedThreadPool(workers);
    // Kept, since a caller that waits for the workers does not show that it was interrupted.
    AtomicBoolean interrupted = new AtomicBoolean();
    try {
      ScanControl scan =
          ScanControl.shared(executor, workers)
              .until(
                  () -> {
                    if (caller.isInterrupted()) {
                      interrupted.set(true);
                    }
                    return interrupted.get() || attention.stopped().getAsBoolean();
                  });
      return composing.with(new ComposingControl(scan, attention.listener(), attention.book()));
    } finally {
      executor.shutdownNow();
    }
  }

  /**
   * Who listens while an order is filled.
   *
   * @param listener is told how far it is and of every problem as soon as it is found
   * @param stopped may stop it
   * @param book where its progress is kept, to go on from later
   */
  public record Attention(ComposingListener listener, BooleanSupplier stopped, ScanBook book) {

    /** Nobody listens. */
    public static final Attention NONE =
        new Attention(ComposingListener.NOBODY, () -> false, ScanBook.NONE);

    /** The same with another listener. */
    public Attention telling(ComposingListener other) {
      return new Attention(other, stopped, book);
    }

    /** The same with another say in stopping. */
    public Attention until(BooleanSupplier other) {
      return new Attention(listener, other, book);
    }

    /** The same keeping its progress elsewhere. */
    public Attention keepingIn(ScanBook other) {
      return new Attention(listener, stopped, other);
    }
  }
}
