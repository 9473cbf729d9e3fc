package rootwright.bench;

import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import rootwright.algebra.notation.UnreadableException;
import rootwright.desk.Desk;
import rootwright.working.problem.Statement;
import rootwright.working.route.ClassProfile;
import rootwright.working.solve.Solution;

/**
 * One whole problem in a warm process: reading, the answer, every route and both checks on every
 * line. {@code same} asks for one problem over and over, {@code fresh} changes the polynomial each
 * time, so that nothing remembered of the last problem helps.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class WorkBenchmark {

  @Param({
    "x^3 - 6x^2 + 5x - 1 ; Σ r^2",
    "5x^3 - 10x^2 + x - 4 ; Σ 1/(r-3)",
    "x^3 - x^2 - 4x - 1 ; r^2 s + s^2 t + t^2 r",
    "x^4 - 2x^3 + 3x^2 - x + 5 ; S_5",
    "x^4 - 2x^3 + 3x^2 - x + 5 ; Σ 1/r^2"
  })
  public String problem;

  private final Desk desk = new Desk();
  private String polynomial = "";
  private String find = "";
  private int constant;

  @Setup
  public void split() {
    int semicolon = problem.indexOf(';');
    polynomial = problem.substring(0, semicolon).strip();
    find = problem.substring(semicolon + 1).strip();
  }

  @Benchmark
  public Solution same() throws UnreadableException {
    return desk.work(Statement.of(polynomial, find), ClassProfile.EVERYTHING);
  }

  @Benchmark
  public Solution fresh() throws UnreadableException {
    constant = constant % 997 + 1;
    return desk.work(Statement.of(polynomial + " - " + constant, find), ClassProfile.EVERYTHING);
  }
}
