package rootwright.bench;

import cc.redberry.rings.bigint.BigInteger;
import cc.redberry.rings.poly.multivar.MonomialOrder;
import cc.redberry.rings.poly.multivar.MultivariateDivision;
import cc.redberry.rings.poly.multivar.MultivariatePolynomial;
import java.util.ArrayList;
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
import rootwright.algebra.polynomial.RationalFunction;
import rootwright.algebra.roots.Orbit;
import rootwright.algebra.roots.OrbitPolynomial;

/**
 * The orbit polynomial of an expression that is not symmetric, beside the remainders of its formal
 * coefficients modulo the Cauchy modules in Rings, which is handed images and modules ready-made:
 * so {@code ours} is handed the orbit, {@code oursWithOrbit} finds it first.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class ResolventBenchmark {

  @Param({"cyclic cubic", "rs+tu"})
  public String resolvent;

  private Polynomial polynomial;
  private RationalFunction expression;
  private Orbit orbit;
  private List<MultivariatePolynomial<BigInteger>> images;
  private MultivariatePolynomial<BigInteger>[] modules;

  @Setup
  @SuppressWarnings({"unchecked", "rawtypes"})
  public void prepare() {
    switch (resolvent) {
      case "cyclic cubic" -> {
        polynomial = SamplePolynomials.monic(3);
        expression = cyclic(3);
        images = List.of(parse("a^2*b+b^2*c+c^2*a"), parse("b^2*a+a^2*c+c^2*b"));
      }
      case "rs+tu" -> {
        polynomial = SamplePolynomials.monic(4);
        expression = unknown(0).times(unknown(1)).plus(unknown(2).times(unknown(3)));
        images = List.of(parse("a*b+c*d"), parse("a*c+b*d"), parse("a*d+b*c"));
      }
      default -> throw new IllegalArgumentException(resolvent);
    }
    int degree = polynomial.degree();
    orbit = Orbit.of(expression, degree);
    modules = new MultivariatePolynomial[degree];
    String[] names = {"a", "b", "c", "d"};
    for (int level = 0; level < degree; level++) {
      StringBuilder text = new StringBuilder("0");
      for (int k = level; k <= degree; k++) {
        text.append("+(").append(polynomial.numerator(k)).append(")*(");
        text.append(complete(level + 1, k - level, names)).append(")");
      }
      modules[level] = parse(text.toString());
    }
    SamplePolynomials.requireEqual(coefficients(ours()), theirs());
  }

  private static List<String> coefficients(Polynomial polynomial) {
    List<String> coefficients = new ArrayList<>();
    for (Rational coefficient : polynomial.ascending()) {
      coefficients.add(coefficient.toString());
    }
    return coefficients;
  }

  private static String complete(int unknowns, int degree, String[] names) {
    if (unknowns == 0) {
      return degree == 0 ? "1" : "0";
    }
    StringBuilder text = new StringBuilder("0");
    for (int k = 0; k <= degree; k++) {
      text.append("+").append(names[unknowns - 1]).append("^").append(k).append("*(");
      text.append(complete(unknowns - 1, degree - k, names)).append(")");
    }
    return text.toString();
  }

  private static MultivariatePolynomial<BigInteger> parse(String text) {
    // The last root must be the highest unknown, as the modules are monic in their last root.
    return MultivariatePolynomial.parse(text, MonomialOrder.LEX, "d", "c", "b", "a");
  }

  private static RationalFunction unknown(int number) {
    return RationalFunction.of(
        rootwright.algebra.polynomial.MultivariatePolynomial.unknown(number));
  }

  private static RationalFunction cyclic(int names) {
    RationalFunction sum = RationalFunction.ZERO;
    for (int k = 0; k < names; k++) {
      sum = sum.plus(unknown(k).power(2).times(unknown((k + 1) % names)));
    }
    return sum;
  }

  @Benchmark
  public Polynomial ours() {
    return ((OrbitPolynomial.Exact) OrbitPolynomial.of(polynomial, orbit)).polynomial();
  }

  @Benchmark
  public Polynomial oursWithOrbit() {
    return ((OrbitPolynomial.Exact) OrbitPolynomial.of(polynomial, expression)).polynomial();
  }

  @Benchmark
  public Object theirs() {
    // Coefficients of ∏ (T − E), multiplied out formally and reduced to numbers.
    List<MultivariatePolynomial<BigInteger>> product = new ArrayList<>();
    product.add(images.get(0).createOne());
    for (MultivariatePolynomial<BigInteger> image : images) {
      List<MultivariatePolynomial<BigInteger>> next = new ArrayList<>();
      for (int k = 0; k <= product.size(); k++) {
        MultivariatePolynomial<BigInteger> sum = image.createZero();
        if (k > 0) {
          sum.add(product.get(k - 1));
        }
        if (k < product.size()) {
          sum.subtract(product.get(k).clone().multiply(image));
        }
        next.add(MultivariateDivision.remainder(sum, modules));
      }
      product = next;
    }
    return product;
  }
}
