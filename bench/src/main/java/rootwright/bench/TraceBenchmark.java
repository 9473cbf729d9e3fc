package rootwright.bench;

import cc.redberry.rings.Rational;
import cc.redberry.rings.Rings;
import cc.redberry.rings.bigint.BigInteger;
import cc.redberry.rings.poly.univar.UnivariateDivision;
import cc.redberry.rings.poly.univar.UnivariateGCD;
import cc.redberry.rings.poly.univar.UnivariatePolynomial;
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
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.roots.PowerSums;
import rootwright.algebra.roots.ResidueAlgebra;
import rootwright.algebra.roots.RootValue;

/** Σ A(r)/B(r) over the roots, beside an extended gcd over Q and a trace in Rings. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class TraceBenchmark {

  @Param({"3", "8", "12"})
  public int degree;

  @Param({"r/(r^2+1)", "dense"})
  public String quotient;

  private Polynomial polynomial;
  private Polynomial over;
  private Polynomial under;
  private UnivariatePolynomial<Rational<BigInteger>> libraryPolynomial;
  private UnivariatePolynomial<Rational<BigInteger>> libraryOver;
  private UnivariatePolynomial<Rational<BigInteger>> libraryUnder;
  private List<Rational<BigInteger>> sums;

  @Setup
  public void prepare() {
    polynomial = SamplePolynomials.monic(degree);
    boolean dense = quotient.equals("dense");
    over = dense ? SamplePolynomials.dense(degree - 1, 1) : Polynomial.X;
    under = dense ? SamplePolynomials.dense(degree - 1, 2) : Polynomial.ofDescending(1, 0, 1);
    libraryPolynomial = rational(polynomial);
    libraryOver = rational(over);
    libraryUnder = rational(under);
    sums =
        PowerSums.of(polynomial).upTo(degree - 1).stream()
            .map(s -> Rings.Q.mkNumerator(new BigInteger(s.numerator())))
            .toList();
    SamplePolynomials.requireEqual(ours(), theirs());
  }

  private static UnivariatePolynomial<Rational<BigInteger>> rational(Polynomial polynomial) {
    return SamplePolynomials.toRings(polynomial).mapCoefficients(Rings.Q, Rings.Q::mkNumerator);
  }

  @Benchmark
  public Object ours() {
    return ((RootValue.Exact) ResidueAlgebra.of(polynomial).trace(over, under)).value();
  }

  @Benchmark
  public Object theirs() {
    UnivariatePolynomial<Rational<BigInteger>>[] bezout =
        UnivariateGCD.PolynomialExtendedGCD(libraryUnder, libraryPolynomial);
    UnivariatePolynomial<Rational<BigInteger>> value =
        UnivariateDivision.remainder(
            bezout[1].clone().multiply(libraryOver), libraryPolynomial, false);
    Rational<BigInteger> trace = Rings.Q.getZero();
    for (int k = 0; k <= value.degree(); k++) {
      trace = trace.add(value.get(k).multiply(sums.get(k)));
    }
    return trace.divide(bezout[0].cc());
  }
}
