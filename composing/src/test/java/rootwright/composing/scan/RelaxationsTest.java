package rootwright.composing.scan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import org.junit.jupiter.api.Test;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.composing.scan.candidate.CoefficientBox;
import rootwright.composing.scan.candidate.CompiledExpression;
import rootwright.composing.scan.filter.AnswerFilter;
import rootwright.composing.scan.filter.CandidateFilter;
import rootwright.composing.scan.filter.DistinctRoots;
import rootwright.composing.scan.filter.Irreducible;
import rootwright.composing.scan.filter.NoRationalRoot;
import rootwright.composing.scan.filter.Primitive;
import rootwright.composing.scan.filter.RealRootCount;
import rootwright.composing.scan.filter.WholeNumber;

class RelaxationsTest {

  private static final long BUDGET = 1_000_000;

  @Test
  void emptyCubicScanIsToldThatSizeTwoGivesSix() {
    Scan scan =
        Scan.exhaustive(
            CoefficientBox.monicUpTo(3, 1),
            Expressions.sum(3),
            List.of(new Irreducible(BruteForce.EXACT), new RealRootCount(3, BruteForce.EXACT)),
            10);
    List<Relaxation> found = new Relaxations(scan, BUDGET, ScanControl.alone()).find();
    assertThat(found)
        .filteredOn(Relaxation.WiderBox.class::isInstance)
        .singleElement()
        .satisfies(
            wider -> {
              assertThat(wider.candidates()).isEqualTo(6);
              assertThat(((Relaxation.WiderBox) wider).box())
                  .isEqualTo(CoefficientBox.monicUpTo(3, 2));
            });
    assertThat(found)
        .filteredOn(Relaxation.WithoutFilter.class::isInstance)
        .extracting(relaxation -> ((Relaxation.WithoutFilter) relaxation).filter())
        .containsExactly("irreducible", "real-roots-3");
  }

  @Test
  void countsOfCandidatesThatFailOneFilterAloneAgreeWithLeavingItOut() {
    CompiledExpression expression = Expressions.sumOfSquareTimesOther(3);
    List<CandidateFilter> filters =
        List.of(
            new AnswerFilter(expression, new WholeNumber()),
            new Primitive(),
            new DistinctRoots(BruteForce.EXACT),
            new NoRationalRoot(BruteForce.EXACT),
            new RealRootCount(3, BruteForce.EXACT));
    Scan scan = Scan.exhaustive(CoefficientBox.upTo(3, 6), expression, filters, 0);
    ScanResult all = scan.with(Counting.LEAVE_ONE_OUT).run(ScanControl.alone());
    assertThat(all.accepted()).isEqualTo(scan.run(ScanControl.alone()).accepted()).isPositive();
    assertThat(all.counts())
        .extracting(ScanResult.FilterCount::rejected)
        .isEqualTo(
            scan.run(ScanControl.alone()).counts().stream()
                .map(ScanResult.FilterCount::rejected)
                .toList());
    for (int k = 0; k < filters.size(); k++) {
      List<CandidateFilter> others = new ArrayList<>(filters);
      CandidateFilter left = others.remove(k);
      long without = scan.with(others).run(ScanControl.alone()).accepted();
      ScanResult.FilterCount count =
          all.counts().stream()
              .filter(entry -> entry.name().equals(left.name()))
              .findFirst()
              .orElseThrow();
      assertThat(count.alone()).as(left.name()).hasValue(without - all.accepted());
    }
  }

  @Test
  void examplesOfARelaxationFailThatOneWishOnly() {
    Scan scan =
        Scan.exhaustive(
            CoefficientBox.monicUpTo(3, 1),
            Expressions.sum(3),
            List.of(new Irreducible(BruteForce.EXACT), new RealRootCount(3, BruteForce.EXACT)),
            10);
    for (Relaxation relaxation : new Relaxations(scan, BUDGET, ScanControl.alone()).find()) {
      assertThat(relaxation.examples()).isNotEmpty();
      if (relaxation instanceof Relaxation.WithoutFilter without) {
        for (Polynomial example : without.examples()) {
          boolean irreducible = BruteForce.isIrreducible(example);
          boolean real = BruteForce.realRoots(example) == 3;
          assertThat(irreducible).isNotEqualTo(real);
          assertThat(real).isEqualTo(without.filter().equals("irreducible"));
        }
      }
    }
  }

  @Test
  void weakerWishIsOfferedBeforeTheWishIsGivenUp() {
    // Σ r + 1/2 is never an integer for a monic polynomial over Z, but always a half.
    CompiledExpression halves =
        CompiledExpression.of(
            2,
            MultivariatePolynomial.unknown(0)
                .plus(MultivariatePolynomial.constant(Rational.of(1, 2))));
    Scan scan =
        Scan.exhaustive(
            CoefficientBox.monicUpTo(2, 3),
            halves,
            List.of(new AnswerFilter(halves, new WholeNumber())),
            10);
    assertThat(scan.run(ScanControl.alone()).accepted()).isZero();
    List<Relaxation> found = new Relaxations(scan, 100, ScanControl.alone()).find();
    assertThat(found.get(0))
        .isInstanceOfSatisfying(
            Relaxation.WeakerFilter.class,
            weaker -> {
              assertThat(weaker.weaker()).isEqualTo("answer-denominator-up-to-2");
              assertThat(weaker.candidates()).isEqualTo(49);
            });
    assertThat(found.get(1)).isInstanceOf(Relaxation.WithoutFilter.class);
    assertThat(found).hasSize(2);
  }

  @Test
  void ofABoxBeyondTheBudgetASampleIsLookedAtAndTheRelaxationSaysSo() throws Exception {
    // Over ten million cubics, and Σ r + 1/2 is a whole number for none of those with lead 1.
    CompiledExpression halves =
        CompiledExpression.of(
            3,
            MultivariatePolynomial.unknown(0)
                .plus(MultivariatePolynomial.constant(Rational.of(1, 2))));
    Scan scan =
        Scan.seeded(
            CoefficientBox.monicUpTo(3, 110),
            halves,
            List.of(new AnswerFilter(halves, new WholeNumber()), new Irreducible(BruteForce.EXACT)),
            5,
            41);
    assertThat(scan.box().candidates()).isGreaterThan(10_000_000);
    List<Relaxation> found = new Relaxations(scan, 20_000, ScanControl.alone()).find();
    assertThat(found)
        .isNotEmpty()
        .allSatisfy(
            relaxation ->
                assertThat(relaxation)
                    .isInstanceOfSatisfying(
                        Relaxation.InSample.class,
                        sample -> {
                          assertThat(sample.examined()).isBetween(5L, 200_000L);
                          assertThat(sample.all()).isEqualTo(scan.box().candidates());
                          assertThat(sample.examples()).isNotEmpty();
                        }));
    ExecutorService executor = Executors.newFixedThreadPool(2);
    try {
      assertThat(new Relaxations(scan, 20_000, ScanControl.shared(executor, 2)).find())
          .isEqualTo(found);
      Conflicts conflicts = new Conflicts(scan, 20_000, ScanControl.alone());
      assertThat(conflicts.isOfAll()).isFalse();
      assertThat(conflicts.find())
          .singleElement()
          .satisfies(wishes -> assertThat(wishes).singleElement().isInstanceOf(AnswerFilter.class));
    } finally {
      executor.shutdownNow();
    }
  }
}
