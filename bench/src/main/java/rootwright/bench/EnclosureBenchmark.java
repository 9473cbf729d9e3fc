package rootwright.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import org.apfloat.Apcomplex;
import org.apfloat.Apfloat;
import org.hipparchus.analysis.solvers.LaguerreSolver;
import org.hipparchus.complex.Complex;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import rootwright.algebra.enclosure.EnclosedRoot;
import rootwright.algebra.enclosure.RootEnclosures;
import rootwright.algebra.polynomial.Polynomial;

/**
 * All complex roots with proved radii, beside a double-precision solver and a many-digit library
 * that prove nothing.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class EnclosureBenchmark {

  @Param({"5", "12", "30"})
  public int degree;

  @Param({"15", "50", "500"})
  public int digits;

  private Polynomial polynomial;
  private double[] hardware;
  private long[] ascending;

  /** A monic polynomial with coefficients from −9 to 9, squarefree by the seed's choice. */
  @Setup
  public void choose() {
    SplittableRandom random = new SplittableRandom(1_000 + degree);
    ascending = new long[degree + 1];
    ascending[degree] = 1;
    do {
      for (int k = 0; k < degree; k++) {
        ascending[k] = random.nextInt(-9, 10);
      }
      long[] descending = new long[degree + 1];
      hardware = new double[degree + 1];
      for (int k = 0; k <= degree; k++) {
        descending[degree - k] = ascending[k];
        hardware[k] = ascending[k];
      }
      polynomial = Polynomial.ofDescending(descending);
    } while (ascending[0] == 0 || !polynomial.isSquarefree());
  }

  @Benchmark
  public List<EnclosedRoot> provedDiscs() {
    return RootEnclosures.of(polynomial, digits);
  }

  /** Laguerre's method in doubles: about 15 digits whatever is asked, no bound. */
  @Benchmark
  public Complex[] hipparchusLaguerre() {
    return new LaguerreSolver().solveAllComplex(hardware, 0);
  }

  /** Newton's method from Laguerre's doubles, the precision doubled each step; no bound. */
  @Benchmark
  public List<Apcomplex> apfloatNewton() {
    List<Apcomplex> roots = new ArrayList<>();
    for (Complex guess : new LaguerreSolver().solveAllComplex(hardware, 0)) {
      Apcomplex root =
          new Apcomplex(new Apfloat(guess.getReal(), 20), new Apfloat(guess.getImaginary(), 20));
      for (long precision = 30; ; precision = Math.min(2 * precision, digits + 15L)) {
        root = step(root.precision(precision), precision);
        if (precision >= digits + 15L) {
          break;
        }
      }
      roots.add(root);
    }
    return roots;
  }

  private Apcomplex step(Apcomplex at, long precision) {
    Apcomplex value = Apcomplex.ZERO;
    Apcomplex slope = Apcomplex.ZERO;
    for (int k = degree; k >= 0; k--) {
      slope = slope.multiply(at).add(value);
      value = value.multiply(at).add(new Apfloat(ascending[k], precision));
    }
    return at.subtract(value.divide(slope));
  }
}
