package rootwright.bench;

import cc.redberry.rings.bigint.BigInteger;
import cc.redberry.rings.poly.multivar.MultivariatePolynomial;
import cc.redberry.rings.poly.multivar.MultivariateResultants;
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
import rootwright.algebra.roots.PairPolynomial;
import rootwright.algebra.roots.TransformedPolynomial;

/**
 * The polynomial of r + s or rs over the pairs of roots, beside a resultant in two unknowns in
 * Rings. The resultant has all n² ordered pairs as roots; its square root is not even taken.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class PairPolynomialBenchmark {

  @Param({"4", "8", "12"})
  public int degree;

  @Param({"r+s", "rs"})
  public String pairs;

  private Polynomial polynomial;
  private MultivariatePolynomial<BigInteger> first;
  private MultivariatePolynomial<BigInteger> second;

  @Setup
  public void prepare() {
    polynomial = SamplePolynomials.monic(degree);
    StringBuilder plain = new StringBuilder("0");
    StringBuilder other = new StringBuilder("0");
    for (int k = 0; k <= degree; k++) {
      String coefficient = "+(" + polynomial.numerator(k) + ")*";
      plain.append(coefficient).append("y^").append(k);
      other.append(coefficient);
      if (pairs.equals("r+s")) {
        other.append("(x-y)^").append(k);
      } else {
        other.append("x^").append(k).append("*y^").append(degree - k);
      }
    }
    first = MultivariatePolynomial.parse(plain.toString(), "x", "y");
    second = MultivariatePolynomial.parse(other.toString(), "x", "y");
    SamplePolynomials.requireEqual(expected(), theirs());
  }

  /** All n² pairs: the pairs of different roots twice, and each root with itself. */
  private Object expected() {
    Polynomial self =
        pairs.equals("r+s")
            ? TransformedPolynomial.of(polynomial, Polynomial.ofDescending(2, 0))
            : TransformedPolynomial.squares(polynomial);
    Polynomial all = ours().power(2).times(self);
    MultivariatePolynomial<BigInteger> sum = first.createZero();
    for (int k = 0; k <= all.degree(); k++) {
      sum.add(MultivariatePolynomial.parse("(" + all.numerator(k) + ")*x^" + k, "x", "y"));
    }
    return theirs().lc().signum() < 0 ? sum.negate() : sum;
  }

  @Benchmark
  public Polynomial ours() {
    return pairs.equals("r+s")
        ? PairPolynomial.sums(polynomial)
        : PairPolynomial.products(polynomial);
  }

  @Benchmark
  public MultivariatePolynomial<BigInteger> theirs() {
    return MultivariateResultants.Resultant(first, second, 1);
  }
}
