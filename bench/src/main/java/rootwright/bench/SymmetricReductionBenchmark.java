package rootwright.bench;

import cc.redberry.rings.bigint.BigInteger;
import cc.redberry.rings.poly.multivar.MultivariatePolynomial;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import rootwright.algebra.symmetric.Discriminant;
import rootwright.algebra.symmetric.ElementaryForm;
import rootwright.algebra.symmetric.Partition;
import rootwright.algebra.symmetric.SymmetricPolynomial;
import rootwright.algebra.symmetric.SymmetricRecognition;

/**
 * Symmetric polynomials brought into e_1, …, e_n, beside the library Rings used in two ways:
 * Newton's recurrence in Z[e], and leading-term subtraction on the polynomial written out. Before
 * anything is timed, every method must give the same polynomial.
 */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(3)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class SymmetricReductionBenchmark {

  private static void requireEqual(
      ElementaryForm ours, MultivariatePolynomial<BigInteger> theirs, String what) {
    if (!RingsReduction.read(ours.polynomial(), ours.variables()).equals(theirs)) {
      throw new IllegalStateException("different results for " + what);
    }
  }

  private static int[] numbers(String text) {
    return Arrays.stream(text.split("[ .]")).mapToInt(Integer::parseInt).toArray();
  }

  /** A power sum p_k of n variables. */
  @State(Scope.Benchmark)
  public static class PowerSumCase {
    @Param({"3 3", "3 6", "4 8", "5 10", "6 12", "8 12", "8 16"})
    String size = "";

    int variables;
    int k;
    SymmetricPolynomial powerSum = SymmetricPolynomial.powerSum(1, 1);

    @Setup
    public void prepare() {
      variables = numbers(size)[0];
      k = numbers(size)[1];
      powerSum = SymmetricPolynomial.powerSum(variables, k);
      requireEqual(
          powerSum.toElementary(), RingsReduction.powerSums(variables, k).get(k), "p " + size);
    }
  }

  @Benchmark
  public ElementaryForm powerSumOurs(PowerSumCase it) {
    return it.powerSum.toElementary();
  }

  @Benchmark
  public Object powerSumOursSpreadOut(PowerSumCase it) {
    return it.powerSum.toElementary().polynomial();
  }

  @Benchmark
  public Object powerSumRingsNewton(PowerSumCase it) {
    return RingsReduction.powerSums(it.variables, it.k).get(it.k);
  }

  /** A power sum written out, where the library's loop ends within a second. */
  @State(Scope.Benchmark)
  public static class WrittenPowerSumCase {
    @Param({"3 3", "3 6", "4 8", "5 10"})
    String size = "";

    MultivariatePolynomial<BigInteger> expanded = RingsReduction.zero(1);
    List<MultivariatePolynomial<BigInteger>> elementaries = List.of();

    @Setup
    public void prepare() {
      int variables = numbers(size)[0];
      SymmetricPolynomial powerSum = SymmetricPolynomial.powerSum(variables, numbers(size)[1]);
      expanded = RingsReduction.read(powerSum.expand(), variables);
      elementaries = RingsReduction.elementaries(variables);
      requireEqual(
          powerSum.toElementary(),
          RingsReduction.byLeadingTerm(expanded, elementaries),
          "p " + size);
    }
  }

  @Benchmark
  public Object powerSumRingsLeadingTerm(WrittenPowerSumCase it) {
    return RingsReduction.byLeadingTerm(it.expanded, it.elementaries);
  }

  /** A monomial symmetric polynomial. */
  @State(Scope.Benchmark)
  public static class MonomialCase {
    @Param({"4 3.2.1", "5 4.3.2.1", "6 5.4.3.2.1"})
    String orbit = "";

    int variables;
    int[] parts = {};
    SymmetricPolynomial monomial = SymmetricPolynomial.powerSum(1, 1);
    MultivariatePolynomial<BigInteger> expanded = RingsReduction.zero(1);
    List<MultivariatePolynomial<BigInteger>> elementaries = List.of();

    @Setup
    public void prepare() {
      variables = numbers(orbit)[0];
      parts = Arrays.stream(numbers(orbit)).skip(1).toArray();
      monomial = SymmetricPolynomial.monomial(variables, Partition.of(parts));
      expanded = RingsReduction.read(monomial.expand(), variables);
      elementaries = RingsReduction.elementaries(variables);
      ElementaryForm form = monomial.toElementary();
      requireEqual(form, RingsReduction.byLeadingTerm(expanded, elementaries), "m " + orbit);
      requireEqual(form, RingsReduction.monomialByPowerSums(variables, parts), "m " + orbit);
    }
  }

  @Benchmark
  public ElementaryForm monomialOurs(MonomialCase it) {
    return it.monomial.toElementary();
  }

  @Benchmark
  public Object monomialRingsNewton(MonomialCase it) {
    return RingsReduction.monomialByPowerSums(it.variables, it.parts);
  }

  @Benchmark
  public Object monomialRingsLeadingTerm(MonomialCase it) {
    return RingsReduction.byLeadingTerm(it.expanded, it.elementaries);
  }

  /** The discriminant of the general monic polynomial. */
  @State(Scope.Benchmark)
  public static class DiscriminantCase {
    @Param({"3", "4", "5"})
    int degree;

    rootwright.algebra.polynomial.MultivariatePolynomial product =
        rootwright.algebra.polynomial.MultivariatePolynomial.ONE;
    MultivariatePolynomial<BigInteger> expanded = RingsReduction.zero(1);
    MultivariatePolynomial<BigInteger> general = RingsReduction.zero(1);
    List<MultivariatePolynomial<BigInteger>> elementaries = List.of();

    @Setup
    public void prepare() {
      ElementaryForm universal = Discriminant.universal(degree);
      product = universal.toSymmetric().expand();
      expanded = RingsReduction.read(product, degree);
      general = RingsReduction.general(degree);
      elementaries = RingsReduction.elementaries(degree);
      requireEqual(universal, RingsReduction.byLeadingTerm(expanded, elementaries), "D " + degree);
      if (!RingsReduction.genericDiscriminant(general)
          .equals(RingsReduction.read(universal.polynomial(), degree + 1))) {
        throw new IllegalStateException("different generic discriminants of degree " + degree);
      }
    }
  }

  @Benchmark
  public ElementaryForm discriminantOurs(DiscriminantCase it) {
    return Discriminant.universal(it.degree);
  }

  @Benchmark
  public Object discriminantOursFromExpansion(DiscriminantCase it) {
    return ((SymmetricRecognition.Symmetric) SymmetricPolynomial.recognise(it.product, it.degree))
        .polynomial()
        .toElementary();
  }

  @Benchmark
  public Object discriminantRingsGeneric(DiscriminantCase it) {
    return RingsReduction.genericDiscriminant(it.general);
  }

  @Benchmark
  public Object discriminantRingsLeadingTerm(DiscriminantCase it) {
    return RingsReduction.byLeadingTerm(it.expanded, it.elementaries);
  }
}
