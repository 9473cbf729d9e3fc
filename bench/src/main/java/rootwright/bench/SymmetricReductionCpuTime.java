package rootwright.bench;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.Arrays;
import java.util.List;
import java.util.function.Supplier;

/**
 * The cases of {@link SymmetricReductionBenchmark} by the processor time of the thread, for a
 * machine that others use as well. Half a second of warming, then the median of nine batches of 60
 * ms of processor time; the clock is read once in many calls.
 */
public final class SymmetricReductionCpuTime {

  private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();
  private static final long WARMING = 500_000_000L;
  private static final long BATCH = 60_000_000L;

  /** Results go here, so that no call can be optimised away. */
  private static volatile Object sink = "";

  private SymmetricReductionCpuTime() {}

  public static void main(String[] arguments) {
    SymmetricReductionBenchmark benchmark = new SymmetricReductionBenchmark();
    for (String size : List.of("3 3", "3 6", "4 8", "5 10", "6 12", "8 12", "8 16")) {
      SymmetricReductionBenchmark.PowerSumCase it = new SymmetricReductionBenchmark.PowerSumCase();
      it.size = size;
      it.prepare();
      print("p " + size + " ours", () -> benchmark.powerSumOurs(it));
      print("p " + size + " ours, spread out", () -> benchmark.powerSumOursSpreadOut(it));
      print("p " + size + " Rings, Newton", () -> benchmark.powerSumRingsNewton(it));
    }
    for (String size : List.of("3 3", "3 6", "4 8", "5 10")) {
      SymmetricReductionBenchmark.WrittenPowerSumCase it =
          new SymmetricReductionBenchmark.WrittenPowerSumCase();
      it.size = size;
      it.prepare();
      print("p " + size + " Rings, leading term", () -> benchmark.powerSumRingsLeadingTerm(it));
    }
    for (String orbit : List.of("4 3.2.1", "5 4.3.2.1", "6 5.4.3.2.1")) {
      SymmetricReductionBenchmark.MonomialCase it = new SymmetricReductionBenchmark.MonomialCase();
      it.orbit = orbit;
      it.prepare();
      print("m " + orbit + " ours", () -> benchmark.monomialOurs(it));
      print("m " + orbit + " Rings, Newton", () -> benchmark.monomialRingsNewton(it));
      print("m " + orbit + " Rings, leading term", () -> benchmark.monomialRingsLeadingTerm(it));
    }
    for (int degree = 3; degree <= 5; degree++) {
      SymmetricReductionBenchmark.DiscriminantCase it =
          new SymmetricReductionBenchmark.DiscriminantCase();
      it.degree = degree;
      it.prepare();
      print("D " + degree + " ours", () -> benchmark.discriminantOurs(it));
      print(
          "D " + degree + " ours, from the expansion",
          () -> benchmark.discriminantOursFromExpansion(it));
      print("D " + degree + " Rings, generic", () -> benchmark.discriminantRingsGeneric(it));
      print(
          "D " + degree + " Rings, leading term", () -> benchmark.discriminantRingsLeadingTerm(it));
    }
  }

  private static void print(String name, Supplier<Object> work) {
    batch(work, WARMING);
    double[] times = new double[9];
    Arrays.setAll(times, k -> batch(work, BATCH));
    Arrays.sort(times);
    System.out.printf("%-36s %12.3f us%n", name, times[times.length / 2] / 1000);
  }

  /** Calls for so many nanoseconds of this thread; the nanoseconds of one call. */
  private static double batch(Supplier<Object> work, long nanoseconds) {
    long start = THREADS.getCurrentThreadCpuTime();
    long calls = 0;
    long spent;
    int group = 1;
    do {
      for (int call = 0; call < group; call++) {
        sink = work.get();
      }
      calls += group;
      spent = THREADS.getCurrentThreadCpuTime() - start;
      // As many calls between two looks at the clock as take about a millisecond.
      group = (int) Math.max(1, Math.min(1000, calls * 1_000_000L / Math.max(1, spent)));
    } while (spent < nanoseconds);
    return (double) spent / calls;
  }
}
