package rootwright.composing.scan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.composing.scan.candidate.CoefficientBox;
import rootwright.composing.scan.candidate.CoefficientRange;
import rootwright.composing.scan.candidate.CompiledExpression;
import rootwright.composing.scan.filter.AnswerFilter;
import rootwright.composing.scan.filter.CandidateFilter;
import rootwright.composing.scan.filter.DistinctRoots;
import rootwright.composing.scan.filter.GivenPredicate;
import rootwright.composing.scan.filter.IntegerBetween;
import rootwright.composing.scan.filter.Irreducible;
import rootwright.composing.scan.filter.NoRationalRoot;
import rootwright.composing.scan.filter.PositiveLead;
import rootwright.composing.scan.filter.Primitive;
import rootwright.composing.scan.filter.RealRootCount;
import rootwright.composing.scan.filter.WholeNumber;

class ScanTest {

  private static final long SEED = Long.getLong("rootwright.seed", 41L);

  private static final List<CandidateFilter> THREE_REAL_ROOTS =
      List.of(new Irreducible(BruteForce.EXACT), new RealRootCount(3, BruteForce.EXACT));

  private static Scan monicCubics(long size) {
    return Scan.exhaustive(
        CoefficientBox.monicUpTo(3, size), Expressions.sum(3), THREE_REAL_ROOTS, 100);
  }

  /** The cubics with an integer Σ r²s, distinct roots and none of them rational. */
  private static Scan cubics(long lead, long size) {
    CompiledExpression expression = Expressions.sumOfSquareTimesOther(3);
    return Scan.exhaustive(
        CoefficientBox.upTo(3, size).with(3, CoefficientRange.upTo(lead)),
        expression,
        List.of(
            new DistinctRoots(BruteForce.EXACT),
            new NoRationalRoot(BruteForce.EXACT),
            new AnswerFilter(expression, new WholeNumber())),
        50);
  }

  @Test
  void noMonicIrreducibleCubicWithCoefficientsUpToOneHasThreeRealRoots() {
    ScanResult result = monicCubics(1).run(ScanControl.alone());
    assertThat(result.isExhausted()).isTrue();
    assertThat(result.examined()).isEqualTo(27);
    assertThat(result.accepted()).isZero();
    assertThat(result.found()).isEmpty();
  }

  @Test
  void exactlySixMonicIrreducibleCubicsWithCoefficientsUpToTwoHaveThreeRealRoots() {
    ScanResult result = monicCubics(2).run(ScanControl.alone());
    assertThat(result.accepted()).isEqualTo(6);
    assertThat(result.found())
        .extracting(ScanResult.Found::polynomial)
        .hasSize(6)
        .contains(Polynomial.ofDescending(1, -2, -1, 1), Polynomial.ofDescending(1, -1, -2, 1));
  }

  @Test
  void scanFindsExactlyWhatATestOfEachCandidateFinds() {
    Scan scan = cubics(3, 4).with(new ScanOrder.Exhaustive(10_000));
    List<Long> expected = new ArrayList<>();
    for (long index = 0; index < scan.box().candidates(); index++) {
      Polynomial candidate = scan.box().polynomialAt(index);
      if (BruteForce.isSquarefree(candidate)
          && !BruteForce.hasRationalRoot(candidate)
          && scan.expression()
              .valueAt(scan.box().coefficientsAt(index))
              .orElseThrow()
              .isInteger()) {
        expected.add(index);
      }
    }
    ScanResult result = scan.run(ScanControl.alone());
    assertThat(result.found()).extracting(ScanResult.Found::index).isEqualTo(expected);
    assertThat(result.accepted()).isEqualTo(expected.size());
    assertThat(result.found()).allMatch(found -> found.value().isInteger());
  }

  @Test
  void countsOfTheFiltersAddUp() {
    ScanResult result = cubics(3, 20).run(ScanControl.alone());
    long left = result.examined();
    for (ScanResult.FilterCount count : result.counts()) {
      assertThat(count.seen()).isEqualTo(left);
      left -= count.rejected();
    }
    assertThat(left).isEqualTo(result.accepted());
    assertThat(result.counts())
        .extracting(ScanResult.FilterCount::name)
        .containsExactly("answer-integer", "distinct-roots", "no-rational-root");
  }

  @Test
  void resultDoesNotDependOnTheNumberOfThreads() {
    ExecutorService pool = Executors.newFixedThreadPool(3);
    try {
      for (Scan scan :
          List.of(
              cubics(3, 40),
              cubics(3, 40).with(new ScanOrder.Seeded(30, SEED)),
              cubics(2, 30).with(Counting.LEAVE_ONE_OUT))) {
        ScanResult single = scan.run(ScanControl.alone());
        for (int workers = 2; workers <= 4; workers++) {
          ScanResult shared = scan.run(ScanControl.shared(pool, workers));
          assertThat(shared).as("seed %d, %d workers", SEED, workers).isEqualTo(single);
        }
      }
    } finally {
      pool.shutdown();
    }
  }

  @Test
  void stoppedAndResumedScanGivesTheResultOfAnUninterruptedOne() {
    for (Scan scan :
        List.of(
            cubics(3, 40),
            cubics(3, 40).with(new ScanOrder.Seeded(500, SEED)),
            cubics(3, 40).with(Counting.LEAVE_ONE_OUT))) {
      ScanResult whole = scan.run(ScanControl.alone());
      AtomicBoolean stop = new AtomicBoolean();
      ScanControl brief = ScanControl.alone().telling(state -> stop.set(true)).until(stop::get);
      ScanResult part = scan.run(brief);
      int stops = 0;
      while (part.ending() == Ending.STOPPED) {
        stops++;
        assertThat(part.examined()).isLessThan(scan.box().candidates());
        stop.set(false);
        part = scan.resume(ScanState.parse(part.state().toText()), brief);
      }
      assertThat(stops).isPositive();
      assertThat(part).isEqualTo(whole);
    }
  }

  @Test
  void rowsOfAnUnfinishedTaskAreScreenedAgainNotLost() {
    Scan scan = cubics(3, 40);
    AtomicLong rows = new AtomicLong();
    ScanResult part =
        scan.run(ScanControl.alone().until(() -> rows.incrementAndGet() % 5_000 == 0));
    assertThat(part.ending()).isEqualTo(Ending.STOPPED);
    assertThat(scan.resume(part.state(), ScanControl.alone()))
        .isEqualTo(scan.run(ScanControl.alone()));
  }

  @Test
  void sameSeedGivesTheSameCandidatesAndAnotherSeedOthers() {
    Scan scan = cubics(3, 150).with(new ScanOrder.Seeded(20, SEED));
    ScanResult first = scan.run(ScanControl.alone());
    assertThat(first.ending()).isEqualTo(Ending.ENOUGH);
    assertThat(first.found()).hasSize(20);
    assertThat(scan.run(ScanControl.alone())).isEqualTo(first);
    ScanResult other = scan.with(new ScanOrder.Seeded(20, SEED + 1)).run(ScanControl.alone());
    assertThat(other.found()).isNotEqualTo(first.found());
  }

  @Test
  void seededScanTakesNeighboursOnlyWhenItMust() {
    Scan scan = cubics(3, 30).with(new ScanOrder.Seeded(200, SEED));
    ScanResult result = scan.run(ScanControl.alone());
    Set<Polynomial> rows = new HashSet<>();
    for (ScanResult.Found found : result.found()) {
      Polynomial constant = Polynomial.constant(found.polynomial().coefficient(0));
      rows.add(found.polynomial().minus(constant));
    }
    assertThat(rows).hasSize(200);
  }

  @Test
  void seededScanOfTooPoorABoxFindsEverything() {
    Scan all = cubics(2, 3).with(new ScanOrder.Exhaustive(10_000));
    ScanResult seeded = all.with(new ScanOrder.Seeded(10_000, SEED)).run(ScanControl.alone());
    assertThat(seeded.ending()).isEqualTo(Ending.EXHAUSTED);
    assertThat(seeded.found())
        .containsExactlyInAnyOrderElementsOf(all.run(ScanControl.alone()).found());
  }

  @Test
  void seededWalkVisitsEveryRowOnce() {
    for (long size = 1; size <= 9; size++) {
      CoefficientBox box =
          CoefficientBox.upTo(2, size).with(0, CoefficientRange.upTo(size * 3_000));
      SeededWalk walk = new SeededWalk(box, SEED + size);
      Set<Long> met = new HashSet<>();
      for (long position = 0; position < box.rows(); position++) {
        met.add(walk.rowAt(position));
      }
      assertThat(met).hasSize((int) box.rows()).allMatch(row -> row >= 0 && row < box.rows());
    }
  }

  @Test
  void wishesBeyondSixtyFourBitsAreStillExact() {
    long size = 2_000_000L;
    CompiledExpression cubes = Expressions.sumOfCubes(3);
    CoefficientBox box =
        CoefficientBox.descending(
            new CoefficientRange(1, 2),
            new CoefficientRange(size * size, size * size + 1),
            CoefficientRange.upTo(1),
            CoefficientRange.upTo(3));
    Scan scan =
        Scan.exhaustive(
            box,
            cubes,
            List.of(
                new AnswerFilter(cubes, new WholeNumber()), new NoRationalRoot(BruteForce.EXACT)),
            1_000);
    List<Polynomial> expected = new ArrayList<>();
    for (long index = 0; index < box.candidates(); index++) {
      if (cubes.valueAt(box.coefficientsAt(index)).orElseThrow().isInteger()
          && !BruteForce.hasRationalRoot(box.polynomialAt(index))) {
        expected.add(box.polynomialAt(index));
      }
    }
    ScanResult result = scan.run(ScanControl.alone());
    assertThat(expected).isNotEmpty();
    assertThat(result.found())
        .extracting(ScanResult.Found::polynomial)
        .containsExactlyElementsOf(expected);
    assertThat(result.found()).allMatch(found -> found.value().numerator().bitLength() > 100);
  }

  @Test
  void filtersAreAskedFromTheCheapestToTheDearest() {
    CompiledExpression expression = Expressions.sumOfReciprocalSquares();
    Scan scan =
        Scan.seeded(
            CoefficientBox.upTo(3, 9),
            expression,
            List.of(
                new GivenPredicate("fresh", "Not used before.", polynomial -> true),
                new RealRootCount(3, BruteForce.EXACT),
                new Irreducible(BruteForce.EXACT),
                new DistinctRoots(BruteForce.EXACT),
                new Primitive(),
                new AnswerFilter(expression, new IntegerBetween(0, 999)),
                new PositiveLead()),
            5,
            SEED);
    assertThat(scan.filters())
        .extracting(CandidateFilter::name)
        .containsExactly(
            "positive-lead",
            "answer-defined",
            "answer-between-0-and-999",
            "primitive",
            "distinct-roots",
            "irreducible",
            "real-roots-3",
            "fresh");
    assertThat(scan.run(ScanControl.alone()).found()).hasSize(5);
  }

  @Test
  void stateOfAnotherScanAndACutStateAreRefused() {
    ScanState state = monicCubics(1).run(ScanControl.alone()).state();
    assertThatIllegalArgumentException()
        .isThrownBy(() -> monicCubics(2).resume(state, ScanControl.alone()))
        .withMessageContaining(state.identity());
    String text = state.toText();
    assertThat(ScanState.parse(text)).isEqualTo(state);
    assertThatIllegalArgumentException()
        .isThrownBy(() -> ScanState.parse(text.substring(0, text.length() - 5)))
        .withMessageContaining("not a whole scan state");
  }

  @Test
  void twoFiltersWithOneNameAreRefused() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> monicCubics(1).with(List.of(new Primitive(), new Primitive())))
        .withMessageContaining("primitive");
  }

  @Test
  void failureOfAGivenPredicateReachesTheCaller() {
    ExecutorService pool = Executors.newFixedThreadPool(2);
    try {
      CandidateFilter failing =
          new GivenPredicate(
              "failing",
              "Fails.",
              polynomial -> {
                throw new IllegalStateException("no shelf");
              });
      assertThatThrownBy(
              () -> cubics(3, 40).with(List.of(failing)).run(ScanControl.shared(pool, 3)))
          .hasStackTraceContaining("no shelf");
    } finally {
      pool.shutdown();
    }
  }
}
