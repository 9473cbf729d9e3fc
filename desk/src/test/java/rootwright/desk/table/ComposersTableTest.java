package rootwright.desk.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.OptionalInt;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rootwright.algebra.number.Rational;
import rootwright.composing.blueprint.AnswerWish;
import rootwright.composing.blueprint.Blueprint;
import rootwright.composing.blueprint.Composed;
import rootwright.composing.blueprint.ComposingListener;
import rootwright.composing.blueprint.Composition;
import rootwright.composing.blueprint.PolynomialWish;
import rootwright.composing.blueprint.RealWish;
import rootwright.composing.blueprint.RootsWish;
import rootwright.composing.blueprint.Screened;
import rootwright.composing.blueprint.WorkingWish;
import rootwright.composing.level.Level;
import rootwright.composing.twin.Twin;
import rootwright.desk.table.ComposersTable.Attention;
import rootwright.working.kind.Kinds;
import rootwright.working.problem.Statement;

class ComposersTableTest {

  /**
   * Billions of candidates, and none meets the wish: the squares of the roots have a product of 1
   * at least, so their mean is 1 at least.
   */
  private static final Blueprint ENDLESS =
      Blueprint.of("Σ r^2", 4, 5, 1)
          .withPolynomial(
              new PolynomialWish(4, 300, 1, 1, RootsWish.IRREDUCIBLE, new RealWish.All()))
          .withAnswer(new AnswerWish.Wanted(Rational.of(3)))
          .withWorking(WorkingWish.USUAL.withSlips(OptionalInt.of(0)));

  @TempDir Path folder;

  private final ComposersTable table = new ComposersTable(new Kinds());

  private static Statement statement(Composed composed) {
    return Statement.of(composed.statement().polynomial(), composed.statement().find());
  }

  @Test
  void interruptingTheCallerStopsAnEndlessScan() throws Exception {
    Thread caller = Thread.currentThread();
    Composition composition =
        table.compose(
            ENDLESS,
            Set.of(),
            Attention.NONE.telling(
                new ComposingListener() {
                  @Override
                  public void screened(Screened sofar) {
                    if (sofar.examined() > 0) {
                      caller.interrupt();
                    }
                  }

                  @Override
                  public void found(Composed problem) {}
                }));
    assertThat(Thread.interrupted()).isTrue();
    assertThat(composition.ending()).isEqualTo(Composition.Ending.STOPPED);
  }

  @Test
  void aStoppedOrderGoesOnFromItsFile() throws Exception {
    Path file = folder.resolve("order.txt");
    Screened first = stopAfterSomeTasks(file);
    assertThat(file).content().contains("scan-state 1").contains("| ask: \"Σ r^2\"");
    Screened second = stopAfterSomeTasks(file);
    assertThat(second.examined()).isGreaterThan(first.examined());
    table.progressFile(file, ENDLESS).finish();
    assertThat(file).doesNotExist();
  }

  /** The last that is heard of the order before it ends. */
  private Screened stopAfterSomeTasks(Path file) throws Exception {
    ScanFile kept = table.progressFile(file, ENDLESS);
    AtomicInteger tasks = new AtomicInteger();
    Screened[] last = new Screened[1];
    Composition composition =
        table.compose(
            ENDLESS,
            Set.of(),
            Attention.NONE
                .keepingIn(kept)
                .until(() -> tasks.get() > 5)
                .telling(
                    new ComposingListener() {
                      @Override
                      public void screened(Screened sofar) {
                        tasks.incrementAndGet();
                        last[0] = sofar;
                      }

                      @Override
                      public void found(Composed problem) {}
                    }));
    assertThat(composition.ending()).isEqualTo(Composition.Ending.STOPPED);
    kept.write();
    return last[0];
  }

  @Test
  void aFileOfAnotherOrderIsNotGoneOnWith() throws Exception {
    Path file = folder.resolve("order.txt");
    table.progressFile(file, ENDLESS).write();
    assertThatThrownBy(() -> table.progressFile(file, ENDLESS.withSeed(2)))
        .hasMessageContaining("belongs to another order");
    Files.writeString(file, "my notes\n");
    assertThatThrownBy(() -> table.progressFile(file, ENDLESS))
        .hasMessageContaining("is no file of a stopped order");
  }

  @Test
  void nothingOnAShelfIsComposedNorATwinOfIt() throws Exception {
    Blueprint order = Blueprint.of("Σ r^2", 3, 3, 4);
    Composition first = table.compose(order, Set.of(), Attention.NONE);
    Path list = folder.resolve("list.txt");
    StringBuilder lines = new StringBuilder();
    for (Composed composed : first.problems()) {
      Statement statement = statement(composed);
      lines.append(statement.polynomial()).append(" ; ").append(statement.find()).append('\n');
    }
    Files.writeString(list, lines);
    Set<String> known = table.fingerprints(Set.of(list));
    assertThat(known).hasSize(3);
    Composition second = table.compose(order, known, Attention.NONE);
    assertThat(second.problems()).hasSize(3);
    for (Composed composed : second.problems()) {
      assertThat(known).doesNotContain(table.fingerprint(statement(composed)));
    }
  }

  @Test
  void oneMoreIsAnotherProblemByTheSameOrder() throws Exception {
    Blueprint order = Blueprint.of("Π (1 + r)", 3, 2, 4);
    Set<String> known = new HashSet<>();
    for (Composed composed : table.compose(order, Set.of(), Attention.NONE).problems()) {
      known.add(table.fingerprint(statement(composed)));
    }
    Composition more = table.oneMore(order, known, 5, Attention.NONE);
    assertThat(more.problems()).hasSize(1);
    assertThat(known).doesNotContain(table.fingerprint(statement(more.problems().get(0))));
  }

  @Test
  void aHarderProblemHasAHigherLevel() throws Exception {
    Statement easy = Statement.of("x^3 - 6x^2 + 5x - 1", "Σ r^2");
    Composition harder = table.harder(easy, Set.of(), 3, Attention.NONE);
    assertThat(harder.problems()).hasSize(1);
    assertThat(Level.of(harder.problems().get(0).solution()).orElseThrow().number())
        .isGreaterThan(2);
  }

  @Test
  void theEstimateCountsWhatEveryWishLeaves() throws Exception {
    var estimate = table.estimate(Blueprint.of("Σ 1/r^2", 3, 5, 1), 20);
    var counts = estimate.asks().get(0).scan().counts();
    assertThat(counts).isNotEmpty();
    for (int k = 1; k < counts.size(); k++) {
      assertThat(counts.get(k).seen())
          .isEqualTo(counts.get(k - 1).seen() - counts.get(k - 1).rejected());
    }
    assertThat(estimate.passing()).isPositive().isLessThan(estimate.candidates());
  }

  @Test
  void theRelationOfTwoProblemsIsNamed() throws Exception {
    Statement anchor = Statement.of("2x^3 - 6x^2 + x + 5", "Σ r^2");
    assertThat(
            table.relation(anchor, Statement.of("2x^3 + 6x^2 + x - 5", "Σ r^2")).map(Twin::words))
        .contains("mirror image, same key 8");
    assertThat(table.relation(anchor, Statement.of("x^3 - 4x + 1", "Σ r^2"))).isEmpty();
  }
}
