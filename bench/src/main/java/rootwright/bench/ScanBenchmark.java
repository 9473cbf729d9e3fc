package rootwright.bench;

import cc.redberry.rings.bigint.BigInteger;
import cc.redberry.rings.poly.PolynomialFactorDecomposition;
import cc.redberry.rings.poly.univar.UnivariateFactorization;
import cc.redberry.rings.poly.univar.UnivariatePolynomial;
import cc.redberry.rings.poly.univar.UnivariatePolynomialZ64;
import cc.redberry.rings.poly.univar.UnivariateSquareFreeFactorization;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.composing.scan.Scan;
import rootwright.composing.scan.ScanControl;
import rootwright.composing.scan.candidate.CoefficientBox;
import rootwright.composing.scan.candidate.CoefficientRange;
import rootwright.composing.scan.candidate.CompiledExpression;
import rootwright.composing.scan.filter.AnswerFilter;
import rootwright.composing.scan.filter.DistinctRoots;
import rootwright.composing.scan.filter.ExactTests;
import rootwright.composing.scan.filter.IntegerBetween;
import rootwright.composing.scan.filter.Irreducible;
import rootwright.composing.scan.filter.NoRationalRoot;
import rootwright.composing.scan.filter.PolynomialTests;
import rootwright.composing.scan.filter.Primitive;
import rootwright.composing.scan.filter.RealRootCount;
import rootwright.composing.scan.filter.WholeNumber;

/**
 * Candidates a second. The cubic filter asks for distinct roots, none of them rational, and an
 * integer Σ r²s over |a| ≤ 3, |b|, |c|, |d| ≤ 150; the loop over Rings tests a sample of the same
 * box candidate by candidate.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.Throughput)
@OutputTimeUnit(TimeUnit.SECONDS)
public class ScanBenchmark {

  static final int CUBICS = 6 * 301 * 301 * 301;
  static final int RECIPROCALS = 6 * 81 * 81 * 81;
  static final int QUARTICS = 41 * 41 * 41 * 41;
  static final int QUINTICS = 4 * 11 * 11 * 11 * 11 * 11;
  static final int SAMPLE = 2_000;

  private final ExactTests exact =
      new PolynomialTests(polynomial -> isIrreducible(rings(polynomial.primitive())));
  private final CoefficientBox cubicBox =
      CoefficientBox.upTo(3, 150).with(3, CoefficientRange.upTo(3));
  private final long[] sample = new long[SAMPLE];
  private final ExecutorService pool = Executors.newFixedThreadPool(1);

  private static MultivariatePolynomial e(int k) {
    return MultivariatePolynomial.unknown(k - 1);
  }

  /** Σ r²s = e1e2 − 3e3. */
  private static CompiledExpression sumOfSquareTimesOther() {
    return CompiledExpression.of(3, e(1).times(e(2)).minus(e(3).times(Rational.of(3))));
  }

  /** Draws the sample and checks that scan and loop agree on it. */
  @Setup
  public void draw() {
    SplittableRandom random = new SplittableRandom(150);
    for (int k = 0; k < SAMPLE; k++) {
      sample[k] = random.nextLong(cubicBox.candidates());
    }
    Scan scan = cubicScan();
    int passed = 0;
    for (long index : sample) {
      long[] ascending = cubicBox.coefficientsAt(index);
      passed += scan.filters().stream().allMatch(filter -> filter.passes(ascending)) ? 1 : 0;
    }
    int loop = naiveLoopOverRings();
    if (passed != loop) {
      throw new IllegalStateException("the scan passes " + passed + ", the loop " + loop);
    }
  }

  /** Ends the second thread. */
  @TearDown
  public void close() {
    pool.shutdown();
  }

  Scan cubicScan() {
    CompiledExpression expression = sumOfSquareTimesOther();
    return Scan.exhaustive(
        cubicBox,
        expression,
        List.of(
            new DistinctRoots(exact),
            new NoRationalRoot(exact),
            new AnswerFilter(expression, new WholeNumber())),
        20);
  }

  @Benchmark
  @OperationsPerInvocation(CUBICS)
  public long cubicsOneThread() {
    return cubicScan().run(ScanControl.alone()).accepted();
  }

  @Benchmark
  @OperationsPerInvocation(CUBICS)
  public long cubicsTwoThreads() {
    return cubicScan().run(ScanControl.shared(pool, 2)).accepted();
  }

  /** The three tests in the order of the scan, cheapest first, by a general-purpose library. */
  @Benchmark
  @OperationsPerInvocation(SAMPLE)
  public int naiveLoopOverRings() {
    int passed = 0;
    for (long index : sample) {
      long[] p = cubicBox.coefficientsAt(index);
      // Σ r²s = (3ad - bc)/a².
      if ((3 * p[3] * p[0] - p[2] * p[1]) % (p[3] * p[3]) == 0) {
        UnivariatePolynomial<BigInteger> polynomial = UnivariatePolynomialZ64.create(p).toBigPoly();
        if (UnivariateSquareFreeFactorization.isSquareFree(polynomial)
            && !hasLinearFactor(polynomial)) {
          passed++;
        }
      }
    }
    return passed;
  }

  /** All three tests on every candidate, whatever the others say. */
  @Benchmark
  @OperationsPerInvocation(SAMPLE)
  public int naiveLoopOverRingsAllTests() {
    int passed = 0;
    for (long index : sample) {
      long[] p = cubicBox.coefficientsAt(index);
      UnivariatePolynomial<BigInteger> polynomial = UnivariatePolynomialZ64.create(p).toBigPoly();
      boolean whole = (3 * p[3] * p[0] - p[2] * p[1]) % (p[3] * p[3]) == 0;
      boolean distinct = UnivariateSquareFreeFactorization.isSquareFree(polynomial);
      boolean rational = hasLinearFactor(polynomial);
      passed += whole && distinct && !rational ? 1 : 0;
    }
    return passed;
  }

  /** Σ 1/r² an integer from 0 to 999, distinct roots, none rational, primitive. */
  @Benchmark
  @OperationsPerInvocation(RECIPROCALS)
  public long reciprocalSquares() {
    CompiledExpression expression =
        CompiledExpression.of(
            3, e(2).power(2).minus(e(1).times(e(3)).times(Rational.TWO)), e(3).power(2));
    return Scan.exhaustive(
            CoefficientBox.upTo(3, 40).with(3, CoefficientRange.upTo(3)),
            expression,
            List.of(
                new AnswerFilter(expression, new IntegerBetween(0, 999)),
                new Primitive(),
                new DistinctRoots(exact),
                new NoRationalRoot(exact)),
            20)
        .run(ScanControl.alone())
        .accepted();
  }

  /** Monic irreducible quartics with four real roots. */
  @Benchmark
  @OperationsPerInvocation(QUARTICS)
  public long realQuartics() {
    return Scan.exhaustive(
            CoefficientBox.monicUpTo(4, 20),
            CompiledExpression.of(4, e(1)),
            List.of(new Irreducible(exact), new RealRootCount(4, exact)),
            20)
        .run(ScanControl.alone())
        .accepted();
  }

  /** Irreducible quintics, mostly by residues. */
  @Benchmark
  @OperationsPerInvocation(QUINTICS)
  public long irreducibleQuintics() {
    return Scan.exhaustive(
            CoefficientBox.upTo(5, 5).with(5, CoefficientRange.upTo(2)),
            CompiledExpression.of(5, e(1)),
            List.of(new Irreducible(exact)),
            20)
        .run(ScanControl.alone())
        .accepted();
  }

  private static UnivariatePolynomial<BigInteger> rings(Polynomial polynomial) {
    long[] ascending = new long[polynomial.degree() + 1];
    for (int k = 0; k < ascending.length; k++) {
      ascending[k] = polynomial.numerator(k).longValueExact();
    }
    return UnivariatePolynomialZ64.create(ascending).toBigPoly();
  }

  /** Only asked about polynomials without a rational root. */
  private static boolean isIrreducible(UnivariatePolynomial<BigInteger> polynomial) {
    PolynomialFactorDecomposition<UnivariatePolynomial<BigInteger>> factors =
        UnivariateFactorization.Factor(polynomial);
    return factors.size() == 1 && factors.getExponent(0) == 1;
  }

  private static boolean hasLinearFactor(UnivariatePolynomial<BigInteger> polynomial) {
    PolynomialFactorDecomposition<UnivariatePolynomial<BigInteger>> factors =
        UnivariateFactorization.Factor(polynomial);
    for (int k = 0; k < factors.size(); k++) {
      if (factors.get(k).degree() == 1) {
        return true;
      }
    }
    return false;
  }
}
