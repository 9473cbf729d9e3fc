package rootwright.bench;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.Executor;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.LongSupplier;
import rootwright.composing.scan.ScanControl;

/**
 * Candidates a second of processor time, for a machine that is busy with other things: the cases of
 * {@link ScanBenchmark}, three runs each after three unmeasured ones, the median printed. With two
 * workers the processor time of both is added; if it is that of one worker, two idle cores halve
 * the waiting.
 */
public final class ScanCpuTime {

  private static final int RUNS = 3;
  private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();

  private ScanCpuTime() {}

  /** Prints one line a case. */
  public static void main(String[] arguments) {
    ScanBenchmark cases = new ScanBenchmark();
    cases.draw();
    print("cubics, one worker", ScanBenchmark.CUBICS, own(cases::cubicsOneThread));
    print("cubics, two workers", ScanBenchmark.CUBICS, () -> two(cases));
    print("rings, cheapest test first", ScanBenchmark.SAMPLE, own(cases::naiveLoopOverRings));
    print("rings, all tests", ScanBenchmark.SAMPLE, own(cases::naiveLoopOverRingsAllTests));
    print("reciprocal squares", ScanBenchmark.RECIPROCALS, own(cases::reciprocalSquares));
    print("real quartics", ScanBenchmark.QUARTICS, own(cases::realQuartics));
    print("irreducible quintics", ScanBenchmark.QUINTICS, own(cases::irreducibleQuintics));
    cases.close();
  }

  private static LongSupplier own(Runnable work) {
    return () -> {
      long start = THREADS.getCurrentThreadCpuTime();
      work.run();
      return THREADS.getCurrentThreadCpuTime() - start;
    };
  }

  private static long two(ScanBenchmark cases) {
    AtomicLong other = new AtomicLong();
    List<Thread> threads = new ArrayList<>();
    Executor measured =
        worker -> {
          Thread thread =
              new Thread(
                  () -> {
                    worker.run();
                    other.set(THREADS.getCurrentThreadCpuTime());
                  });
          threads.add(thread);
          thread.start();
        };
    long start = THREADS.getCurrentThreadCpuTime();
    cases.cubicScan().run(ScanControl.shared(measured, 2));
    long own = THREADS.getCurrentThreadCpuTime() - start;
    try {
      threads.get(0).join();
    } catch (InterruptedException interrupted) {
      throw new IllegalStateException("interrupted while measuring", interrupted);
    }
    return own + other.get();
  }

  private static void print(String name, long candidates, LongSupplier work) {
    long[] rates = new long[RUNS];
    for (int run = -RUNS; run < RUNS; run++) {
      long nanoseconds = work.getAsLong();
      if (run >= 0) {
        rates[run] = candidates * 1_000_000_000L / nanoseconds;
      }
    }
    Arrays.sort(rates);
    System.out.printf("%-28s %,d a second%n", name, rates[RUNS / 2]);
  }
}
