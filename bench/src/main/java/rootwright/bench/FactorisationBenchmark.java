package rootwright.bench;

import cc.redberry.rings.Rings;
import cc.redberry.rings.bigint.BigInteger;
import cc.redberry.rings.poly.PolynomialFactorDecomposition;
import cc.redberry.rings.poly.univar.UnivariateFactorization;
import cc.redberry.rings.poly.univar.UnivariatePolynomial;
import java.util.Arrays;
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
import rootwright.algebra.factor.Factorisation;
import rootwright.algebra.factor.RationalRoot;
import rootwright.algebra.factor.RationalRoots;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;

/** Factors over the rational numbers, beside the same library asked directly. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class FactorisationBenchmark {

  @Param({"rational", "cubics", "irreducible12", "four-and-eight", "unity12"})
  public String family;

  private Polynomial polynomial;
  private UnivariatePolynomial<BigInteger> same;

  @Setup
  public void choose() {
    polynomial =
        switch (family) {
          case "rational" ->
              Polynomial.withRoots(
                  List.of(Rational.of(1, 2), Rational.of(-3), Rational.of(7, 3), Rational.of(5)));
          case "cubics" ->
              Polynomial.ofDescending(1, -3, 1, 7).times(Polynomial.ofDescending(2, 1, -5, 3));
          case "irreducible12" -> Polynomial.ofDescending(1, 3, -7, 2, 0, 9, -4, 1, 8, -6, 5, 2, 7);
          case "four-and-eight" ->
              Polynomial.ofDescending(1, 2, -5, 1, 7)
                  .times(Polynomial.ofDescending(1, -1, 3, 0, 8, -2, 5, 4, 9));
          default -> Polynomial.monomial(Rational.ONE, 12).minus(Polynomial.ONE);
        };
    Polynomial whole = polynomial.primitive();
    BigInteger[] ascending = new BigInteger[whole.degree() + 1];
    Arrays.setAll(ascending, k -> new BigInteger(whole.numerator(k)));
    same = UnivariatePolynomial.create(Rings.Z, ascending);
  }

  @Benchmark
  public Factorisation factors() {
    return Factorisation.of(polynomial);
  }

  @Benchmark
  public List<RationalRoot> rationalRoots() {
    return RationalRoots.of(polynomial);
  }

  @Benchmark
  public PolynomialFactorDecomposition<UnivariatePolynomial<BigInteger>> rings() {
    return UnivariateFactorization.FactorInZ(same);
  }
}
