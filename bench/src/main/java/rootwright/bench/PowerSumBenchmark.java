package rootwright.bench;

import cc.redberry.rings.bigint.BigInteger;
import cc.redberry.rings.poly.univar.UnivariateDivision;
import cc.redberry.rings.poly.univar.UnivariatePolynomial;
import cc.redberry.rings.poly.univar.UnivariatePolynomialArithmetic;
import cc.redberry.rings.poly.univar.UnivariatePolynomialZp64;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.roots.PowerSum;
import rootwright.algebra.roots.PowerSumResidue;
import rootwright.algebra.roots.PowerSums;

/** One power sum of the roots, exact or modulo a prime, beside x^k mod P and a trace in Rings. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class PowerSumBenchmark {

  private static final long PRIME = 1_000_000_007L;
  private static final long MERSENNE = (1L << 61) - 1;

  @Param({"3", "5", "12"})
  public int degree;

  @Param({"100", "1000", "100000", "mod 10^9+7", "mod 2^61-1"})
  public String asked;

  private Polynomial polynomial;
  private java.math.BigInteger exponent;
  private long modulus;
  private UnivariatePolynomial<BigInteger> library;
  private UnivariatePolynomialZp64 libraryModulo;
  private BigInteger[] sums;
  private long[] sumsModulo;

  @Setup
  public void prepare() {
    polynomial = SamplePolynomials.monic(degree);
    boolean modular = asked.startsWith("mod");
    modulus = asked.endsWith("7") ? PRIME : MERSENNE;
    exponent = modular ? java.math.BigInteger.TEN.pow(18) : new java.math.BigInteger(asked);
    library = SamplePolynomials.toRings(polynomial);
    List<Rational> first = PowerSums.of(polynomial).upTo(degree - 1);
    sums = first.stream().map(s -> new BigInteger(s.numerator())).toArray(BigInteger[]::new);
    if (modular) {
      java.math.BigInteger m = java.math.BigInteger.valueOf(modulus);
      long[] ascending = new long[degree + 1];
      for (int k = 0; k <= degree; k++) {
        ascending[k] = polynomial.numerator(k).mod(m).longValueExact();
      }
      libraryModulo = UnivariatePolynomialZp64.create(modulus, ascending);
      sumsModulo = first.stream().mapToLong(s -> s.numerator().mod(m).longValueExact()).toArray();
    }
    SamplePolynomials.requireEqual(ours(), theirs());
  }

  @Benchmark
  public Object ours() {
    PowerSums all = PowerSums.of(polynomial);
    return libraryModulo == null
        ? ((PowerSum.Exact) all.exact(exponent)).value().numerator()
        : ((PowerSumResidue.Residue) all.modulo(exponent, java.math.BigInteger.valueOf(modulus)))
            .value();
  }

  @Benchmark
  public Object theirs() {
    if (libraryModulo != null) {
      UnivariatePolynomialZp64 power =
          UnivariatePolynomialArithmetic.createMonomialMod(
              exponent.longValueExact(),
              libraryModulo,
              UnivariateDivision.fastDivisionPreConditioning(libraryModulo));
      long trace = 0;
      for (int k = 0; k <= power.degree(); k++) {
        trace = power.ring.add(trace, power.ring.multiply(power.get(k), sumsModulo[k]));
      }
      return trace;
    }
    UnivariatePolynomial<BigInteger> power =
        UnivariatePolynomialArithmetic.createMonomialMod(
            exponent.longValueExact(),
            library,
            UnivariateDivision.fastDivisionPreConditioning(library));
    BigInteger trace = BigInteger.ZERO;
    for (int k = 0; k <= power.degree(); k++) {
      trace = trace.add(power.get(k).multiply(sums[k]));
    }
    return trace;
  }
}
